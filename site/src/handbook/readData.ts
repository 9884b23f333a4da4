import * as core from '@strandwise/core'
import { entries } from '../../../tests/docs/entries.ts'
import { shown, wordsOf } from '../methodPage/readable.ts'
import { differencesOf } from './againstFormula.ts'
import type { Cell, HandData, HandTable } from './facts.ts'
import { titleOf } from './readFunctions.ts'

type Fields = Readonly<Record<string, unknown>>

const isFields = (value: unknown): value is Fields => typeof value === 'object' && value !== null && !Array.isArray(value)
/** Shorter lists are no tables. */
const fewestRows = 2
/** Fewer records are no list of materials. */
const fewestRecords = 3

const isRows = (value: unknown): value is readonly Fields[] => Array.isArray(value) && value.length >= fewestRows && value.every(isFields)

/** True for records by name with provenance: the lists of materials. */
const isRecords = (value: Fields): boolean => {
  const items = Object.values(value)
  return (
    items.length >= fewestRecords &&
    items.every((item) => isFields(item) && ('provenance' in item || Object.values(item).some((part) => isFields(part) && 'provenance' in part)))
  )
}

/** A value as a cell; intervals and objects in words. */
function cell(value: unknown, key: string): Cell {
  if (value === null || value === undefined) return ''
  // Converted figures without the noise of their last bits.
  if (typeof value === 'number') return Number(value.toPrecision(12))
  if (isFields(value) && typeof value.low === 'number' && value.low === value.high) return value.low
  const { unit } = wordsOf(key)
  const text = shown(value, key)
  return unit !== '' && text.endsWith(` ${unit}`) ? text.replaceAll(` ${unit}`, '') : text
}

const statusOf = (row: Fields): string => {
  const own = [
    row.status,
    ...Object.entries(row).flatMap(([key, value]) =>
      key.endsWith('Status') ? [value] : isFields(value) && isFields(value.provenance) ? [value.provenance.status] : [],
    ),
  ]
  const provenance = isFields(row.provenance) ? [row.provenance.status] : []
  return [...new Set([...own, ...provenance].filter((status) => typeof status === 'string'))].join(', ')
}

const hidden = /^(provenance|status|sure)$|Status$|Provenance$/

function tableOf(name: string, title: string, rows: readonly Fields[], status: string, holder: Fields): HandTable {
  const keys = [...new Set(rows.flatMap((row) => Object.keys(row).filter((key) => !hidden.test(key) && !isRows(row[key]))))]
  const differences = differencesOf(name, keys, holder).filter(({ percent }) => rows.some((row) => percent(row) !== null))
  return {
    name: title === '' ? name : `${name}, ${title}`,
    title,
    columns: [
      ...keys.map((key) => ({ key, ...wordsOf(key) })),
      ...differences.map(({ column, by }) => ({ key: `${column}-difference`, words: `${wordsOf(column).words} against ${by}`, unit: '%' })),
      { key: 'status', words: 'status', unit: '' },
    ],
    rows: rows.map((row) => [
      ...keys.map((key) => cell(row[key], key)),
      ...differences.map(({ percent }) => {
        const found = percent(row)
        return found === null ? '' : Number(found.toFixed(2)) + 0
      }),
      statusOf(row) || status,
    ]),
  }
}

/** "methodB2A", currents of method B2, as "method B2"; a name with spaces or signs stays as it is. */
function wordsInTitle(key: string): string {
  const [, word, letter] = /^([a-z]+)([A-Z]\d*)A$/.exec(key) ?? []
  if (word !== undefined) return `${word} ${letter}`
  return /[^A-Za-z0-9]/.test(key) ? key : wordsOf(key).words
}
const joined = (title: string, key: string): string => [title, wordsInTitle(key)].filter((part) => part !== '').join(', ')

/** Every list of rows within an export, titled by its path. */
function tablesIn(name: string, value: unknown, title: string, status: string, holder: Fields, depth = 0): readonly HandTable[] {
  if (isRows(value)) return [tableOf(name, title, value, status, holder)]
  if (!isFields(value) || depth > 2) return []
  const statusIn = (key: string): string | undefined => {
    const provenance = value[key]
    return isFields(provenance) && typeof provenance.status === 'string' ? provenance.status : undefined
  }
  const own = statusIn('provenance') ?? status
  const lists = Object.entries(value).flatMap(([key, inner]) =>
    // A list may have a provenance of its own beside it.
    hidden.test(key) ? [] : tablesIn(name, inner, key === 'rows' ? title : joined(title, key), statusIn(`${key}Provenance`) ?? own, value, depth + 1),
  )
  if (depth > 0 || !isRecords(value)) return lists
  const records = Object.entries(value).map(([key, item]) => ({ name: key, ...(item as Fields) }))
  // A record that only holds a list is told by that list.
  const told = records.some((record) => Object.entries(record).some(([key, inner]) => key !== 'name' && !hidden.test(key) && !isRows(inner)))
  return [...(told ? [tableOf(name, title, records, own, value)] : []), ...lists]
}

const sourceOf = (value: unknown): string => {
  const provenance = isFields(value) && isFields(value.provenance) ? value.provenance : undefined
  return provenance === undefined ? '' : [provenance.source, provenance.edition, provenance.clause].filter((part) => typeof part === 'string').join(', ')
}

/** A page for every export of core with rows; rules have pages of their own. */
export function readData(): readonly HandData[] {
  return entries()
    .filter(({ package: name, kind, room }) => name === 'core' && kind === 'value' && room !== 'rules')
    .flatMap((entry): readonly HandData[] => {
      const value = (core as Fields)[entry.name]
      const tables = tablesIn(entry.name, value, '', '', {})
      if (tables.length === 0 || /Defaults$/.test(entry.name)) return []
      const statuses = tables.flatMap(({ rows }) => rows.flatMap((row) => String(row.at(-1) ?? '').split(', '))).filter((status) => status !== '')
      return [
        {
          name: entry.name,
          words: titleOf(entry.name),
          package: entry.package,
          room: entry.room,
          sentence: entry.doc.sentence,
          source: sourceOf(value) || entry.doc.sources.join('; '),
          statuses: [...new Set(statuses)],
          tables,
        },
      ]
    })
}
