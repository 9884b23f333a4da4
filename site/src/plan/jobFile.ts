import { checkedJob, LinkError } from './checkedJob.ts'

/** A job file is a few kB; what is larger is something else. */
const largestText = 1_000_000

/** Offers the job as a file to be kept by the person. */
export function saveJob(job: unknown, title: string | undefined): void {
  const name = (title ?? 'repair job')
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, '-')
    .replaceAll(/^-+|-+$/g, '')
    .slice(0, 60)
  const address = URL.createObjectURL(new Blob([`${JSON.stringify(job, null, 2)}\n`], { type: 'application/json' }))
  const anchor = document.createElement('a')
  anchor.href = address
  anchor.download = `${name === '' ? 'repair-job' : name}.json`
  anchor.click()
  URL.revokeObjectURL(address)
}

/**
 * The job in a file's text, judged by the schema.
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
