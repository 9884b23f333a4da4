import { JobError, type JobIssue } from './jobError.ts'
import { parseRepairJob } from './parseRepairJob.ts'
import type { RepairJob } from './repairJob.ts'

/** Title, the contradictory job, and its only issue. */
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

/** The job with the refused value replaced by the issue's example. */
export function mended(job: RepairJob, { path, example }: JobIssue): RepairJob {
  const copy = structuredClone(job) as unknown as Record<string, unknown>
  const keys = path.split('.')
  const holder = keys.slice(0, -1).reduce((inside, key) => inside[key] as Record<string, unknown>, copy)
  Object.assign(holder, JSON.parse(`{${example}}`))
  return copy as unknown as RepairJob
}
