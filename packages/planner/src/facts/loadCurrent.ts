import { loadCurrentA } from '@strandwise/core'
import type { RepairJob } from '../job/repairJob.ts'

/** The working current through the joint: as stated, or as the load draws it through the wire's resistance. */
export function loadCurrent(job: RepairJob, loopOhm: number): number {
  const { currentA, powerW, resistanceOhm } = job.load
  if (currentA !== undefined) return currentA
  const series = { supplyV: job.circuit.supplyV, seriesOhm: loopOhm + (job.circuit.sourceResistanceOhm ?? 0) }
  if (powerW !== undefined) return loadCurrentA({ ...series, load: { kind: 'power', powerW } })
  return loadCurrentA({ ...series, load: { kind: 'resistance', resistanceOhm: resistanceOhm ?? Number.NaN } })
}
