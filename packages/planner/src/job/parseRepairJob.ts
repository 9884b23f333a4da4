import { closest } from 'fastest-levenshtein'
import * as z from 'zod/mini'
import { contradictions } from './contradictions.ts'
import { fieldsOf, kindsOf, metaOf, schemaAt } from './fieldAt.ts'
import { JobError, type JobIssue } from './jobError.ts'
import type { RepairJob } from './repairJob.ts'
import { repairJobSchema } from './repairJobSchema.ts'
import { repairJobShape } from './repairJobShape.ts'
import { twoSpellings } from './spellings.ts'

const mostIssues = 20

/**
 * A repair job in its fixed units, from anything: both spellings of a field are read, everything else is refused with its path.
 *
 * @throws JobError with every issue: path, value, what is allowed, a corrected example
 * @example
 * parseRepairJob({ ...trailerTailLamp, load: { current: '1800 mA' } }) // { load: { currentA: 1.8 } }
 */
export function parseRepairJob(input: unknown): RepairJob {
  const result = z.safeParse(repairJobSchema, input)
  if (!result.success) throw new JobError(result.error.issues.flatMap((issue) => toIssues(issue, input)).slice(0, mostIssues))
  const job = result.data as RepairJob
  const issues = contradictions(job)
  if (issues.length > 0) throw new JobError(issues)
  return job
}

function at(value: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (inside, key) =>
      typeof inside === 'object' && inside !== null && Object.hasOwn(inside, key) ? (inside as Readonly<Record<PropertyKey, unknown>>)[key] : undefined,
    value,
  )
}

function writtenFor(path: readonly PropertyKey[], value: unknown): readonly PropertyKey[] {
  // The schema speaks of currentA; where the person wrote `current`, the message names what they wrote.
  const last = path.at(-1)
  const group = path.find((key) => typeof key === 'string' && Object.hasOwn(twoSpellings, key))
  const pair = twoSpellings[String(group)]?.find((names) => names.fixed === last)
  const written = pair === undefined ? path : [...path.slice(0, -1), pair.written]
  return at(value, path) === undefined && at(value, written) !== undefined ? written : path
}

function toIssues(issue: z.core.$ZodIssue, input: unknown): readonly JobIssue[] {
  if (issue.code === 'unrecognized_keys') return issue.keys.map((key) => unknownField(issue.path, key, input))
  const path = writtenFor(issue.path, input)
  if (issue.code === 'invalid_union') return [unknownKind(issue.path, input)]
  const schema = schemaAt(repairJobShape, issue.path, input)
  const meta = metaOf(schema)
  const allowed = (issue as { readonly params?: { readonly allowed?: string } }).params?.allowed ?? meta?.allowed ?? plainAllowed(schema, issue)
  return [{ path: path.join('.'), value: at(input, path), allowed, example: exampleFor(path, meta?.example) }]
}

/** A tool that is neither of the kinds; the issue's own path ends in the field that tells them apart. */
function unknownKind(path: readonly PropertyKey[], input: unknown): JobIssue {
  const holder = schemaAt(repairJobShape, path.slice(0, -1), input)
  const kinds = holder === undefined ? [] : kindsOf(holder)
  return { path: path.join('.'), value: at(input, path), allowed: kinds.join(', '), example: exampleFor(path, JSON.stringify(kinds[0])) }
}

function unknownField(path: readonly PropertyKey[], key: string, input: unknown): JobIssue {
  const holder = schemaAt(repairJobShape, path, input)
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
