// Internal exports for later rooms of the planner.
export { type MendedWithoutJoint, proofOf } from './proofOf.ts'
export type { ProofPlan, ProvenJoint } from './proofShapes.ts'
