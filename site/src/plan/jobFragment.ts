/** True if a fragment carries a job; any other is an anchor. */
export const isJobFragment = (fragment: string): boolean => /^job\d*(?:\.|$)/.test(fragment)
