import { JobError } from './jobError.ts'
import { jobVersion } from './repairJobShape.ts'

/**
 * A job of any release as this one reads it. Version 1 is the only one so far and every field added to it is optional, so a job of an
 * earlier release comes back as it is. What is no job is left for parseRepairJob to refuse.
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
