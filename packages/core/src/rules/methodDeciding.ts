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
 * Rules that affect the choice of a method: refusals, the method's own rules, and rules of other sections that exclude a method, attach a condition to it or prefer it.
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
