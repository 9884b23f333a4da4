import { frozen } from '../errors/inner.ts'
import { methodRules } from './method.ts'
import {
  aboveWaterRule,
  accessibleRule,
  adhesiveNoBondRule,
  adhesiveSoftensRule,
  aircraftSpliceDistanceRule,
  coldPvcRule,
  endToEndRule,
  fromCentreRule,
  galvanicLimitRule,
  heatTheWorkRule,
  noRoomAtPlugRule,
  solderSleeveOrderRule,
  solderSupportRule,
} from './methodBearing.ts'
import type { PracticeRule } from './practiceRule.ts'
import { stopRules } from './stops.ts'

/**
 * The rules that bear on the choice of a method: the refusals, the method's own, and those of other sections that rule a way out, tie it to a condition or put it first.
 *
 * @source each rule carries its own
 */
export const methodDecidingRules: readonly PracticeRule[] = /* @__PURE__ */ frozen([
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
])
