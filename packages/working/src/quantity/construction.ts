import { awgToAreaMm2, awgToDiameterMm, parseAwg } from '@strandwise/core/conductor'
import { DomainError } from '@strandwise/core/errors'
import { normalise } from './normalise.ts'
import { type Asked, inOwnUnit, isUnit, type Reading, refusal, resolveUnit } from './reading.ts'
import { readNumber } from './readNumber.ts'
import { findUnit, unitName } from './units.ts'

/** Strands of one diameter. halfMm is half of the last printed digit of the diameter. */
interface Strands {
  readonly count: number
  readonly diameterMm: number
  readonly halfMm: number
}

/** Gauges that are unambiguous without the letters AWG: 2/0 and 0000. */
const bareGauge = /^(?:0{2,6}|[1-6] ?\/ ?0)$/
/** "19 x 32 AWG", "19/32 AWG", "19 x AWG 32"; but a count over 0, as 2/0, is a gauge. */
const gaugeStrands = /^(\d{1,5}) ?([x/]) ?(?:awg ?)?(\d{1,2}(?: ?\/ ?0)?) ?(?:awg)?$/i
/** "7 strands of" and the like, meaning "7 x". */
const inWords = /^(\d+) ?(?:strands?|wires?)(?: of)? (?=[\d.])/i
/** A count in front of a size; "2 x 10^3" is one number. */
const counting = /^(\d{1,5}) ?x ?(?!10\^)(?=[\d.])/

/** Area of a gauge ("18 AWG", "2/0") or of a strand construction ("7/0.3 mm", "19 x 32 AWG"); null if the text is neither. */
export function readConstruction(plain: string, asked: Asked): Reading | null {
  if (bareGauge.test(plain)) return { value: awgToAreaMm2(gauge(plain, asked)), half: 0 }
  const strands = readStrands(plain, asked)
  if (strands !== null) {
    const value = strands.count * (Math.PI / 4) * strands.diameterMm ** 2
    return { value, half: strands.count * (Math.PI / 2) * strands.diameterMm * strands.halfMm }
  }
  return /awg/i.test(plain) ? { value: awgToAreaMm2(gauge(plain, asked)), half: 0 } : areaOfOne(plain)
}

/** "1 x 1.5 mm²": for one wire, area per wire and total are equal; more wires were refused before. */
function areaOfOne(written: string): Reading | null {
  const plain = written.replace(inWords, '$1 x ')
  const times = counting.exec(plain)
  if (times === null) return null
  const size = plain.slice(times[0].length)
  const number = readNumber(size, 0)
  const unit = number === null ? undefined : resolveUnit('areaMm2', unitName(size.slice(number.end)))
  return number !== null && isUnit(unit) ? inOwnUnit(number, unit) : null
}

/**
 * Count and diameter of the strands in a construction; null for an area or a gauge.
 *
 * @equation text = n/d, or n x d
 * @symbol n - result.strandCount - 1 - number of strands
 * @symbol d - result.strandDiameterMm - mm - diameter of one strand
 * @throws QuantityError where the text could be two constructions or is a broken one
 * @example
 * parseStrands('7/0.3 mm') // { strandCount: 7, strandDiameterMm: 0.3 }
 * @source the trade's notation: count of strands over the diameter of one
 */
export function parseStrands(text: string): { readonly strandCount: number; readonly strandDiameterMm: number } | null {
  const strands = typeof text !== 'string' || text.length > 120 ? null : readStrands(normalise(text), { text, kind: 'areaMm2' })
  return strands === null ? null : { strandCount: strands.count, strandDiameterMm: strands.diameterMm }
}

function gauge(plain: string, asked: Asked): number {
  try {
    return parseAwg(plain)
  } catch (error) {
    if (error instanceof DomainError) throw refusal(asked, 'malformed', 'no gauge: AWG runs from 40 to 6/0')
    throw error
  }
}

function readStrands(written: string, asked: Asked): Strands | null {
  const plain = written.replace(inWords, '$1 x ')
  const ofGauge = /awg/i.test(plain) ? gaugeStrands.exec(plain) : null
  if (ofGauge !== null) {
    const [, count = '', between, size = ''] = ofGauge
    if (between === '/' && size === '0') return null
    return { count: counted(count, asked), diameterMm: awgToDiameterMm(gauge(size, asked)), halfMm: 0 }
  }
  const times = counting.exec(plain)
  if (times !== null) return timesStrands(counted(times[1] ?? '', asked), plain.slice(times[0].length), asked)
  const over = /^(\d{1,5}) ?\/ ?(?=[\d.,])/.exec(plain)
  return over === null ? null : overStrands(over[1] ?? '', plain.slice(over[0].length), asked)
}

/** "7 x 0.3 mm", "7 x 19 x 0.1 mm", "2 x 7/0.3 mm"; "2 x 1.5 mm²" could be 3 mm² or 1.5; null for one wire with an area. */
function timesStrands(count: number, size: string, asked: Asked): Strands | null {
  const inner = /^\d{1,2}\/\d{1,3} ?[a-z"]/i.test(size) ? null : readStrands(size, asked)
  if (inner !== null) return { ...inner, count: inner.count * count }
  const number = readNumber(size, 0)
  const unit = number === null ? '' : size.slice(number.end).trim()
  if (number?.readings !== undefined) throw commas(`${count} x `, number.readings, unit, asked)
  if (number !== null && number.fault === undefined && isArea(unit)) {
    if (count === 1) return null
    throw refusal(asked, 'ambiguous', 'an area for each, or for all of them', [`${tidy(count * number.value)} ${unit}`, `${number.value} ${unit}`])
  }
  return strandOf(count, size, asked)
}

/** "7/0.3 mm" and "24/0.2"; a whole number under another, as "3/8 in", could be a fraction. */
function overStrands(over: string, size: string, asked: Asked): Strands | null {
  const number = readNumber(size, 0)
  if (number === null) return null
  const unit = size.slice(number.end).trim()
  const digits = size.slice(0, number.end)
  if (number.readings !== undefined) throw commas(`${over} x `, number.readings, unit, asked)
  const whole = /^\d+$/.test(digits)
  const ofArea = isArea(unit)
  if (whole && (ofArea || unit === '')) return null
  if (ofArea) {
    const readings = [Number(over) * number.value, Number(over) / number.value].map((value) => `${tidy(value)} ${unit}`)
    throw refusal(asked, 'ambiguous', 'strands, or a fraction', readings)
  }
  if (whole && Number(over) < number.value) {
    throw refusal(asked, 'ambiguous', 'strands, or a fraction', [`${over} x ${digits} ${unit}`, `1 x ${over}/${digits} ${unit}`])
  }
  return strandOf(counted(over, asked), size, asked)
}

function isArea(unit: string): boolean {
  const name = unitName(unit)
  return findUnit('lengthMm', name) === undefined && isUnit(resolveUnit('areaMm2', name))
}

function commas(before: string, readings: readonly string[], unit: string, asked: Asked): Error {
  const each = readings.map((digits) => `${before}${digits} ${unit}`.trim())
  return refusal(asked, 'ambiguous', 'the comma could be a decimal sign or part thousands', each)
}

/** A computed number rounded to remove binary noise. */
function tidy(value: number): number {
  return Number(value.toPrecision(12))
}

function counted(digits: string, asked: Asked): number {
  const count = Number(digits)
  if (count < 1) throw refusal(asked, 'malformed', 'no strands')
  return count
}

function strandOf(count: number, size: string, asked: Asked): Strands {
  const number = readNumber(size, 0)
  if (number === null || number.fault !== undefined) throw refusal(asked, 'malformed', number?.fault ?? 'no diameter after the count of strands')
  const written = size.slice(number.end)
  if (written === '') throw refusal(asked, 'no-unit', 'a strand diameter without a unit', [`${count} x ${size} mm`, `${count} x ${size} in`])
  const unit = resolveUnit('lengthMm', unitName(written))
  if (!isUnit(unit) || !(number.value > 0)) throw refusal(asked, 'malformed', 'no diameter after the count of strands')
  return { count, diameterMm: (number.value * unit.times) / unit.over, halfMm: (number.halfDigit * unit.times) / unit.over }
}
