import { packBundle, recoveredWallMm, type Sleeve } from '@strandwise/core'
import { stubMm } from '../facts/heatInputs.ts'
import { type JobFacts, jobFacts } from '../facts/jobFacts.ts'
import { solderedJoint, solderedMethods } from '../facts/soldered.ts'
import { suppliedWallMm } from '../facts/suppliedWall.ts'
import { parseRepairJob } from '../job/parseRepairJob.ts'
import type { RepairJob } from '../job/repairJob.ts'
import { coveringSection } from '../plan/coveringSection.ts'
import { jointLengthMm } from '../plan/jointSection.ts'
import { chooseMethod } from '../plan/methodSection.ts'

/** One layer of sleeve, supplied and shrunk. */
export interface LayerPicture {
  readonly name: string
  readonly suppliedInsideMm: number
  readonly suppliedOutsideMm: number
  readonly insideMm: number
  readonly outsideMm: number
  readonly cutMm: number
}

/** The joint as numbers, for a drawing to scale; lengths along the wire from the joint's middle. */
export interface JointPicture {
  readonly kind: 'lap' | 'barrel'
  readonly conductorMm: number
  readonly outsideMm: number
  /** Overlap of a lap, length of a barrel. */
  readonly jointMm: number
  readonly stubMm: number
  readonly barrelMm: number
  readonly layers: readonly LayerPicture[]
  readonly strandMm: number
  /** Strands of one wire about its own middle. */
  readonly strands: readonly { readonly xMm: number; readonly yMm: number }[]
  readonly housingHoleMm: number | null
}

/** Strands drawn where the job does not count them: a common bunch. */
const usualStrands = 19
/** More strands than this are drawn as this many: a section at the scale of a page shows no more. */
const mostDrawnStrands = 37

function layerOf(sleeve: Sleeve, ontoMm: number, cutMm: number): LayerPicture {
  const gripping = ontoMm > sleeve.recoveredInsideMm
  const insideMm = gripping ? ontoMm : sleeve.recoveredInsideMm
  const wallMm = gripping
    ? recoveredWallMm({ recoveredWallMm: sleeve.recoveredWallMm, recoveredInsideMm: sleeve.recoveredInsideMm, ontoMm })
    : sleeve.recoveredWallMm
  return {
    name: sleeve.name ?? sleeve.material,
    suppliedInsideMm: sleeve.suppliedInsideMm,
    suppliedOutsideMm: sleeve.suppliedInsideMm + 2 * suppliedWallMm(sleeve),
    insideMm,
    outsideMm: insideMm + 2 * wallMm,
    cutMm,
  }
}

function strandsOf(facts: JobFacts): Pick<JointPicture, 'strandMm' | 'strands'> {
  const count = Math.min(mostDrawnStrands, facts.job.wire.strandCount ?? usualStrands)
  const packed = packBundle(Array.from({ length: count }, () => 1))
  const scale = facts.conductorDiameterMm / packed.diameterMm
  return { strandMm: scale, strands: packed.centresMm.map((centre) => ({ xMm: centre.xMm * scale, yMm: centre.yMm * scale })) }
}

/**
 * The joint that the job means to make, as numbers for its side view and its cross-section in the housing's hole.
 *
 * @throws JobError where the job is not one that parseRepairJob would return
 * @example
 * jointPicture(bilgePumpFeed) // { kind: 'lap', housingHoleMm: 5.2 }
 */
export function jointPicture(job: RepairJob): JointPicture {
  const facts = jobFacts(parseRepairJob(job))
  const { considered } = chooseMethod(facts)
  const lap = solderedMethods.includes(considered)
  const covering = coveringSection(facts, considered)
  const core = lap ? Math.max(facts.outsideMm, solderedJoint(considered, facts).widthMm) : facts.outsideMm
  return {
    kind: lap ? 'lap' : 'barrel',
    conductorMm: facts.conductorDiameterMm,
    outsideMm: facts.outsideMm,
    jointMm: lap ? solderedJoint(considered, facts).overlapMm : jointLengthMm(considered, facts),
    stubMm: lap ? stubMm(facts) : 0.5,
    barrelMm: facts.outsideMm,
    layers: covering.sleeve === null ? [] : [layerOf(covering.sleeve, core, covering.cutMm)],
    ...strandsOf(facts),
    housingHoleMm: job.terminal?.housingHoleMm ?? null,
  }
}
