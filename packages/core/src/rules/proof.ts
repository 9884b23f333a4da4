import { frozen } from '../errors/inner.ts'
import type { PracticeRule } from './practiceRule.ts'
import { proofByLooksRules } from './proofByLooks.ts'
import { proofByTestRules } from './proofByTest.ts'

/**
 * How the finished joint is proven, as rules.
 *
 * @source each rule carries its own
 */
export const proofRules: readonly PracticeRule[] = /* @__PURE__ */ frozen([...proofByLooksRules, ...proofByTestRules])
