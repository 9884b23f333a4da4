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
 * Rules that a plan may quote by id: all cautions, all that affect the method, and some of the other sections.
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
