import { acceptanceResistanceOhm, type JointSite, type MethodName } from '@strandwise/core'
import { airAroundJointC, figure, type JobFacts } from '../facts/inner.ts'
import { jointShape } from './jointShape.ts'

/** What the joint may measure. */
export interface JointLimits {
  readonly lengthMm: number
  /** A new joint: at most its own length of wire. */
  readonly newOhm: number
  /** Once aged. */
  readonly agedOhm: number
  /** By drop, temperature or as much wire as a joint may be worth, whichever comes first; null where that leaves nothing beyond an aged joint. */
  readonly outerOhm: number | null
}

/** What every joint on the same wire in the same place shares, reckoned once. */
export interface JointGround {
  readonly site: JointSite
  /** As much plain wire as a millimetre of joint. */
  readonly plainOhmPerMm: number
  /** What heat allows a joint of any length. */
  readonly byHeatOhm: number
}

/** The joint in service: both wires, the current that warms it (of a cycle, what warms as much as its peak), the air around it. */
export function jointGround(facts: JobFacts, warmingA: number): JointGround {
  const side = {
    areaMm2: facts.areaMm2,
    material: facts.material,
    conductorDiameterMm: facts.conductorDiameterMm,
    insulationThicknessMm: facts.insulationThicknessMm,
    insulationConductivityWPerMK: facts.insulationConductivityWPerMK,
  }
  const { beyond } = facts
  const other =
    beyond === null
      ? side
      : {
          areaMm2: beyond.areaMm2,
          material: beyond.material,
          conductorDiameterMm: beyond.conductorDiameterMm,
          insulationThicknessMm: beyond.insulationThicknessMm,
          insulationConductivityWPerMK: beyond.insulationConductivityWPerMK,
        }
  const site: JointSite = { currentA: warmingA, ambientC: airAroundJointC(facts), conductors: [side, other] }
  return {
    site,
    plainOhmPerMm: acceptanceResistanceOhm({ ...site, jointLengthMm: 1, plainWireMultiple: 1 }).resistanceOhm,
    byHeatOhm: acceptanceResistanceOhm({ ...site, jointLengthMm: 1, limitC: facts.limitC }).resistanceOhm,
  }
}

/** A tenth of the drop budget: the outer limit of one joint. */
const jointShareOfDropV = (facts: JobFacts): number => facts.allowedDropV * figure('wp-joint-share', 'maxShareOfBudget')

/** Limits of a joint made that way, at the working current in the hottest air. */
export function jointLimits(method: MethodName, facts: JobFacts, ground: JointGround): JointLimits {
  const { lengthMm } = jointShape(method, facts)
  const newOhm = lengthMm * ground.plainOhmPerMm
  const agedOhm = figure('pr-mv-splice', 'agedMaxRatio') * newOhm
  const asWireOhm = facts.ohmPerM * (figure('wp-joint-share', 'equivalentWireMaxMm') / 1000)
  const outerOhm = Math.min(ground.byHeatOhm, jointShareOfDropV(facts) / facts.currentA, asWireOhm)
  return { lengthMm, newOhm, agedOhm, outerOhm: outerOhm < agedOhm ? null : outerOhm }
}
