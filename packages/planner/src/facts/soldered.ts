import { knownNominal, type MethodName, type SolderName, solder, solderVolumeMm3 } from '@strandwise/core'
import { assumed } from './assumed.ts'
import type { JobFacts } from './jobFacts.ts'

export const solderedMethods: readonly MethodName[] = ['soldered-lap', 'soldered-lineman-splice', 'solder-sleeve']

/** The soldered joint that the job's method would make: two like wires side by side. */
interface SolderedJoint {
  readonly overlapMm: number
  /** Across both wires. */
  readonly widthMm: number
  readonly solderMm3: number
  readonly alloy: SolderName
  readonly alloyOhmM: number
}

/** The alloy that is really used: the sleeve's ring, else the first of the job's solders, else tin-lead. */
export function alloyFor(method: MethodName, facts: JobFacts): SolderName {
  if (method === 'solder-sleeve' && facts.job.solderSleeve !== undefined) return facts.job.solderSleeve.ringAlloy
  return facts.job.solders?.[0] ?? 'Sn60Pb40'
}

export function solderedJoint(method: MethodName, facts: JobFacts): SolderedJoint {
  const d = facts.conductorDiameterMm
  const overlapMm = assumed.overlapDiameters.value * d
  const name = alloyFor(method, facts)
  const alloy = solder(name)
  // Gaps between the strands of both wires fill with solder as well.
  const strandVoidMm2 = Math.max(0, 2 * ((Math.PI / 4) * d * d - facts.areaMm2))
  return {
    overlapMm,
    widthMm: 2 * d,
    solderMm3: solderVolumeMm3({ overlapMm, diametersMm: [d, d], strandVoidMm2 }),
    alloy: name,
    alloyOhmM: knownNominal(alloy, 'resistivityOhmM', alloy.resistivityOhmM),
  }
}
