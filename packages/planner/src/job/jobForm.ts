import type { QuantityKind } from '@strandwise/working/quantity'
import type * as z from 'zod/mini'
import { fieldsOf, kindsOf, unwrap } from './fieldAt.ts'
import { type FieldMeta, jobFields } from './fields.ts'
import { formPlaces } from './formPlaces.ts'
import { repairJobShape } from './repairJobShape.ts'
import { twoSpellings } from './spellings.ts'

/** Kind of input: number with unit, two of them, bare number, one or more choices, yes or no, text. */
export type FormShape = 'quantity' | 'interval' | 'number' | 'choice' | 'choices' | 'yes-no' | 'text'

/** One question of the form, read from the schema. */
export interface FormField {
  /** Dotted path within its group: "suppliedInsideMm", "tube.material". */
  readonly path: string
  readonly shape: FormShape
  /** True if the job (or, in an optional group, the group) is incomplete without it. */
  readonly needed: boolean
  readonly title: string
  readonly description: string
  readonly allowed: string
  readonly example: string
  readonly kind?: QuantityKind
  readonly unit?: string
  readonly low?: number
  readonly high?: number
  /** True if the low end itself is excluded. */
  readonly aboveLow?: boolean
  readonly whole?: boolean
  readonly longest?: number
  /** The choices. */
  readonly values?: readonly string[]
  /** Name of the same field as text with a unit. */
  readonly written?: string
  /** Kind of tool, if only that kind has the field. */
  readonly onlyOf?: string
}

/** Related questions, grouped as in the job file. */
export interface FormGroup {
  /** Path of the group in the job; '' for the job itself. */
  readonly at: string
  readonly id: string
  readonly title: string
  readonly sentence: string
  readonly part: 'see' | 'measured' | 'have'
  readonly needed: boolean
  /** For a list of such groups, the most entries. */
  readonly most?: number
  /** Sets of fields of which exactly one is required. */
  readonly oneOf: readonly (readonly string[])[]
  /** Values of the discriminator field `kind`. */
  readonly kinds: readonly string[]
  readonly fields: readonly FormField[]
}

type Schema = z.core.$ZodType
interface Facts {
  readonly type: string
  readonly element?: Schema
  readonly format?: string
  readonly entries?: Readonly<Record<string, string>>
  readonly values?: readonly unknown[]
}
interface Check {
  readonly check: string
  readonly inclusive?: boolean
  readonly maximum?: number
}

const facts = (schema: Schema): Facts => schema._zod.def as unknown as Facts
const checks = (schema: Schema): readonly Check[] => (schema._zod.def.checks ?? []).map((check) => check._zod.def as unknown as Check)
const most = (schema: Schema): number | undefined => checks(schema).find((check) => check.check === 'max_length')?.maximum
const excludesLow = (schema: Schema): boolean => checks(schema).some((check) => check.check === 'greater_than' && check.inclusive === false)
const isWhole = (schema: Schema): boolean => facts(schema).format === 'safeint'
const isOptional = (schema: Schema): boolean => facts(schema).type === 'optional'

function shapeOf(schema: Schema, meta: FieldMeta): FormShape {
  switch (facts(schema).type) {
    case 'object':
      return 'interval'
    case 'boolean':
      return 'yes-no'
    case 'enum':
      return 'choice'
    case 'array':
      return 'choices'
    case 'string':
      return 'text'
    default:
      return meta.kind === undefined ? 'number' : 'quantity'
  }
}

/** A described field; an enum inside a list is described by its element. */
function leaf(schema: Schema, path: string, group: string, onlyOf?: string): FormField | undefined {
  const inner = unwrap(schema)
  const described = facts(inner).type === 'array' ? unwrap(facts(inner).element ?? inner) : inner
  const meta = jobFields.get(described)
  if (meta === undefined) return undefined
  const ends = facts(described).type === 'object' ? unwrap(fieldsOf(described).low ?? described) : described
  const values = Object.values(facts(described).entries ?? {})
  const key = path.split('.').at(-1)
  const longest = facts(described).type === 'string' ? most(described) : undefined
  const written = twoSpellings[group]?.find((pair) => pair.fixed === key)?.written
  return {
    path,
    shape: shapeOf(inner, meta),
    needed: !isOptional(schema),
    ...meta,
    ...(excludesLow(ends) ? { aboveLow: true } : {}),
    ...(isWhole(described) ? { whole: true } : {}),
    ...(longest === undefined ? {} : { longest }),
    ...(values.length === 0 ? {} : { values }),
    ...(written === undefined ? {} : { written }),
    ...(onlyOf === undefined ? {} : { onlyOf }),
  }
}

/** The leaves of an object, nested ones prefixed with its name. */
function leaves(schema: Schema, group: string, before: string, onlyOf?: string): readonly FormField[] {
  return Object.entries(fieldsOf(schema, onlyOf)).flatMap(([key, field]) => {
    const path = before === '' ? key : `${before}.${key}`
    const found = leaf(field, path, group, onlyOf)
    if (found !== undefined) return [found]
    return Object.keys(fieldsOf(field)).length === 0 ? [] : leaves(field, key, path)
  })
}

/** The fields of a union: shared ones once, the others marked with their kind. */
function unionLeaves(schema: Schema, group: string, kinds: readonly string[]): readonly FormField[] {
  const byKind = kinds.map((kind) => leaves(schema, group, '', kind))
  const shared = (field: FormField) => byKind.every((fields) => fields.some((other) => other.path === field.path && other.title === field.title))
  const common = (byKind[0] ?? []).filter(shared).map(({ onlyOf, ...field }) => field)
  return [...common, ...byKind.flatMap((fields) => fields.filter((field) => !shared(field)))]
}

/** Field for the discriminator, a literal without metadata: options come from the schema, the label from formPlaces. */
const kindField = (kinds: readonly string[], asked: { readonly title: string; readonly description: string }): FormField => ({
  path: 'kind',
  shape: 'choice',
  needed: true,
  ...asked,
  allowed: kinds.join(', '),
  example: `"${kinds[0] ?? ''}"`,
  values: kinds,
})

function groupAt(place: (typeof formPlaces)[number]): FormGroup {
  const { names, kindAsked, ...rest } = place
  const shape = fieldsOf(repairJobShape)
  if (place.at === '') {
    const fields = names.flatMap((name) => {
      const schema = shape[name]
      const found = schema === undefined ? undefined : leaf(schema, name, '')
      return found === undefined ? [] : [found]
    })
    return { ...rest, needed: fields.some((field) => field.needed), kinds: [], fields }
  }
  const schema = shape[place.at] as Schema
  const inner = unwrap(schema)
  const element = facts(inner).element
  const kinds = kindsOf(element ?? inner) as readonly string[]
  return {
    ...rest,
    needed: !isOptional(schema),
    ...(element === undefined ? {} : { most: most(inner) ?? 1 }),
    kinds,
    fields: [
      ...(kindAsked === undefined ? [] : [kindField(kinds, kindAsked)]),
      ...(kinds.length > 0 ? unionLeaves(element ?? inner, place.at, kinds) : leaves(element ?? inner, place.at, '')),
    ],
  }
}

/** Every question of a job, in the order of work: what you see, what you measured, what you have. */
export const jobForm: readonly FormGroup[] = formPlaces.map(groupAt)
