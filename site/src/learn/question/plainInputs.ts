import type { AskedField, Inputs } from './question.ts'
import type { Typed } from './readInputs.ts'

const bare = /^-?\d+(?:\.\d+)?$/

/** One field's value; null if it takes the reader of quantities, or its words. */
function plainOne(field: AskedField, text: string): number | string | readonly string[] | undefined | null {
  if (field.kind !== 'quantity') {
    const words = field.kind === 'choice' ? [text] : text.split(',').filter((word) => word !== '')
    if (!words.every((word) => field.choices.some(({ value }) => value === word))) return null
    return field.kind === 'choice' ? text : words
  }
  if (text === '') return field.optional === true ? undefined : null
  const value = bare.test(text) ? Number(text) : Number.NaN
  const within = value >= field.low && value <= field.high && !(field.aboveLow === true && value === field.low)
  return within && (field.whole !== true || Number.isInteger(value)) ? value : null
}

/** The inputs of a form of bare numbers in range and known words; null if anything else is typed, which `readInputs` reads or refuses. */
export function plainInputs(fields: readonly AskedField[], typed: Typed): Inputs | null {
  const read = fields.map((field) => [field.id, plainOne(field, (typed[field.id] ?? '').trim())] as const)
  return read.some(([, value]) => value === null) ? null : (Object.fromEntries(read.filter(([, value]) => value !== undefined)) as Inputs)
}
