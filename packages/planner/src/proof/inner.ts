// What the planner's later rooms build on and no user sees.
export { proofOf } from './proofOf.ts'
export type { ProofPlan, ProvenJoint } from './proofShapes.ts'
