import { knownNominal, type MethodName, type SolderName, solder, solderVolumeMm3, solderWireLengthMm } from '@strandwise/core'
import { assumed } from '../job/assumed.ts'
import type { JobFacts } from './jobFacts.ts'

export const solderedMethods: readonly MethodName[] = ['soldered-lap', 'soldered-lineman-splice', 'solder-sleeve']

/** The solder wire that lengths are told for: a common one. */
export const solderWireMm = 1

/** The soldered joint that the job's method would make: two like wires side by side. */
interface SolderedJoint {
  readonly overlapMm: number
  /** Across both wires. */
  readonly widthMm: number
  readonly solderMm3: number
  /** The same as so much solder wire, in whole mm. */
  readonly solderLengthMm: number
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
  const solderMm3 = solderVolumeMm3({ overlapMm, diametersMm: [d, d], strandVoidMm2 })
  return {
    overlapMm,
    widthMm: 2 * d,
    solderMm3,
    solderLengthMm: Math.ceil(solderWireLengthMm({ volumeMm3: solderMm3, wireDiameterMm: solderWireMm })),
    alloy: name,
    alloyOhmM: knownNominal(alloy, 'resistivityOhmM', alloy.resistivityOhmM),
  }
}
