// Internal exports for the planner's command.
export { auditBatch, type JudgedBatch, type ListSetup } from './auditBatch.ts'
export { type Batch, batchesOf, EndlessRecord, mostRecordBytes } from './batches.ts'
export { columnsOf, HeadError } from './csvRows.ts'
export { type Counts, type ListFormat, listFormats, listHead, noCounts, summaryOf } from './printRows.ts'
