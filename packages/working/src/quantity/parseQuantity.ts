import { UnknownEntryError } from '@strandwise/core/errors'
import { type QuantityKind, quantityKinds } from './kinds.ts'
import { normalise } from './normalise.ts'
import { type Asked, inOwnUnit, type Reading, refusal } from './reading.ts'
import { readNumber } from './readNumber.ts'
import { readOne } from './readOne.ts'
import { findUnit, type Unit, unitsOf } from './units.ts'

/** Longest text accepted, which bounds the parsing time. */
const longestText = 120

/** Fast path for the commonest form: a number with a decimal point, and a unit without spaces. */
const simple = /^(-?\d+(?:\.\d+)?) ?([^\d\s.,:^()±+-][^\s.,:^()±-]*)$/
/** Characters of such a unit that the table spells differently. */
const spelling: Readonly<Record<string, string>> = { '\u00b5': 'u', '\u03bc': 'u', '\u2126': 'ohm', '\u03a9': 'ohm', '²': '2', '³': '3' }

/**
 * Reads a quantity as people write it and returns its number in the kind's own unit. A bare number is refused except for a ratio; ambiguous text is refused, with both readings in the error.
 *
 * @equation y = (x + b) f
 * @symbol x - text - 1 - the number in the text
 * @symbol f - text - 1 - factor of the unit in the text, from the closed table
 * @symbol b - text - 1 - offset of that unit, 0 but for temperatures
 * @symbol y - result - 1 - value in the unit that ends the kind's name
 * @throws QuantityError where the text is no such quantity, could be two, or lies out of range
 * @throws UnknownEntryError for a kind that does not exist
 * @example
 * parseQuantity('1 1/8 in', 'lengthMm') // 28.575
 * @source definitions of the units: international inch and pound, standard gravity, SI prefixes
 */
export function parseQuantity(text: string, kind: QuantityKind): number {
  if (!Object.hasOwn(quantityKinds, kind)) throw new UnknownEntryError('kind', kind, Object.keys(quantityKinds))
  const asked = { text: String(text), kind }
  if (typeof text !== 'string') throw refusal(asked, 'not-text', 'not a text')
  if (text.length > longestText) throw refusal(asked, 'too-long', `longer than ${longestText} characters`)
  const found = simple.exec(text)
  const unit = found === null ? undefined : simpleUnit(kind, found[2] ?? '')
  if (unit !== undefined) return inRange(inOwnUnit({ value: Number(found?.[1]), halfDigit: 0, digits: found?.[1] ?? '' }, unit).value, asked)
  const plain = normalise(text)
  if (plain === '') throw refusal(asked, 'empty', 'empty')
  return inRange(readWhole(plain, asked).value, asked)
}

function simpleUnit(kind: QuantityKind, written: string): Unit | undefined {
  return (
    unitsOf(kind).get(written) ??
    findUnit(
      kind,
      written.replace(/[\u00b5\u03bc\u2126\u03a9²³]/g, (character) => spelling[character] ?? character),
    )
  )
}

function inRange(value: number, asked: Asked): number {
  const lowest = quantityKinds[asked.kind].lowest
  if (!Number.isFinite(value)) throw refusal(asked, 'out-of-range', 'too large a number')
  if (lowest !== undefined && value < lowest) throw refusal(asked, 'out-of-range', lowest === 0 ? 'below 0' : 'below absolute zero')
  // Adding 0 turns -0 into 0.
  return value + 0
}

/** A quantity, optionally restated in brackets, as "25.4 mm (1 in)". */
function readWhole(plain: string, asked: Asked): Reading {
  const bracket = plain.indexOf('(')
  if (bracket <= 0 || !plain.endsWith(')')) return readOne(withoutTolerance(plain, asked), asked)
  const outer = plain.slice(0, bracket).trim()
  const inner = plain.slice(bracket + 1, -1).trim()
  const first = readOne(withoutTolerance(outer, asked), asked)
  const second = readOne(withoutTolerance(inner, asked), asked)
  // 1e-9 relative for rounding in the conversion; for a temperature relative to kelvins.
  const allowed = first.half + second.half + 1e-9 * (asked.kind === 'temperatureC' ? 273 : 0) + 1e-9 * Math.abs(first.value)
  if (Math.abs(first.value - second.value) <= allowed) return first
  throw refusal(asked, 'ambiguous', 'the quantity and the one in brackets differ', [outer, inner])
}

/** "4.20 ± 0.05 A", "(4.20 ± 0.05) A" or "4.20 A ± 0.05 A", with the tolerance removed. */
function withoutTolerance(plain: string, asked: Asked): string {
  const spread = plain.indexOf('±')
  if (spread < 0) return plain
  const inBrackets = plain.startsWith('(')
  const before = plain.slice(inBrackets ? 1 : 0, spread).trim()
  const tolerance = readNumber(plain, spread + 1)
  if (tolerance === null || !(tolerance.value >= 0) || plain.indexOf('±', spread + 1) >= 0) throw refusal(asked, 'malformed', 'no tolerance after "±"')
  const unit = plain
    .slice(tolerance.end)
    .replace(inBrackets ? ')' : '', '')
    .trim()
  return readNumber(before, 0)?.end === before.length ? `${before} ${unit}`.trim() : before
}
