import type { MethodName } from '@strandwise/core'
import type { Finding, PlanSection } from '../facts/index.ts'

/** The joint that is to be proven. */
export interface ProvenJoint {
  readonly method: MethodName
  readonly lengthMm: number
  /** At the working current in the hottest air. */
  readonly newOhm: number
  readonly agedOhm: number
  readonly outerOhm: number | null
}

/** How the repair is shown to be good, and the reading that shows it. */
export interface ProofPlan {
  readonly section: PlanSection
  readonly doneWhen: readonly Finding[]
}
