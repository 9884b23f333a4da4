// Internal exports for the planner's command.
export { auditBatch, type JudgedBatch, type ListSetup } from './auditBatch.ts'
export type { Batch } from './batches.ts'
export { openList } from './openList.ts'
export { type Counts, type ListFormat, listFormats, listHead, noCounts, summaryOf } from './printRows.ts'
