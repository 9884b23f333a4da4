import { parseQuantity, QuantityError, type QuantityKind } from '@strandwise/working/quantity'
import { closest } from 'fastest-levenshtein'
import { fieldMetaAt, insulationNames, metalNames } from '../job/inner.ts'

/** One field of a row; it allows the same values as that field of a repair job. */
interface AuditField {
  readonly name: string
  readonly needed: boolean
  readonly allowed: string
  readonly low?: number
  readonly high?: number
  readonly whole?: boolean
  readonly kind?: QuantityKind
  readonly words?: readonly string[]
}

const longestName = 200

function numberLike(name: string, path: string, needed: boolean, whole = false): AuditField {
  const { allowed, low = 0, high = Number.MAX_VALUE, kind } = fieldMetaAt(path)
  return { name, needed, allowed, low, high, whole, ...(kind === undefined ? {} : { kind }) }
}

const choice = (name: string, needed: boolean, words: readonly string[]): AuditField => ({ name, needed, allowed: words.join(', '), words })

/** The fields of a row, in column order. */
const auditFields: readonly AuditField[] = [
  { name: 'name', needed: true, allowed: `a text of 1 to ${longestName} characters` },
  numberLike('areaMm2', 'wire.areaMm2', false),
  { name: 'size', needed: false, allowed: 'a wire size, such as "18 AWG" or "1.5 mm²"' },
  choice('material', false, metalNames),
  choice('insulation', true, insulationNames),
  numberLike('insulationThicknessMm', 'wire.insulationThicknessMm', false),
  numberLike('outLengthM', 'wire.outLengthM', true),
  numberLike('returnLengthM', 'wire.returnLengthM', false),
  numberLike('currentA', 'load.currentA', true),
  numberLike('supplyV', 'circuit.supplyV', true),
  numberLike('allowedDropV', 'circuit.allowedDropV', false),
  numberLike('ambientC', 'surroundings.hottestC', true),
  numberLike('loadedInBundle', 'wire.loadedInBundle', false, true),
  numberLike('limitC', 'terminal.limitC', false),
  numberLike('fuseA', 'circuit.fuseA', false),
  choice('fuseSeries', false, ['ISO 8820-3']),
]

/**
 * The columns of a list of wires, in order: their names, which of them every row needs, and what is allowed. Instead of areaMm2 a row may have size.
 *
 * @source the fields of a repair job
 */
export const auditColumns: readonly { readonly name: string; readonly needed: boolean; readonly allowed: string }[] = auditFields.map(
  ({ name, needed, allowed }) => ({ name, needed, allowed }),
)

export const auditNames: readonly string[] = auditFields.map(({ name }) => name)
export const neededNames: readonly string[] = auditFields.filter(({ needed }) => needed).map(({ name }) => name)
const known: ReadonlySet<string> = new Set(auditNames)

/** Unusable field of a row. */
export interface RowError {
  readonly field: string
  readonly value: unknown
  readonly allowed: string
}

/** The known field name closest to an unknown one. */
export const closestField = (name: string): string => closest(name.slice(0, 60), auditNames)

const plainNumber = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?$/i

/** A number, a number as text, or a text with its unit; null for anything else. */
function numberFrom(value: unknown, kind: QuantityKind | undefined): number | null {
  if (typeof value === 'number') return value
  if (typeof value !== 'string') return null
  if (plainNumber.test(value)) return Number(value)
  if (kind === undefined) return null
  try {
    return parseQuantity(value, kind)
  } catch (error) {
    if (error instanceof QuantityError) return null
    throw error
  }
}

function textFrom(field: AuditField, value: unknown): string | null {
  if (typeof value !== 'string') return null
  if (field.words !== undefined) return field.words.includes(value) ? value : null
  return value.length <= longestName ? value : null
}

/** Reads a field into the row; false if unusable. Undefined, null and empty text count as absent. */
function readField(field: AuditField, value: unknown, row: Record<string, number | string>): boolean {
  if (value === undefined || value === null || value === '') return !field.needed
  if (field.low === undefined || field.high === undefined) {
    const text = textFrom(field, value)
    if (text === null) return false
    row[field.name] = text
    return true
  }
  const number = numberFrom(value, field.kind)
  if (number === null || !(number >= field.low && number <= field.high)) return false
  if (field.whole === true && !Number.isInteger(number)) return false
  row[field.name] = number
  return true
}

/** A row's fields in fixed units, or the first unusable one. */
export function readRow(input: unknown): { readonly row: Readonly<Record<string, number | string>> } | { readonly error: RowError } {
  if (typeof input !== 'object' || input === null || Array.isArray(input))
    return { error: { field: '', value: input, allowed: `an object with ${auditNames.join(', ')}` } }
  const given = input as Readonly<Record<string, unknown>>
  for (const name of Object.keys(given)) {
    if (!known.has(name)) return { error: { field: name, value: given[name], allowed: `no such field; the closest is "${closestField(name)}"` } }
  }
  const row: Record<string, number | string> = {}
  for (const field of auditFields) {
    const value = Object.hasOwn(given, field.name) ? given[field.name] : undefined
    if (!readField(field, value, row)) return { error: { field: field.name, value, allowed: field.allowed } }
  }
  return { row }
}
