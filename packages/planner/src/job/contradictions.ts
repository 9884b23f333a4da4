import { quietly } from './assume.ts'
import { damageContradictions } from './damageContradictions.ts'
import type { AddIssue, JobIssue } from './jobError.ts'
import { loadContradictions } from './loadContradictions.ts'
import { placeContradictions } from './placeContradictions.ts'
import { readingContradictions } from './readingContradictions.ts'
import type { RepairJob } from './repairJob.ts'
import { roundedUp } from './rounded.ts'
import { sleeveContradictions } from './sleeveContradictions.ts'
import { wireContradictions } from './wireContradictions.ts'
import { wireShape } from './wireShape.ts'
import { type WireSize, WireSizeError, wireSize } from './wireSize.ts'

/** Contradictory fields, and fields that need another one. Each issue names the field to correct; a job without issues can be planned. */
export function contradictions(job: RepairJob): readonly JobIssue[] {
  const issues: JobIssue[] = []
  const add: AddIssue = (path, value, allowed, example) => issues.push({ path, value, allowed, example })
  const size = sizeOf(job.wire, add)
  loadContradictions(job, size, add)
  wireContradictions(job, size, add)
  beyondContradictions(job, add)
  damageContradictions(job, add)
  placeContradictions(job, add)
  readingContradictions(job, add)
  sleeveContradictions(job, add)
  return issues
}

/** The wire's size; null if the job gives none, two, or an unknown one. */
function sizeOf(wire: RepairJob['wire'], add: AddIssue): WireSize | null {
  if ((wire.areaMm2 === undefined) === (wire.size === undefined)) {
    add('wire.areaMm2', wire.areaMm2, 'one of areaMm2 and size', '"size": "18 AWG"')
    return null
  }
  return readSize(wire, 'wire', add)
}

function readSize(wire: Pick<RepairJob['wire'], 'areaMm2' | 'size' | 'standard'>, path: string, add: AddIssue): WireSize | null {
  try {
    return wireSize(wire)
  } catch (error) {
    if (!(error instanceof WireSizeError)) throw error
    add(`${path}.size`, wire.size, error.allowed, '"size": "18 AWG"')
    return null
  }
}

/** The wire beyond the joint must have one size or none. */
function beyondContradictions({ wire, wireBeyond = {} }: RepairJob, add: AddIssue): void {
  const { areaMm2, size, outsideDiameterMm } = wireBeyond
  if (areaMm2 !== undefined && size !== undefined) {
    add('wireBeyond.areaMm2', areaMm2, 'one of areaMm2 and size', '"areaMm2": 1.5')
    return
  }
  const { standard } = wire
  const own = areaMm2 === undefined && size === undefined ? wire : { ...wireBeyond, ...(standard === undefined ? {} : { standard }) }
  const found = readSize(own, own === wire ? 'wire' : 'wireBeyond', own === wire ? () => undefined : add)
  if (found === null || outsideDiameterMm === undefined) return
  const leastMm = wireShape({ outsideDiameterMm }, found, quietly).leastOutsideMm
  if (outsideDiameterMm >= leastMm) return
  const told = roundedUp(leastMm)
  add('wireBeyond.outsideDiameterMm', outsideDiameterMm, `at least ${told} mm: the metal`, `"outsideDiameterMm": ${roundedUp(leastMm + 0.2)}`)
}
