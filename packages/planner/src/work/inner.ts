// Internal exports for later rooms of the planner.
export { currentToRead } from './fewCounts.ts'
export { partsFor } from './parts.ts'
export { samplePull } from './samplePull.ts'
export { readsMillivolts, sequenceFor, settlingS } from './sequence.ts'
export type { Work } from './worked.ts'
