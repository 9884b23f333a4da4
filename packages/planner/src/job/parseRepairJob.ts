import * as z from 'zod/mini'
import { contradictions } from './contradictions.ts'
import { JobError } from './jobError.ts'
import type { RepairJob } from './repairJob.ts'
import { repairJobSchema } from './repairJobSchema.ts'
import { repairJobShape } from './repairJobShape.ts'
import { schemaIssues } from './schemaIssues.ts'

/**
 * A repair job in fixed units from unknown input: reads both spellings of a field and refuses everything else with its path.
 *
 * @throws JobError with every issue: path, value, what is allowed, a corrected example
 * @example
 * parseRepairJob({ ...trailerTailLamp, load: { current: '1800 mA' } }) // { load: { currentA: 1.8 } }
 */
export function parseRepairJob(input: unknown): RepairJob {
  const result = z.safeParse(repairJobSchema, input)
  if (!result.success) throw new JobError(schemaIssues(repairJobShape, result.error.issues, input))
  const job = result.data as RepairJob
  const issues = contradictions(job)
  if (issues.length > 0) throw new JobError(issues)
  return job
}
