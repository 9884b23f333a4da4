import { judgedRow } from './auditBatch.ts'
import type { AuditResult } from './auditRow.ts'
import { csvRows, ndjsonRows } from './csvRows.ts'
import { openList } from './openList.ts'
import { listHead, printRow } from './printRows.ts'

async function* one(text: string): AsyncGenerator<string> {
  yield text
}

/**
 * Reads a list of wires, a table as CSV or one JSON object a line, and judges its rows in their order, as the command audit does.
 *
 * The list may be a text, or a stream of texts or bytes such as a file's; only a part of it is held at a time. A row that can't be used is a result with its line, field, value and what is allowed.
 *
 * @throws ListError for a list that can't be read at all: no text, without a needed column, with a column twice, or with a quotation mark left open
 * @example
 * auditList('name,size,insulation,outLengthM,currentA,supplyV,ambientC') // {}
 */
export async function* auditList(list: string | AsyncIterable<Uint8Array | string>, onUnused?: (column: string) => void): AsyncGenerator<AuditResult> {
  const { columns, unused, batches } = await openList(typeof list === 'string' ? one(list) : list)
  const told = new Set<string>()
  const tell = (name: string): void => {
    if (told.has(name)) return
    told.add(name)
    onUnused?.(name)
  }
  unused.forEach(tell)
  for await (const batch of batches) {
    const rows = columns === null ? ndjsonRows(batch, tell) : csvRows(batch, columns)
    for (const row of rows) yield judgedRow(row)
  }
}

/**
 * The results of an audit as a table in CSV, as the command prints it: cells that a spreadsheet would run are written as text.
 *
 * @throws nothing
 * @example
 * auditCsv([]) // 'line,name,verdict,conductorLowC,conductorHighC,allowedA,dropV,dropShare,fuseVerdict,reasons,field,value,allowed\n'
 */
export function auditCsv(results: Iterable<AuditResult>): string {
  let text = listHead('csv', true)
  for (const result of results) text += printRow(result, 'csv', true)
  return text
}
