import { issueLine, JobError, parseRepairJob } from '@strandwise/planner/job'

export type LinkFault = 'version' | 'too-long' | 'damaged' | 'not-a-job' | 'markup'

/** An unusable link or file; its message is shown to the person who opened it. */
export class LinkError extends Error {
  override readonly name = 'LinkError'
  readonly fault: LinkFault

  constructor(fault: LinkFault, message: string) {
    super(message)
    this.fault = fault
  }
}

/** Deepest nesting of a job: a list in a group, an object in that, an interval in that. */
const deepestJob = 8

/**
 * Checks the depth level by level, so that no nesting can exhaust the stack.
 *
 * @throws LinkError where the value is nested deeper than any job; `what` begins its sentence
 */
export function refuseDeepNesting(value: unknown, what: string): void {
  let level: readonly unknown[] = [value]
  for (let depth = 0; level.length > 0; depth += 1) {
    if (depth > deepestJob) throw new LinkError('not-a-job', `${what} is nested deeper than any job. It was not opened.`)
    level = level.flatMap((item) => (typeof item === 'object' && item !== null ? Object.values(item) : []))
  }
}

/**
 * Checks a job from outside against the schema; `what` begins the message of a refusal.
 *
 * @throws LinkError with that sentence
 */
export function checkedJob(job: unknown, what: string): unknown {
  refuseDeepNesting(job, what)
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
