import { UnknownEntryError } from '@strandwise/core/errors'
import { expect, test } from 'vitest'
import type { QuantityKind } from './kinds.ts'
import { parseQuantity } from './parseQuantity.ts'
import { type QuantityCode, QuantityError } from './quantityError.ts'

function refused(text: unknown, kind: QuantityKind): QuantityError {
  try {
    parseQuantity(text as string, kind)
  } catch (error) {
    if (error instanceof QuantityError) return error
    throw error
  }
  throw new Error(`"${text}" was taken as ${kind}`)
}

const twoReadings: readonly (readonly [string, QuantityKind, readonly string[]])[] = [
  ['1,234 mm', 'lengthMm', ['1.234 mm', '1234 mm']],
  ['-12,345 V', 'voltageV', ['-12.345 V', '-12345 V']],
  ['1,234', 'ratio', ['1.234', '1234']],
  ['2.5 mm', 'areaMm2', ['2.5 mm²', '1 x 2.5 mm']],
  ['18', 'areaMm2', ['18 mm²', '18 AWG']],
  ['5 cm', 'areaMm2', ['5 cm²', '5 cmil']],
  ['5 mw', 'powerW', ['5 mW', '5 MW']],
  ['1 hp', 'powerW', ['1 mechanical hp', '1 metric hp']],
  ['1 ton', 'massKg', ['1 short ton', '1 long ton']],
  ['20 deg', 'temperatureC', ['20 °C', '20 °F']],
  ['5 m', 'timeS', ['5 min', '5 ms']],
  ['1:30', 'timeS', ['1 min 30 s', '1 h 30 min']],
  ['1 gal', 'volumeMm3', ['1 US gal', '1 UK gal']],
  ['25.4 mm (2 in)', 'lengthMm', ['25.4 mm', '2 in']],
]

test.each(twoReadings)('"%s" as %s is refused with both readings, and each of them can be read', (text, kind, readings) => {
  const error = refused(text, kind)
  expect(error.readings).toEqual(readings)
  const values = readings.map((reading) => parseQuantity(reading, kind))
  expect(new Set(values).size).toBe(2)
})

const refusals: readonly (readonly [QuantityCode, QuantityKind, readonly unknown[]])[] = [
  ['not-text', 'lengthM', [5, undefined, null, {}, []]],
  ['empty', 'lengthM', ['', '   ', '\u00a0\u2009']],
  ['too-long', 'lengthM', [`${'1'.repeat(200)} m`]],
  ['no-number', 'lengthM', ['m', 'five m', '- m', '.', 'NaN m', 'Infinity m', '± 5 m']],
  ['no-unit', 'currentA', ['4', '4.2', '-1', '1/2', '1 1/8']],
  ['wrong-unit', 'forceN', ['5 kg', '5 m', '5 A']],
  ['unknown-unit', 'currentA', ['5 MA', '5 amperages', '5 A A', '4-5 A', '5 % A']],
  ['unknown-unit', 'frequencyHz', ['5 mHz']],
  ['malformed', 'lengthM', ['1.2.3 m', '1,234.5 m', '1,234,567 m', '1/0 in', '1 9/8 in', '5 ft 6', '5.5 ft 6 in', '6 in 5 ft', '5 ft 14 in', '5 ± m']],
  ['out-of-range', 'temperatureC', ['-300 °C', '-1 K', '-500 °F']],
  ['out-of-range', 'areaMm2', ['-5 mm²']],
  ['out-of-range', 'lengthM', ['1e999 m', '9e200 km 1e308 m']],
]

test.each(refusals)('%s: %s', (code, kind, texts) => {
  for (const text of texts) {
    const error = refused(text, kind)
    const expected = text === '9e200 km 1e308 m' ? 'malformed' : code
    expect(error.code, String(text)).toBe(expected)
    expect(error.allowed).toContain('such as')
    expect(error.message).toContain(error.reason)
  }
})

test('the error carries text, kind, reason and what is allowed', () => {
  const error = refused('5 kg', 'forceN')
  expect({ ...error, name: error.name }).toEqual({
    name: 'QuantityError',
    code: 'wrong-unit',
    text: '5 kg',
    kind: 'forceN',
    reason: '"kg" is a unit of mass, not of force',
    allowed: 'a force such as 60 N, 13 lbf, 6 kgf',
  })
  expect(error.message).toBe('"5 kg": "kg" is a unit of mass, not of force; allowed: a force such as 60 N, 13 lbf, 6 kgf')
})

test.each(['length', '__proto__', 'constructor', ''])('"%s" is no kind', (kind) => {
  expect(() => parseQuantity('5 m', kind as QuantityKind)).toThrow(UnknownEntryError)
})

test('a capital prefix is never taken for a small one', () => {
  expect(refused('4 MA', 'currentA').code).toBe('unknown-unit')
  expect(refused('4 MV', 'voltageV').code).toBe('unknown-unit')
  expect(parseQuantity('4 MΩ', 'resistanceOhm')).toBe(4e6)
  expect(parseQuantity('4 mΩ', 'resistanceOhm')).toBe(0.004)
})
