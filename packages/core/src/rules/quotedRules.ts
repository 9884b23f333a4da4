import { frozen } from '../errors/inner.ts'
import { cautionRules } from './cautions.ts'
import { methodRules } from './method.ts'
import { aboveWaterRule, aircraftSpliceDistanceRule, endToEndRule, solderSupportRule } from './methodBearing.ts'
import type { PracticeRule } from './practiceRule.ts'
import { quotedCoveringRules } from './quotedCovering.ts'
import { quotedCutBackRules } from './quotedCutBack.ts'
import { quotedJointRules } from './quotedJoint.ts'
import { quotedProofByLooksRules } from './quotedProofByLooks.ts'
import { quotedProofByTestRules } from './quotedProofByTest.ts'
import { quotedProtectionRules } from './quotedProtection.ts'
import { quotedReadingMethodsRules } from './quotedReadingMethods.ts'
import { quotedStrainReliefRules } from './quotedStrainRelief.ts'
import { quotedWireRules } from './quotedWire.ts'
import { quotedWireConnectionsRules } from './quotedWireConnections.ts'

/**
 * The rules that a plan may quote by their id: all cautions, all that decide the method, and of the other sections those it speaks of.
 *
 * @source each rule carries its own
 */
export const quotedRules: readonly PracticeRule[] = /* @__PURE__ */ frozen([
  ...cautionRules,
  ...methodRules,
  ...quotedWireRules,
  ...quotedCutBackRules,
  ...quotedCoveringRules,
  ...quotedProtectionRules,
  ...quotedWireConnectionsRules,
  ...quotedProofByTestRules,
  ...quotedReadingMethodsRules,
  ...quotedProofByLooksRules,
  ...quotedJointRules,
  ...quotedStrainReliefRules,
  endToEndRule,
  aircraftSpliceDistanceRule,
  aboveWaterRule,
  solderSupportRule,
])
