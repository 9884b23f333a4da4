import { voltageDropV } from '../circuit/index.ts'
import { resistanceOhm } from '../conductor/index.ts'
import { requireFiniteResult } from '../errors/index.ts'
import { roundingShare, verdictDefaults } from './verdictDefaults.ts'
import type { WireFinding, WireJob } from './wireJob.ts'

/** Resistance of a length of the wire at the hottest air's temperature. */
function wireOhm({ wire, hottestC }: WireJob, lengthM: number): number {
  const { areaMm2, layFactor = 1, material = verdictDefaults.material } = wire
  return resistanceOhm({ areaMm2, lengthM, material, temperatureC: hottestC, layFactor })
}

/** Loop resistance, out and back, at the hottest air's temperature. */
export function loopOhm(job: WireJob): number {
  return job.run === undefined ? 0 : wireOhm(job, job.run.outLengthM) + wireOhm(job, job.run.returnLengthM)
}

/** Drop of the wire at its load, with its finding; null without a run. */
export function judgeDrop(job: WireJob): { readonly dropV: number | null; readonly finding: WireFinding | null } {
  const { run, currentA } = job
  if (run === undefined) return { dropV: null, finding: null }
  const dropV = voltageDropV({ currentA, outResistanceOhm: wireOhm(job, run.outLengthM), returnResistanceOhm: wireOhm(job, run.returnLengthM) })
  const values = { dropV, allowedDropV: run.allowedDropV, shareOfSupply: requireFiniteResult('run.supplyV', run.supplyV, dropV / run.supplyV) }
  if (dropV <= run.allowedDropV * (1 + roundingShare))
    return { dropV, finding: { code: 'drop-within-budget', topic: 'drop', verdict: 'sound', values, sources: [] } }
  const verdict = run.limitIsStated === false ? 'caution' : 'unsound'
  return { dropV, finding: { code: 'drop-over-budget', topic: 'drop', verdict, values, sources: [] } }
}
