import type { FormField } from '@strandwise/planner/job'
import { formatQuantity, parseQuantity, QuantityError, type QuantityKind } from '@strandwise/working/quantity'

/** Message on an unusable answer, in the unit typed. */
export interface Refusal {
  readonly read: string
  readonly allowed: string
  readonly example: string
}

export interface ReadNumber {
  /** In the field's own unit. */
  readonly value: number
  /** As in a job file: the text if a unit was typed, else the number. */
  readonly typed: string | number
}

/** How to read a number: quantity kind, and unit of a bare number. */
export interface ReadAs {
  readonly kind: QuantityKind
  readonly unit: string
}

type Outcome = ReadNumber | Refusal
export const isRefusal = (outcome: object): outcome is Refusal => 'allowed' in outcome

const shownDigits = 6
const exampleDigits = 3
const plain = (value: number, digits: number): string => String(Number(value.toPrecision(digits)))
const readable = (text: string): string => (text.length > 40 ? `${text.slice(0, 40)}…` : text)

/** The unit typed behind the number; '' for a bare number. */
function unitTyped(text: string): string {
  return text.replace(/^[\s+\-−]*[\d.,/\s⅛¼⅜½⅝¾⅞]*(?:[eE][+-]?\d+)?\s*/, '').trim()
}

/** Formats values in the unit typed if it is a plain multiple, else in its system. */
function writer(text: string, as: ReadAs): (value: number, digits: number) => string {
  const unit = unitTyped(text)
  if (unit === '' || unit === as.unit) return (value, digits) => `${plain(value, digits)}${as.unit === '' ? '' : ` ${as.unit}`}`
  try {
    const [zero, one, two] = [0, 1, 2].map((number) => parseQuantity(`${number} ${unit}`, as.kind)) as [number, number, number]
    const linear = one !== zero && Math.abs(two - 2 * one + zero) <= 1e-9 * Math.abs(one - zero)
    if (linear) return (value, digits) => `${plain((value - zero) / (one - zero), digits)} ${unit}`
  } catch (error) {
    if (!(error instanceof QuantityError)) throw error
  }
  const inch = /["″'′]|in|ft|mil|awg|°?f$|lb|mph|gauge/i.test(unit)
  return (value, digits) => formatQuantity(value, as.kind, { system: inch ? 'inch' : 'metric', significant: digits })
}

function rangeWords(field: FormField, write: (value: number) => string): string {
  const { low, high } = field
  if (low === undefined || high === undefined) return field.allowed
  const whole = field.whole === true ? 'a whole number ' : ''
  return field.aboveLow === true ? `${whole}above ${write(low)} and at most ${write(high)}` : `${whole}from ${write(low)} to ${write(high)}`
}

const exampleOf = (field: FormField): number => Number(/-?\d+(?:\.\d+)?/.exec(field.example)?.[0] ?? field.low ?? 0)

/** Allowed values of a field in the unit typed; `read` is what was wrong. */
export function refusalFor(text: string, field: FormField, as: ReadAs, read: string): Refusal {
  const write = writer(text, as)
  return {
    read,
    allowed: rangeWords(field, (value) => write(value, shownDigits)),
    example: write(exampleOf(field), exampleDigits),
  }
}

function parsed(text: string, as: ReadAs): ReadNumber {
  try {
    return { value: parseQuantity(text, as.kind), typed: text }
  } catch (error) {
    // A bare number has the unit beside the field.
    if (!(error instanceof QuantityError) || error.code !== 'no-unit') throw error
    const value = parseQuantity(`${text} ${as.unit}`, as.kind)
    return { value, typed: value }
  }
}

/** Reads a number as typed, metric or inch; a bare one is in the field's own unit. */
export function readTyped(text: string, field: FormField, as: ReadAs): Outcome {
  let number: ReadNumber
  try {
    number = as.kind === 'ratio' ? { value: parseQuantity(text, 'ratio'), typed: parseQuantity(text, 'ratio') } : parsed(text, as)
  } catch (error) {
    if (!(error instanceof QuantityError)) throw error
    const readings = error.readings === undefined ? '' : `: ${error.readings.join(' or ')}`
    // An unreadable or missing unit cannot be used for the message.
    const legible = error.code === 'ambiguous' || error.code === 'out-of-range' || error.code === 'malformed'
    return refusalFor(legible ? text : '', field, as, `“${readable(text)}”: ${error.reason}${readings}`)
  }
  const { low = Number.NEGATIVE_INFINITY, high = Number.POSITIVE_INFINITY } = field
  const { value } = number
  const outside = value > high || value < low || (field.aboveLow === true && value === low)
  if (outside || (field.whole === true && !Number.isInteger(value))) return refusalFor(text, field, as, readable(withUnit(text, as)))
  return number
}

function withUnit(text: string, as: ReadAs): string {
  return unitTyped(text) === '' && as.unit !== '' && as.kind !== 'ratio' ? `${text} ${as.unit}` : text
}
