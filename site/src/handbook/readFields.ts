import type { HandField } from './facts.ts'
import type { ReadUnit } from './readUnit.ts'

export interface FieldProblem {
  readonly id: string
  readonly read: string
  readonly allowed: string
}

const bare = /^[+-]?(\d+([.,]\d*)?|[.,]\d+)(e[+-]?\d+)?$/i

const isBare = (text: string): boolean => bare.test(text.trim().replace('−', '-'))
const partsOf = (field: HandField, text: string): readonly string[] => (field.kind === 'numbers' ? text.split(/[;,]\s+|[;,](?=\d)/) : [text])

/** True if a field holds more than bare numbers, so that a reader of units is needed. */
export const hasUnits = (fields: readonly HandField[], typed: Readonly<Record<string, string>>): boolean =>
  fields.some(
    (field) =>
      field.quantity !== undefined &&
      (field.kind === 'number' || field.kind === 'numbers') &&
      !partsOf(field, typed[field.id] ?? '').every((part) => part.trim() === '' || isBare(part)),
  )

/** Parses a number, bare or with a unit of its kind; a string says what is allowed instead. */
function numberIn(text: string, { quantity, unit }: HandField, readUnit: ReadUnit): number | string {
  const plain = text.trim().replace('−', '-')
  if (isBare(plain)) return Number(plain.replace(',', '.'))
  if (quantity === undefined) return `a number${unit === '' ? '' : ` in ${unit}`}`
  return readUnit(plain, quantity) ?? `a number in ${unit}, or with a unit of its own`
}

function valueIn(field: HandField, text: string, readUnit: ReadUnit): unknown | FieldProblem {
  const problem = (allowed: string): FieldProblem => ({ id: field.id, read: text.trim() === '' ? 'nothing' : text.trim().slice(0, 40), allowed })
  if (field.kind === 'yes-no') return text === 'true'
  if (field.kind === 'text') return text
  if (field.kind === 'choice') return text === 'true' ? true : text === 'false' ? false : field.choices.includes(text) && bare.test(text) ? Number(text) : text
  if (field.kind === 'numbers') {
    const found = partsOf(field, text).map((part) => numberIn(part, field, readUnit))
    const wrong = found.find((one) => typeof one === 'string')
    return wrong === undefined ? found : problem(`${wrong}, several with commas between them`)
  }
  const found = numberIn(text, field, readUnit)
  return typeof found === 'string' ? problem(found) : found
}

const isProblem = (value: unknown): value is FieldProblem => typeof value === 'object' && value !== null && 'allowed' in value

type Holder = Record<string | number, unknown>

/** Sets a value at its path among the arguments; undefined removes it. */
function put(inputs: unknown[], path: HandField['path'], value: unknown): void {
  let holder = inputs as unknown as Holder
  for (const key of path.slice(0, -1)) {
    const next = holder[key]
    if (value === undefined && (typeof next !== 'object' || next === null)) return
    if (typeof next !== 'object' || next === null) holder[key] = {}
    holder = holder[key] as Holder
  }
  const last = path.at(-1) ?? 0
  if (value === undefined) Reflect.deleteProperty(holder, last)
  else holder[last] = value
}

/** The arguments from the form, or the fields that cannot be read. */
export function readFields(
  fields: readonly HandField[],
  inputs: readonly unknown[],
  typed: Readonly<Record<string, string>>,
  readUnit: ReadUnit,
): { readonly inputs: readonly unknown[]; readonly problems: readonly FieldProblem[] } {
  const made = structuredClone(inputs) as unknown[]
  const problems: FieldProblem[] = []
  for (const field of fields) {
    const text = typed[field.id] ?? ''
    if (text.trim() === '' && field.optional && field.kind !== 'text') {
      put(made, field.path, undefined)
      continue
    }
    const value = valueIn(field, text, readUnit)
    if (isProblem(value)) problems.push(value)
    else put(made, field.path, value)
  }
  return { inputs: made, problems }
}
