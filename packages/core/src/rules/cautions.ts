import { frozen } from '../errors/inner.ts'
import { cautionsAroundVehiclesRules } from './cautionsAroundVehicles.ts'
import { cautionsAtWorkRules } from './cautionsAtWork.ts'
import type { PracticeRule } from './practiceRule.ts'
import { stopRules } from './stops.ts'

/**
 * Cautions shown before all else: circuits that are refused first, then dangers of the work.
 *
 * @source each rule carries its own
 */
export const cautionRules: readonly PracticeRule[] = /* @__PURE__ */ frozen([...stopRules, ...cautionsAtWorkRules, ...cautionsAroundVehiclesRules])
