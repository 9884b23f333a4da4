import type * as z from 'zod/mini'
import { type FieldMeta, jobFields } from './fields.ts'

type Schema = z.core.$ZodType
type Def = {
  readonly type: string
  readonly innerType?: Schema
  readonly shape?: Readonly<Record<string, Schema>>
  readonly element?: Schema
  readonly options?: readonly Schema[]
  readonly values?: readonly unknown[]
}

const definition = (schema: Schema): Def => schema._zod.def as unknown as Def

/** The schema inside an optional field. */
export function unwrap(schema: Schema): Schema {
  const { innerType } = definition(schema)
  return innerType === undefined ? schema : unwrap(innerType)
}

/** The fields of an object schema; of a union, of the option whose `kind` is given. */
export function fieldsOf(schema: Schema, kind?: unknown): Readonly<Record<string, Schema>> {
  const inner = unwrap(schema)
  const { shape, options } = definition(inner)
  if (shape !== undefined) return shape
  if (options === undefined) return {}
  const matching = options.find((option) => definition(unwrap(fieldsOf(option).kind ?? option)).values?.includes(kind))
  const chosen = matching ?? options[0]
  return chosen === undefined ? {} : fieldsOf(chosen)
}

/** The schema at a path; the job's `kind` selects the option of a union. */
export function schemaAt(schema: Schema, path: readonly PropertyKey[], value: unknown): Schema | undefined {
  const [key, ...rest] = path
  if (key === undefined) return schema
  const inside = (value as Readonly<Record<PropertyKey, unknown>> | null | undefined)?.[key]
  const { element } = definition(unwrap(schema))
  if (element !== undefined) return schemaAt(element, rest, inside)
  const kind = (value as { readonly kind?: unknown } | null | undefined)?.kind
  const fields = fieldsOf(schema, kind)
  const next = Object.hasOwn(fields, String(key)) ? fields[String(key)] : undefined
  return next === undefined ? undefined : schemaAt(next, rest, inside)
}

/** Schema of a list's elements; undefined if it is no list. */
export const elementOf = (schema: Schema): Schema | undefined => definition(unwrap(schema)).element

/** Values of a union's discriminator. */
export function kindsOf(schema: Schema): readonly unknown[] {
  return (definition(unwrap(schema)).options ?? []).flatMap((option) => definition(unwrap(fieldsOf(option).kind ?? option)).values ?? [])
}

/** Metadata of a field. */
export function metaOf(schema: Schema | undefined): FieldMeta | undefined {
  if (schema === undefined) return undefined
  return jobFields.get(schema) ?? jobFields.get(unwrap(schema))
}
