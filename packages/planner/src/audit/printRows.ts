import { printable } from '../job/inner.ts'
import type { AuditResult } from './auditRow.ts'

/** Output format of a list. */
export type ListFormat = 'csv' | 'ndjson' | 'json' | 'markdown'

export const listFormats: readonly ListFormat[] = ['csv', 'ndjson', 'json', 'markdown']

const columns = ['line', 'name', 'verdict', 'conductorLowC', 'conductorHighC', 'allowedA', 'dropV', 'dropShare', 'fuseVerdict', 'reasons'] as const
const errorColumns = ['field', 'value', 'allowed'] as const

/** A cell that a spreadsheet would run as a formula; an apostrophe in front makes it text. */
const runs = /^\s*[=+\-@＝＋－＠]/

/** A text as one CSV cell: inert in a spreadsheet, on one line, quoted if needed. */
function csvCell(text: string): string {
  const inert = printable(runs.test(text) ? `'${text}` : text)
  return /[",]|^\s|\s$/.test(inert) ? `"${inert.replaceAll('"', '""')}"` : inert
}

/** A number with so many decimals, printed as two whole numbers: several times faster than printing a fraction. */
function decimals(value: number | null, digits: 2 | 5): string {
  if (value === null) return ''
  const scale = digits === 2 ? 100 : 100_000
  const parts = Math.round(Math.abs(value) * scale)
  if (parts > Number.MAX_SAFE_INTEGER) return String(value)
  const sign = value < 0 && parts > 0 ? '-' : ''
  return `${sign}${Math.floor(parts / scale)}.${String(parts % scale).padStart(digits, '0')}`
}

const shownValue = (value: unknown): string => {
  if (value === undefined) return ''
  const text = typeof value === 'string' ? value : JSON.stringify(value)
  return text.length > 60 ? `${text.slice(0, 60)}…` : text
}

function csv(result: AuditResult, lines: boolean): string {
  const line = lines ? `${result.line},` : ''
  if ('error' in result) {
    const { field, value, allowed } = result.error
    return `${line},not usable,,,,,,,,${csvCell(field)},${csvCell(shownValue(value))},${csvCell(allowed)}\n`
  }
  const { name, verdict, conductorLowC, conductorHighC, allowedA, dropV, dropShare, fuseVerdict, reasons } = result
  return `${line}${csvCell(name)},${verdict},${decimals(conductorLowC, 2)},${decimals(conductorHighC, 2)},${decimals(allowedA, 2)},${decimals(dropV, 5)},${decimals(dropShare, 5)},${fuseVerdict ?? ''},${csvCell(reasons.join('; '))},,,\n`
}

/** Text in a cell of a Markdown table, with all markup escaped. */
const markdownCell = (text: string): string => printable(text).replace(/[\\`*_{}[\]<>()#+!|~$&]/g, '\\$&')

const tenth = (value: number | null): string => (value === null ? '' : String(Math.round(value * 10) / 10))

function markdown(result: AuditResult, lines: boolean): string {
  const line = lines ? `| ${result.line} ` : ''
  if ('error' in result) {
    const { field, value, allowed } = result.error
    return `${line}|  | not usable |  |  |  | ${markdownCell(`${field} ${shownValue(value)}; allowed: ${allowed}`.trim())} |\n`
  }
  const { name, verdict, conductorHighC, allowedA, dropV, reasons } = result
  const drop = dropV === null ? '' : String(Math.round(dropV * 1000) / 1000)
  return `${line}| ${markdownCell(name)} | ${verdict} | ${tenth(conductorHighC)} | ${tenth(allowedA)} | ${drop} | ${markdownCell(reasons.join('; '))} |\n`
}

const withoutLine = ({ line: _line, ...rest }: AuditResult): unknown => rest

/** One result of the list; in JSON preceded by a comma, except the first. */
export function printRow(result: AuditResult, format: ListFormat, lines: boolean): string {
  if (format === 'csv') return csv(result, lines)
  if (format === 'markdown') return markdown(result, lines)
  return `${JSON.stringify(lines ? result : withoutLine(result))}${format === 'json' ? ',' : ''}\n`
}

/** Text before the first result. */
export function listHead(format: ListFormat, lines: boolean): string {
  const first = lines ? ['line'] : []
  if (format === 'csv') return `${[...first, ...columns.slice(1), ...errorColumns].join(',')}\n`
  if (format === 'json') return '[\n'
  if (format === 'ndjson') return ''
  const heads = [...first, 'name', 'verdict', 'hottest °C', 'allowed A', 'drop V', 'reasons']
  return `| ${heads.join(' | ')} |\n|${heads.map(() => ' --- |').join('')}\n`
}

/** Rows by verdict. */
export type Counts = Readonly<Record<'sound' | 'caution' | 'cannot tell' | 'unsound' | 'not usable', number>>

export const noCounts: Counts = { sound: 0, caution: 0, 'cannot tell': 0, unsound: 0, 'not usable': 0 }

/** The counts as one line. */
export function summaryOf(counts: Counts): string {
  const all = Object.values(counts).reduce((sum, count) => sum + count, 0)
  const parts = Object.entries(counts).map(([name, count]) => `${count} ${name}`)
  return `${all} row${all === 1 ? '' : 's'}: ${parts.join(', ')}`
}
