import { readConstruction } from './construction.ts'
import { doubtful } from './factors.ts'
import { type QuantityKind, quantityKinds } from './kinds.ts'
import { readParts } from './parts.ts'
import { shortened } from './quantityError.ts'
import { type Asked, inOwnUnit, isUnit, type Reading, refusal, resolveUnit } from './reading.ts'
import { type NumberRead, readNumber } from './readNumber.ts'
import { findUnit, unitName } from './units.ts'

/** Notations of one kind only; each returns null if the text is not in its notation. */
const ownForms: Readonly<Partial<Record<QuantityKind, (plain: string, asked: Asked) => Reading | null>>> = {
  areaMm2: readConstruction,
  resistanceOhm: readLetterForPoint,
  ratio: readTwoNumbers,
  timeS: readClock,
}

/** Reads one quantity from a normalised text without brackets or tolerance. */
export function readOne(plain: string, asked: Asked): Reading {
  const own = ownForms[asked.kind]?.(plain, asked)
  if (own) return own
  const number = readNumber(plain, 0)
  if (number === null) throw refusal(asked, 'no-number', 'no number at its start')
  if (number.fault !== undefined) throw refusal(asked, 'malformed', number.fault)
  const rest = plain.slice(number.end).trim()
  if (number.readings !== undefined) {
    const readings = number.readings.map((digits) => `${digits} ${rest}`.trim())
    throw refusal(asked, 'ambiguous', 'the comma could be a decimal sign or part thousands', readings)
  }
  if (rest === '') return bare(number, plain, asked)
  const name = unitName(rest)
  const unit = findUnit(asked.kind, name)
  if (unit !== undefined) return inOwnUnit(number, unit)
  const parts = readParts(plain, asked.kind)
  if (typeof parts === 'string') throw refusal(asked, 'malformed', parts)
  return parts ?? inAnotherCase(number, plain.slice(0, number.end), name, asked)
}

function bare(number: NumberRead, digits: string, asked: Asked): Reading {
  if (asked.kind === 'ratio') return { value: number.value, half: number.halfDigit }
  const readings = asked.kind === 'areaMm2' && /^(?:[1-9]|[1-3]\d|40)$/.test(digits) ? [`${digits} mm²`, `${digits} AWG`] : undefined
  throw refusal(asked, 'no-unit', 'a number without a unit', readings)
}

function inAnotherCase(number: NumberRead, digits: string, name: string, asked: Asked): Reading {
  const twice = doubtful.get(`${asked.kind} ${name.toLowerCase()}`)
  const unit = twice ?? resolveUnit(asked.kind, name)
  if (isUnit(unit)) return inOwnUnit(number, unit)
  if (unit !== undefined) {
    const readings = unit.map((other) => `${digits} ${other}`)
    throw refusal(asked, 'ambiguous', twice ? 'the name of two units' : 'small and capital letters make two units of it', readings)
  }
  const shown = shortened(name)
  if (asked.kind === 'areaMm2' && findUnit('lengthM', name) !== undefined) {
    throw refusal(asked, 'ambiguous', `"${shown}" is a length: an area, or the diameter of a round wire`, [`${digits} ${name}²`, `1 x ${digits} ${name}`])
  }
  const others = Object.keys(quantityKinds).filter((kind) => findUnit(kind as QuantityKind, name) !== undefined) as QuantityKind[]
  const own = quantityKinds[asked.kind].name
  const [other] = others
  if (other !== undefined) throw refusal(asked, 'wrong-unit', `"${shown}" is a unit of ${quantityKinds[other].name}, not of ${own}`)
  throw refusal(asked, 'unknown-unit', `"${shown}" is no unit of ${own}`)
}

/** "4R7" and "4k7": the letter replaces the decimal point. */
function readLetterForPoint(plain: string): Reading | null {
  const found = /^(\d{1,9})([RkKM])(\d{1,9})$/.exec(plain)
  if (found === null) return null
  const scale = found[2] === 'R' ? 1 : found[2] === 'M' ? 1e6 : 1e3
  return { value: Number(`${found[1]}.${found[3]}`) * scale, half: 0.5 * scale * 10 ** -(found[3]?.length ?? 0) }
}

/** "2:1" is the first over the second. */
function readTwoNumbers(plain: string): Reading | null {
  const found = /^(\d{1,9}(?:\.\d{1,9})?) ?: ?(\d{1,9}(?:\.\d{1,9})?)$/.exec(plain)
  return found === null || Number(found[2]) === 0 ? null : { value: Number(found[1]) / Number(found[2]), half: 0 }
}

/** "1:02:03" is hours, minutes and seconds; two numbers alone could be hours or minutes. */
function readClock(plain: string, asked: Asked): Reading | null {
  const found = /^(\d{1,4}):([0-5]?\d)(?::([0-5]?\d(?:\.\d{1,9})?))?$/.exec(plain)
  if (found === null) return null
  const [, first, second, third] = found
  if (third === undefined) throw refusal(asked, 'ambiguous', 'minutes, or hours, before the colon', [`${first} min ${second} s`, `${first} h ${second} min`])
  return { value: Number(first) * 3600 + Number(second) * 60 + Number(third), half: 0 }
}
