import { checkedJob, LinkError } from './checkedJob.ts'

/** A job file is a few kB; a larger file is refused. */
const largestText = 1_000_000

/**
 * Parses a job file and checks it against the schema.
 *
 * @throws LinkError with the sentence that refuses it
 */
export function jobFromFile(text: string): unknown {
  if (text.length > largestText) throw new LinkError('too-long', 'This file is larger than any job. It was not opened.')
  let job: unknown
  try {
    job = JSON.parse(text)
  } catch {
    throw new LinkError('damaged', 'This file is no job: it is not JSON. It was not opened.')
  }
  return checkedJob(job, 'This file')
}
