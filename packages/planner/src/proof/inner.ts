// Internal exports for later rooms of the planner.
export { proofOf } from './proofOf.ts'
export type { ProofPlan, ProvenJoint } from './proofShapes.ts'
