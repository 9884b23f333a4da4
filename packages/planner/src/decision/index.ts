export type { Decision, DecisionKind } from './decisionShapes.ts'
