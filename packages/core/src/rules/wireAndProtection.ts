import { frozen } from '../errors/inner.ts'
import type { PracticeRule } from './practiceRule.ts'
import { protectionRules } from './protection.ts'
import { wireRules } from './wire.ts'
import { wireConnectionRules } from './wireConnections.ts'

/**
 * The wire, its ends and the fuse that guards it, as rules.
 *
 * @source each rule carries its own
 */
export const wireAndProtectionRules: readonly PracticeRule[] = /* @__PURE__ */ frozen([...wireRules, ...wireConnectionRules, ...protectionRules])
