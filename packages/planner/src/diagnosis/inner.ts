// What the planner's later rooms build on and no user sees.
export { causeWords } from './causeWords.ts'
export { proofFrom } from './diagnosisFrom.ts'
export { diagnosisOf } from './diagnosisOf.ts'
