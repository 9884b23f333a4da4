import { frozen } from '../errors/inner.ts'
import type { PracticeRule } from './practiceRule.ts'
import { readingLimitRules } from './readingLimits.ts'
import { readingMethodRules } from './readingMethods.ts'

/**
 * What readings at the wire prove and what they may show, as rules.
 *
 * @source each rule carries its own
 */
export const readingRules: readonly PracticeRule[] = /* @__PURE__ */ frozen([...readingMethodRules, ...readingLimitRules])
