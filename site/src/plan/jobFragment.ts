/** Whether a fragment means to be a job; any other is an anchor of the page. */
export const isJobFragment = (fragment: string): boolean => /^job\d*(?:\.|$)/.test(fragment)
