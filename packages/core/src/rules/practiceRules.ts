import { frozen } from '../errors/inner.ts'
import { cautionRules } from './cautions.ts'
import { coveringRules } from './covering.ts'
import { cutBackRules } from './cutBack.ts'
import { heatingRules } from './heating.ts'
import { jointRules } from './joint.ts'
import { methodRules } from './method.ts'
import type { PracticeRule } from './practiceRule.ts'
import { proofRules } from './proof.ts'
import { readingRules } from './readings.ts'
import { strainReliefRules } from './strainRelief.ts'
import { wireAndProtectionRules } from './wireAndProtection.ts'

/**
 * The rules of each section of a plan, cautions first.
 *
 * @source each rule carries its own
 */
export const practiceRulesBySection: Readonly<Record<PracticeRule['decides'], readonly PracticeRule[]>> = /* @__PURE__ */ frozen({
  cautions: cautionRules,
  readings: readingRules,
  'wire-and-protection': wireAndProtectionRules,
  'cut-back': cutBackRules,
  method: methodRules,
  joint: jointRules,
  heating: heatingRules,
  covering: coveringRules,
  'strain-relief': strainReliefRules,
  proof: proofRules,
})

/**
 * Every rule of the trade that the library knows, in the order of the plan, cautions first.
 *
 * @source each rule carries its own
 */
export const practiceRules: readonly PracticeRule[] = /* @__PURE__ */ frozen(Object.values(practiceRulesBySection).flat())

/**
 * Rules that a plan may quote by id: every rule, as `practiceRules`.
 *
 * @source each rule carries its own
 */
export const quotedRules: readonly PracticeRule[] = practiceRules
