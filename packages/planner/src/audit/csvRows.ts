import { distance } from 'fastest-levenshtein'
import { type CsvError, parse } from '#csv-parse'
import { auditNames, closestField, neededNames } from './auditFields.ts'
import { type Batch, recordsOf } from './batches.ts'
import { ListError } from './listError.ts'

/** A row of a list as an object, or the reason why it cannot be read. */
export interface ListedRow {
  readonly line: number
  readonly row?: Readonly<Record<string, unknown>>
  readonly error?: { readonly field: string; readonly value: unknown; readonly allowed: string }
}

const options = { relax_column_count: true, skip_empty_lines: true, record_delimiter: ['\r\n', '\n'], trim: true, skip_records_with_error: true }

interface Told {
  readonly record: readonly string[]
  readonly info: { readonly lines: number }
}

/** The field of each column; null for an unknown one. */
export type Columns = readonly (string | null)[]

const mostColumns = 200
/** Largest share of differing letters for a name to count as misspelt. */
const mostWrong = 0.4
const short = (text: string): string => (text.length > 40 ? `${text.slice(0, 40)}…` : text)

/** The columns of a table from its header, and the unknown names. */
export function columnsOf(head: string): { readonly columns: Columns; readonly unused: readonly string[] } {
  const [names = []] = parse(head.replace(/^\ufeff/, ''), { ...options, to: 1 })
  if (names.length > mostColumns)
    throw new ListError(`line 1: ${names.length} columns; allowed: at most ${mostColumns}, of which these are read: ${auditNames.join(', ')}`)
  const columns = names.map((name) => (auditNames.includes(name) ? name : null))
  const unused = names.filter((name, index) => columns[index] === null && name !== '')
  const doubled = auditNames.filter((name) => columns.filter((column) => column === name).length > 1)
  const missing = neededNames.filter((name) => !columns.includes(name))
  const near = (name: string): string => {
    const like = unused.find((other) => closestField(other) === name && distance(other.slice(0, 60), name) <= mostWrong * name.length)
    return like === undefined ? '' : `; "${short(like)}" is close to it`
  }
  const lines = [
    ...doubled.map((name) => `line 1: ${name}: stands twice; allowed: one column of that name`),
    ...missing.map((name) => `line 1: ${name}: missing; allowed: a column of that name${near(name)}`),
    ...(columns.includes('areaMm2') || columns.includes('size') ? [] : ['line 1: areaMm2: missing; allowed: a column areaMm2 or size']),
  ]
  if (lines.length > 0) throw new ListError(...lines)
  return { columns, unused: unused.map(short) }
}

function rowOf(cells: readonly string[], columns: Columns, line: number): ListedRow {
  if (cells.length > columns.length) return { line, error: { field: '', value: cells[columns.length], allowed: `${columns.length} columns, as in line 1` } }
  const row: Record<string, string> = {}
  for (let index = 0; index < columns.length; index += 1) {
    const name = columns[index] ?? null
    const cell = cells[index]
    if (name !== null && cell !== undefined && cell !== '') row[name] = cell
  }
  return { line, row }
}

const brokenWords: Readonly<Record<string, string>> = {
  INVALID_OPENING_QUOTE: 'a quotation mark inside a cell only where the whole cell stands in quotation marks',
  CSV_INVALID_CLOSING_QUOTE: 'a comma or the end of the line behind a closing quotation mark; one inside is written twice',
  CSV_QUOTE_NOT_CLOSED: 'a quotation mark that is closed again',
}

/** One record by itself; if it is broken and spans lines, as behind a quotation mark left open, its lines one by one: one bad row spoils no other. */
function alone({ text, line }: Pick<Batch, 'text' | 'line'>, columns: Columns): readonly ListedRow[] {
  try {
    const [cells, more] = parse(text, { ...options, skip_records_with_error: false })
    if (more === undefined) return cells === undefined ? [] : [rowOf(cells, columns, line)]
  } catch (error) {
    const lines = text.trimEnd().split('\n')
    if (lines.length === 1) return [{ line, error: { field: '', value: undefined, allowed: brokenWords[(error as CsvError).code] ?? 'a record of a table' } }]
    return lines.flatMap((one, at) => alone({ text: one, line: line + at }, columns))
  }
  return [{ line, error: { field: '', value: undefined, allowed: 'a record of a table' } }]
}

/** Fallback for batches with empty lines, records that span lines, or broken ones: tracks the line of each. */
function slowly(batch: Batch, columns: Columns): readonly ListedRow[] {
  let broken = false
  const read = parse(batch.text, {
    ...options,
    info: true,
    on_skip: () => {
      broken = true
    },
  } as never) as unknown as readonly Told[]
  if (broken) return recordsOf(batch).flatMap((record) => alone(record, columns))
  return read.map(({ record, info }) => {
    const inside = record.reduce((sum, cell) => sum + cell.split('\n').length - 1, 0)
    return rowOf(record, columns, batch.line + info.lines - 1 - inside)
  })
}

/** The rows of a batch of a table. */
export function csvRows(batch: Batch, columns: Columns): readonly ListedRow[] {
  const records = parse(batch.text, options)
  if (records.length !== batch.lines) return slowly(batch, columns)
  return records.map((cells, index) => rowOf(cells, columns, batch.line + index))
}

/** The rows of a batch of JSON lines; unknown names are dropped and reported. */
export function ndjsonRows({ text, line }: Batch, unused: (name: string) => void): readonly ListedRow[] {
  return text.split('\n').flatMap((one, index): readonly ListedRow[] => {
    if (one.trim() === '') return []
    let value: unknown
    try {
      value = JSON.parse(index === 0 && line === 1 ? one.replace(/^\ufeff/, '') : one)
    } catch {
      return [{ line: line + index, error: { field: '', value: one.slice(0, 60), allowed: 'one JSON object a line' } }]
    }
    if (typeof value !== 'object' || value === null || Array.isArray(value))
      return [{ line: line + index, error: { field: '', value, allowed: 'one JSON object a line' } }]
    const row: Record<string, unknown> = {}
    for (const [name, cell] of Object.entries(value)) {
      if (auditNames.includes(name)) row[name] = cell
      else unused(short(name))
    }
    return [{ line: line + index, row }]
  })
}
