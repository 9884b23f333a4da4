import { type MetalName, resistanceOhmPerM } from '@strandwise/core'
import { type Assume, quietly } from './assume.ts'
import { assumed } from './assumed.ts'
import type { RepairJob } from './repairJob.ts'

// Resistance of the run, with the job's values or defaults.

export const metalOf = ({ wire }: RepairJob, assume: Assume): MetalName => assume('wire.material', wire.material, assumed.material.value, assumed.material.why)

/** Present air temperature; by default between the coldest and hottest air given. */
export function airNowC({ surroundings }: RepairJob, assume: Assume): number {
  const { coldestC = Number.NEGATIVE_INFINITY, hottestC = Number.POSITIVE_INFINITY } = surroundings ?? {}
  const mildC = Math.max(coldestC, Math.min(assumed.ambientC.value, hottestC))
  return assume('surroundings.ambientC', surroundings?.ambientC, mildC, assumed.ambientC.why)
}

export const hottestAirC = (job: RepairJob, assume: Assume): number =>
  assume('surroundings.hottestC', job.surroundings?.hottestC, Math.max(airNowC(job, quietly), assumed.hottestAboveNowC.value), assumed.hottestAboveNowC.why)

export const wayBackM = ({ wire }: RepairJob, assume: Assume): number =>
  assume('wire.returnLengthM', wire.returnLengthM, wire.outLengthM, 'the return runs beside the feed')

export const strandLay = (assume: Assume): number => assume('wire.layFactor', undefined, assumed.layFactor.value, assumed.layFactor.why)

/** Resistance per metre of one conductor in the hottest air. */
export function metreOhm(job: RepairJob, areaMm2: number): number {
  return resistanceOhmPerM({ areaMm2, material: metalOf(job, quietly), temperatureC: hottestAirC(job, quietly), layFactor: strandLay(quietly) })
}

/** Loop resistance, out and back, in the hottest air. */
export function loopOhm(job: RepairJob, areaMm2: number): number {
  return metreOhm(job, areaMm2) * (job.wire.outLengthM + wayBackM(job, quietly))
}
