import { parseQuantity, QuantityError, type QuantityKind } from '@strandwise/working/quantity'
import type * as z from 'zod/mini'
import { elementOf, fieldsOf, kindsOf, metaOf } from './fieldAt.ts'
import { repairJobShape } from './repairJobShape.ts'

type Schema = z.core.$ZodType

/** A field with two spellings: `currentA: 4.2` or `current: "4.2 A"`. */
export interface TwoSpellings {
  readonly fixed: string
  readonly written: string
  readonly kind: QuantityKind
}

/** inrushA and inrushS would both become "inrush": the time is inrushTime. */
const exceptions: Readonly<Record<string, string>> = { inrushS: 'inrushTime' }

/** Unit at the end of a quantity kind, as of its field names: areaMm2, ratedCurrentA. */
const unitAtEnd = (kind: QuantityKind): string => /[A-Z].*$/.exec(kind.replace(/^(?:temperatureDifference|thermalResistance)/, ''))?.[0] ?? ''

/** The fields of a group, or of all kinds of a union. */
const allFields = (group: Schema): readonly (readonly [string, Schema])[] => {
  const kinds = kindsOf(group)
  const shapes = kinds.length === 0 ? [fieldsOf(group)] : kinds.map((kind) => fieldsOf(group, kind))
  return [...new Map(shapes.flatMap((shape) => Object.entries(shape)))]
}

/** Fields of a group that have two spellings. */
function spellingsIn(group: Schema): readonly TwoSpellings[] {
  return allFields(group).flatMap(([fixed, schema]) => {
    const kind = metaOf(schema)?.kind
    if (kind === undefined) return []
    return { fixed, written: exceptions[fixed] ?? fixed.slice(0, -unitAtEnd(kind).length), kind }
  })
}

/** Fields with two spellings by group of the job; a sleeve inside a group is `tube`. */
export const twoSpellings: Readonly<Record<string, readonly TwoSpellings[]>> = Object.fromEntries(
  [...Object.entries(fieldsOf(repairJobShape)), ...Object.entries(fieldsOf(fieldsOf(repairJobShape).solderSleeve ?? repairJobShape))].flatMap(
    ([name, schema]) => {
      const found = spellingsIn(elementOf(schema) ?? schema)
      return found.length === 0 ? [] : [[name, found]]
    },
  ),
)

/** Quantity kind of a reading's value. */
function readingQuantity(kind: unknown): QuantityKind {
  if (kind === 'current') return 'currentA'
  if (kind === 'temperature') return 'temperatureC'
  return kind === 'drop' || kind === 'voltage' ? 'voltageV' : 'resistanceOhm'
}

interface SpellingIssue {
  readonly path: readonly (string | number)[]
  readonly value: unknown
  readonly allowed: string
}

type Plain = Readonly<Record<string, unknown>>

function isPlain(value: unknown): value is Plain {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}

function read(text: unknown, kind: QuantityKind, path: readonly (string | number)[], issues: SpellingIssue[]): unknown {
  if (typeof text !== 'string') {
    issues.push({ path, value: text, allowed: 'a text with its unit; a bare number goes under the name that ends in the unit' })
    return undefined
  }
  try {
    return parseQuantity(text, kind)
  } catch (error) {
    if (!(error instanceof QuantityError)) throw error
    issues.push({ path, value: text, allowed: `${error.allowed}${error.readings === undefined ? '' : `; it could be ${error.readings.join(' or ')}`}` })
    return undefined
  }
}

function ends(value: unknown, kind: QuantityKind, path: readonly (string | number)[], issues: SpellingIssue[]): unknown {
  if (!isPlain(value)) return read(value, kind, path, issues)
  return Object.fromEntries(Object.entries(value).map(([key, end]) => [key, typeof end === 'string' ? read(end, kind, [...path, key], issues) : end]))
}

function group(name: string, value: unknown, path: readonly (string | number)[], issues: SpellingIssue[]): unknown {
  // Nested lists are not allowed: the schema refuses them.
  if (Array.isArray(value)) return value.map((item, index) => (isPlain(item) ? group(name, item, [...path, index], issues) : item))
  if (!isPlain(value)) return value
  const result: Record<string, unknown> = Object.create(null)
  for (const [key, item] of Object.entries(value)) result[key] = item
  for (const { fixed, written, kind } of twoSpellings[name] ?? []) {
    if (!Object.hasOwn(value, written)) continue
    delete result[written]
    if (Object.hasOwn(value, fixed)) issues.push({ path: [...path, written], value: value[written], allowed: `one spelling: ${fixed} or ${written}, not both` })
    else result[fixed] = ends(value[written], kind, [...path, written], issues)
  }
  if (name === 'readings') {
    const kind = readingQuantity(value.kind)
    if (typeof value.value === 'string') result.value = read(value.value, kind, [...path, 'value'], issues)
    const step = kind === 'temperatureC' ? 'temperatureDifferenceK' : kind
    if (typeof value.resolution === 'string') result.resolution = read(value.resolution, step, [...path, 'resolution'], issues)
  }
  if (name === 'solderSleeve') result.tube = group('tube', value.tube, [...path, 'tube'], issues)
  return { ...result }
}

/** The schema's transform: text spellings become numbers in fixed units; unreadable ones become issues at their path. */
export function canonicalSpelling(input: unknown, context: { readonly issues: unknown[] }): unknown {
  const issues: SpellingIssue[] = []
  const result = withFixedUnits(input, issues)
  for (const issue of issues) {
    context.issues.push({ code: 'custom', input: issue.value, path: [...issue.path], message: issue.allowed, params: { allowed: issue.allowed } })
  }
  return result
}

function withFixedUnits(input: unknown, issues: SpellingIssue[]): unknown {
  if (!isPlain(input)) return input
  return Object.fromEntries(
    Object.entries(input).map(([key, value]) => [key, key === 'solderSleeve' || Object.hasOwn(twoSpellings, key) ? group(key, value, [key], issues) : value]),
  )
}
