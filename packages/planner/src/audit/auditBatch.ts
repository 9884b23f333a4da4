import { type AuditResult, auditRow } from './auditRow.ts'
import type { Batch } from './batches.ts'
import { type Columns, csvRows, type ListedRow, ndjsonRows } from './csvRows.ts'
import { type Counts, type ListFormat, noCounts, printRow } from './printRows.ts'

/** How a list is read and printed; columns of a table, null for JSON lines. */
export interface ListSetup {
  readonly columns: Columns | null
  readonly format: ListFormat
  readonly lines: boolean
}

/** Result of one batch. */
export interface JudgedBatch {
  readonly text: string
  readonly counts: Counts
  readonly unused: readonly string[]
}

/** The verdict on a row as read. */
export const judgedRow = ({ line, row, error }: ListedRow): AuditResult => (error === undefined ? auditRow(row, line) : { line, error })

/** Judges and prints the rows of a batch, on any thread. */
export function auditBatch(batch: Batch, { columns, format, lines }: ListSetup): JudgedBatch {
  const unused = new Set<string>()
  const rows = columns === null ? ndjsonRows(batch, (name) => unused.add(name)) : csvRows(batch, columns)
  const counts = { ...noCounts }
  let text = ''
  for (const row of rows) {
    const result = judgedRow(row)
    counts['error' in result ? 'not usable' : result.verdict] += 1
    text += printRow(result, format, lines)
  }
  return { text, counts, unused: [...unused] }
}
