import type { AddIssue, JobIssue } from './jobError.ts'
import { loadContradictions } from './loadContradictions.ts'
import { placeContradictions } from './placeContradictions.ts'
import type { RepairJob } from './repairJob.ts'
import { sleeveContradictions } from './sleeveContradictions.ts'
import { wireContradictions } from './wireContradictions.ts'
import { type WireSize, WireSizeError, wireSize } from './wireSize.ts'

/** Fields that can't all be true, or of which one needs the other. Each names the field to mend; a job without any can be planned. */
export function contradictions(job: RepairJob): readonly JobIssue[] {
  const issues: JobIssue[] = []
  const add: AddIssue = (path, value, allowed, example) => issues.push({ path, value, allowed, example })
  const size = sizeOf(job.wire, add)
  loadContradictions(job, size, add)
  wireContradictions(job, size, add)
  placeContradictions(job, add)
  sleeveContradictions(job, add)
  return issues
}

/** The wire's size; null where the job gives none, two, or one that no wire has. */
function sizeOf(wire: RepairJob['wire'], add: AddIssue): WireSize | null {
  if ((wire.areaMm2 === undefined) === (wire.size === undefined)) {
    add('wire.areaMm2', wire.areaMm2, 'one of areaMm2 and size', '"size": "18 AWG"')
    return null
  }
  try {
    return wireSize(wire)
  } catch (error) {
    if (!(error instanceof WireSizeError)) throw error
    add('wire.size', wire.size, error.allowed, '"size": "18 AWG"')
    return null
  }
}
