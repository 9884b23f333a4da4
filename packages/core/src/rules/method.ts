import { frozen } from '../errors/inner.ts'
import { methodByPlaceRules } from './methodByPlace.ts'
import { methodByWireRules } from './methodByWire.ts'
import type { PracticeRule } from './practiceRule.ts'

/**
 * Which way to make the joint, as rules.
 *
 * @source each rule carries its own
 */
export const methodRules: readonly PracticeRule[] = /* @__PURE__ */ frozen([...methodByPlaceRules, ...methodByWireRules])
