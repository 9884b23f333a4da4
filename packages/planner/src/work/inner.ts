// What the planner's later rooms build on and no user sees.
export { partsFor } from './parts.ts'
export { samplePull } from './samplePull.ts'
export { readsMillivolts, sequenceFor, settlingS } from './sequence.ts'
export type { Work } from './worked.ts'
