import { JobError } from './jobError.ts'
import { jobVersion } from './repairJobShape.ts'

/**
 * Converts a job of any release to the current format.
 *
 * Version 1 is the only one so far and all later fields are optional, so jobs come back unchanged. parseRepairJob refuses anything that is no job.
 *
 * @throws JobError for a version that this release does not know
 * @example
 * migrateJob({ version: 1, title: 'Gate' }) // { version: 1, title: 'Gate' }
 */
export function migrateJob(input: unknown): unknown {
  const version = typeof input === 'object' && input !== null ? (input as { readonly version?: unknown }).version : undefined
  if (typeof version === 'number' && version > jobVersion) {
    const allowed = `at most ${jobVersion}: the job was written for a newer release of @strandwise/planner, which reads it`
    throw new JobError([{ path: 'version', value: version, allowed, example: `"version": ${jobVersion}` }])
  }
  return input
}
