import type { HandField } from './facts.ts'
import type { FieldProblem } from './readFields.ts'

/** An error as a message at its field, or as text. */
export function refusalOf(error: Error, fields: readonly HandField[]): FieldProblem | string {
  const { parameter, allowed, value } = error as Error & { readonly parameter?: string; readonly allowed?: string; readonly value?: unknown }
  const field = fields.find(({ written }) => written === parameter) ?? fields.find(({ written }) => parameter?.startsWith(`${written}.`) === true)
  return field === undefined ? error.message : { id: field.id, read: String(value).slice(0, 40), allowed: allowed ?? error.message }
}
