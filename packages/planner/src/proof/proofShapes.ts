import type { MethodName } from '@strandwise/core'
import type { Finding, PlanSection } from '../facts/index.ts'

/** The joint to prove. */
export interface ProvenJoint {
  readonly method: MethodName
  readonly lengthMm: number
  /** Resistance at the working current in the hottest air. */
  readonly newOhm: number
  readonly agedOhm: number
  readonly outerOhm: number | null
}

/** Plan of the proof, and the reading that completes it. */
export interface ProofPlan {
  readonly section: PlanSection
  readonly doneWhen: readonly Finding[]
}
