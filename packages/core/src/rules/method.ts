import { frozen } from '../errors/inner.ts'
import { methodByPlaceRules } from './methodByPlace.ts'
import { methodByWireRules } from './methodByWire.ts'
import type { PracticeRule } from './practiceRule.ts'

/**
 * Choice of the joining method, as rules.
 *
 * @source each rule carries its own
 */
export const methodRules: readonly PracticeRule[] = /* @__PURE__ */ frozen([...methodByPlaceRules, ...methodByWireRules])
