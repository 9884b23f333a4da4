import { issueLine, JobError, parseRepairJob } from '@strandwise/planner/job'

export type LinkFault = 'version' | 'too-long' | 'damaged' | 'not-a-job' | 'markup'

/** A link or file that can't be used; its message is a sentence for the person who opened it. */
export class LinkError extends Error {
  override readonly name = 'LinkError'
  readonly fault: LinkFault

  constructor(fault: LinkFault, message: string) {
    super(message)
    this.fault = fault
  }
}

/** Whether a fragment means to be a job; any other is an anchor of the page. */
export const isJobFragment = (fragment: string): boolean => /^job\d*(?:\.|$)/.test(fragment)

/**
 * A job from outside, judged by the schema; `what` begins the sentence that refuses it.
 *
 * @throws LinkError with that sentence
 */
export function checkedJob(job: unknown, what: string): unknown {
  try {
    parseRepairJob(job)
    return job
  } catch (error) {
    if (!(error instanceof JobError)) throw error
    const first = error.issues[0]
    const more = error.issues.length > 1 ? ` and ${error.issues.length - 1} more` : ''
    throw new LinkError('not-a-job', `${what} holds no usable job. ${first === undefined ? '' : issueLine(first).slice(0, 300)}${more}.`)
  }
}
