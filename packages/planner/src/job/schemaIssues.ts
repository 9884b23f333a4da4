import { closest } from 'fastest-levenshtein'
import type * as z from 'zod/mini'
import { fieldsOf, kindsOf, metaOf, schemaAt } from './fieldAt.ts'
import type { JobIssue } from './jobError.ts'
import { twoSpellings } from './spellings.ts'

const mostIssues = 20

function at(value: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (inside, key) =>
      typeof inside === 'object' && inside !== null && Object.hasOwn(inside, key) ? (inside as Readonly<Record<PropertyKey, unknown>>)[key] : undefined,
    value,
  )
}

function writtenFor(path: readonly PropertyKey[], value: unknown): readonly PropertyKey[] {
  // The schema says currentA; if the person wrote `current`, the message uses that.
  const last = path.at(-1)
  const group = path.find((key) => typeof key === 'string' && Object.hasOwn(twoSpellings, key))
  const pair = twoSpellings[String(group)]?.find((names) => names.fixed === last)
  const written = pair === undefined ? path : [...path.slice(0, -1), pair.written]
  return at(value, path) === undefined && at(value, written) !== undefined ? written : path
}

/** Issues of a schema by field: path, value, what is allowed, a corrected example. */
export function schemaIssues(shape: z.core.$ZodType, issues: readonly z.core.$ZodIssue[], input: unknown): readonly JobIssue[] {
  return issues.flatMap((issue) => toIssues(shape, issue, input)).slice(0, mostIssues)
}

function toIssues(shape: z.core.$ZodType, issue: z.core.$ZodIssue, input: unknown): readonly JobIssue[] {
  if (issue.code === 'unrecognized_keys') return issue.keys.map((key) => unknownField(shape, issue.path, key, input))
  const path = writtenFor(issue.path, input)
  if (issue.code === 'invalid_union') return [unknownKind(shape, issue.path, input)]
  const schema = schemaAt(shape, issue.path, input)
  const meta = metaOf(schema)
  const allowed = (issue as { readonly params?: { readonly allowed?: string } }).params?.allowed ?? meta?.allowed ?? plainAllowed(schema, issue)
  return [{ path: path.join('.'), value: at(input, path), allowed, example: exampleFor(path, meta?.example) }]
}

/** Unknown discriminator of a tool; the issue's path ends in that field. */
function unknownKind(shape: z.core.$ZodType, path: readonly PropertyKey[], input: unknown): JobIssue {
  const holder = schemaAt(shape, path.slice(0, -1), input)
  const kinds = holder === undefined ? [] : kindsOf(holder)
  return { path: path.join('.'), value: at(input, path), allowed: kinds.join(', '), example: exampleFor(path, JSON.stringify(kinds[0])) }
}

function unknownField(shape: z.core.$ZodType, path: readonly PropertyKey[], key: string, input: unknown): JobIssue {
  const holder = schemaAt(shape, path, input)
  const names = holder === undefined ? [] : Object.keys(fieldsOf(holder, (at(input, path) as { readonly kind?: unknown } | undefined)?.kind))
  const near = names.length === 0 ? undefined : closest(key.slice(0, 60), names)
  const meta = near === undefined || holder === undefined ? undefined : metaOf(schemaAt(holder, [near], at(input, path)))
  return {
    path: [...path, key].join('.'),
    value: at(input, [...path, key]),
    allowed: `the fields ${names.join(', ')}${near === undefined ? '' : `; the closest is "${near}"`}`,
    example: near === undefined ? '' : exampleFor([near], meta?.example),
  }
}

function plainAllowed(schema: z.core.$ZodType | undefined, issue: z.core.$ZodIssue): string {
  if (schema !== undefined) {
    const names = Object.keys(fieldsOf(schema))
    if (names.length > 0) return `an object with ${names.join(', ')}`
    const values = (schema._zod.def as { readonly values?: readonly unknown[] }).values
    if (values !== undefined) return values.map((value) => JSON.stringify(value)).join(', ')
  }
  if (issue.code === 'too_big') return `at most ${issue.maximum} entries`
  return issue.code === 'invalid_type' ? `a ${issue.expected === 'array' ? 'list' : issue.expected}` : 'another value'
}

function exampleFor(path: readonly PropertyKey[], example: string | undefined): string {
  return example === undefined || path.length === 0 ? '' : `"${String(path.at(-1))}": ${example}`
}
