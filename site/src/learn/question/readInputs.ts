import { isRefusal, readTyped } from '../../plan/readTyped.ts'
import type { AskedField, AskedQuantity, InputProblem, Inputs } from './question.ts'

/** The texts of the fields as they were typed, by id. */
export type Typed = Readonly<Record<string, string>>

export interface ReadInputs {
  readonly inputs: Inputs
  readonly problems: readonly InputProblem[]
}

type Form = Parameters<typeof readTyped>[1]

const formField = (field: AskedQuantity): Form => ({
  path: field.id,
  shape: 'quantity',
  needed: field.optional !== true,
  title: field.title,
  description: field.note ?? '',
  allowed: '',
  example: field.example,
  unit: field.unit,
  low: field.low,
  high: field.high,
  ...(field.aboveLow === true ? { aboveLow: true } : {}),
  ...(field.whole === true ? { whole: true } : {}),
})

function readOne(field: AskedField, text: string): number | string | readonly string[] | undefined | InputProblem {
  if (field.kind !== 'quantity') {
    const words = field.kind === 'choice' ? [text] : text.split(',').filter((word) => word !== '')
    const known = field.choices.map((choice) => choice.value)
    const stranger = words.find((word) => !known.includes(word))
    if (stranger !== undefined)
      return {
        field: field.id,
        read: `“${stranger.slice(0, 40)}”`,
        allowed: field.choices.map((choice) => choice.label).join(', '),
        example: field.choices[0]?.label ?? '',
      }
    return field.kind === 'choice' ? text : words
  }
  if (text === '' && field.optional === true) return undefined
  const outcome = text === '' ? null : readTyped(text, formField(field), { kind: field.quantity, unit: field.unit })
  if (outcome === null) return { field: field.id, read: 'nothing', allowed: `a quantity such as ${field.example}`, example: field.example }
  return isRefusal(outcome) ? { field: field.id, ...outcome } : outcome.value
}

/** Reads every field; unusable ones give a reason, in the unit typed. */
export function readInputs(fields: readonly AskedField[], typed: Typed): ReadInputs {
  const problems: InputProblem[] = []
  const inputs: Record<string, number | string | readonly string[] | undefined> = {}
  for (const field of fields) {
    const read = readOne(field, (typed[field.id] ?? '').trim())
    if (typeof read === 'object' && 'field' in read) problems.push(read)
    else inputs[field.id] = read
  }
  return { inputs, problems }
}

/** The default case. */
export const typedCase = (fields: readonly AskedField[]): Typed => Object.fromEntries(fields.map((field) => [field.id, field.typed]))
