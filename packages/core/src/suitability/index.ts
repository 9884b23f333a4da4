export { type AnodicIndexRow, anodicIndex } from './anodicIndex.ts'
export { assessMethods, type MethodAssessment, type MethodReason } from './assessMethods.ts'
export { galvanicDifferenceV } from './galvanicDifference.ts'
