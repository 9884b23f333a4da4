import { acceptanceResistanceOhm, type JointSite, type MethodName } from '@strandwise/core'
import { airAroundJointC, figure, type JobFacts } from '../facts/inner.ts'
import { jointShape } from './jointShape.ts'

/** Limits of a joint's resistance. */
export interface JointLimits {
  readonly lengthMm: number
  /** New: at most that of its own length of wire. */
  readonly newOhm: number
  /** After ageing. */
  readonly agedOhm: number
  /** Rework limit: the smallest of drop, temperature, and a multiple of plain wire; null if it is below an aged joint. */
  readonly outerOhm: number | null
}

/** Values common to all joints of the same wire and place, computed once. */
export interface JointGround {
  readonly site: JointSite
  /** Resistance of a millimetre of plain wire. */
  readonly plainOhmPerMm: number
  /** Resistance limit by temperature, whatever the joint's length. */
  readonly byHeatOhm: number
}

/** The joint in service: both wires, equivalent steady current (for a cycle, by its peak), surrounding air. */
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

/** Outer limit of one joint: a tenth of the drop budget. */
const jointShareOfDropV = (facts: JobFacts): number => facts.allowedDropV * figure('wp-joint-share', 'maxShareOfBudget')

/** Limits of a joint by this method, at the working current in the hottest air. */
export function jointLimits(method: MethodName, facts: JobFacts, ground: JointGround): JointLimits {
  const { lengthMm } = jointShape(method, facts)
  const newOhm = lengthMm * ground.plainOhmPerMm
  const agedOhm = figure('pr-mv-splice', 'agedMaxRatio') * newOhm
  const asWireOhm = facts.ohmPerM * (figure('wp-joint-share', 'equivalentWireMaxMm') / 1000)
  const outerOhm = Math.min(ground.byHeatOhm, jointShareOfDropV(facts) / facts.currentA, asWireOhm)
  return { lengthMm, newOhm, agedOhm, outerOhm: outerOhm < agedOhm ? null : outerOhm }
}
