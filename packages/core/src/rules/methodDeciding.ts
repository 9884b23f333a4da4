import { adhesiveNoBondRule, adhesiveSoftensRule, fromCentreRule } from './covering.ts'
import { aboveWaterRule, accessibleRule, aircraftSpliceDistanceRule, coldPvcRule, endToEndRule, noRoomAtPlugRule } from './cutBack.ts'
import { heatTheWorkRule, solderSleeveOrderRule } from './heating.ts'
import { galvanicLimitRule } from './joint.ts'
import { methodRules } from './method.ts'
import type { PracticeRule } from './practiceRule.ts'
import { stopRules } from './stops.ts'
import { solderSupportRule } from './strainRelief.ts'

/**
 * The rules that bear on the choice of a method: the refusals, the method's own, and those of other sections that rule a way out, tie it to a condition or put it first.
 *
 * @source each rule carries its own
 */
export const methodDecidingRules: readonly PracticeRule[] = [
  ...stopRules,
  ...methodRules,
  endToEndRule,
  aircraftSpliceDistanceRule,
  noRoomAtPlugRule,
  aboveWaterRule,
  accessibleRule,
  coldPvcRule,
  adhesiveNoBondRule,
  adhesiveSoftensRule,
  galvanicLimitRule,
  heatTheWorkRule,
  solderSleeveOrderRule,
  fromCentreRule,
  solderSupportRule,
]
