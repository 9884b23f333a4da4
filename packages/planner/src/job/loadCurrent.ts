import { loadCurrentA } from '@strandwise/core'
import { loopOhm } from './loop.ts'
import type { RepairJob } from './repairJob.ts'

/** Supply voltage, and series resistance of wire (out and back) and source. */
function before(job: RepairJob, areaMm2: number): { readonly supplyV: number; readonly seriesOhm: number } {
  return { supplyV: job.circuit.supplyV, seriesOhm: loopOhm(job, areaMm2) + (job.circuit.sourceResistanceOhm ?? 0) }
}

/** Largest power deliverable at the end of the wire, with half the voltage at the load. */
export function mostPowerW(job: RepairJob, areaMm2: number): number {
  const { supplyV, seriesOhm } = before(job, areaMm2)
  return (supplyV * supplyV) / (4 * seriesOhm)
}

/** The working current through the joint: as stated, or from load and wire resistance. */
export function loadCurrent(job: RepairJob, areaMm2: number): number {
  const { currentA, powerW, resistanceOhm } = job.load
  if (currentA !== undefined) return currentA
  const series = before(job, areaMm2)
  if (powerW !== undefined) return loadCurrentA({ ...series, load: { kind: 'power', powerW } })
  return loadCurrentA({ ...series, load: { kind: 'resistance', resistanceOhm: resistanceOhm ?? Number.NaN } })
}
