import { JobError, type JobIssue } from './jobError.ts'
import { parseRepairJob } from './parseRepairJob.ts'
import type { RepairJob } from './repairJob.ts'

/** What contradicts, the job, and what its one issue says. */
export type Contradiction = readonly [string, RepairJob, Omit<JobIssue, 'value'> & { readonly value?: unknown }]

export function issuesOf(job: unknown): readonly JobIssue[] {
  try {
    parseRepairJob(job)
    return []
  } catch (error) {
    if (error instanceof JobError) return error.issues
    throw error
  }
}

/** The job with the example of an issue in the place of what was refused. */
export function mended(job: RepairJob, { path, example }: JobIssue): RepairJob {
  const copy = structuredClone(job) as unknown as Record<string, unknown>
  const keys = path.split('.')
  const holder = keys.slice(0, -1).reduce((inside, key) => inside[key] as Record<string, unknown>, copy)
  Object.assign(holder, JSON.parse(`{${example}}`))
  return copy as unknown as RepairJob
}
