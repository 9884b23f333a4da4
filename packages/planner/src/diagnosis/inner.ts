// Internal exports for later rooms of the planner.
export { causeWords } from './causeWords.ts'
export { proofFrom } from './diagnosisFrom.ts'
export { diagnosisOf } from './diagnosisOf.ts'
