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
  ['123,456 mm', 'lengthMm', ['123.456 mm', '123456 mm']],
  ['10,125 mm', 'lengthMm', ['10.125 mm', '10125 mm']],
  ['1,234e3 mm', 'lengthMm', ['1.234e3 mm', '1234e3 mm']],
  ['-12,345 V', 'voltageV', ['-12.345 V', '-12345 V']],
  ['1,234', 'ratio', ['1.234', '1234']],
  ['2.5 mm', 'areaMm2', ['2.5 mm²', '1 x 2.5 mm']],
  ['18', 'areaMm2', ['18 mm²', '18 AWG']],
  ['18 ± 1', 'areaMm2', ['18 mm²', '18 AWG']],
  ['4', 'areaMm2', ['4 mm²', '4 AWG']],
  ['40', 'areaMm2', ['40 mm²', '40 AWG']],
  ['5 cm', 'areaMm2', ['5 cm²', '5 cmil']],
  ['5 mw', 'powerW', ['5 mW', '5 MW']],
  ['1 hp', 'powerW', ['1 mechanical hp', '1 metric hp']],
  ['1 HP', 'powerW', ['1 mechanical hp', '1 metric hp']],
  ['5 K/mw', 'thermalResistanceKPerW', ['5 K/mW', '5 K/MW']],
  ['1 ton', 'massKg', ['1 short ton', '1 long ton']],
  ['20 deg', 'temperatureC', ['20 °C', '20 °F']],
  ['5 m', 'timeS', ['5 min', '5 ms']],
  ['1:30', 'timeS', ['1 min 30 s', '1 h 30 min']],
  ['1 gal', 'volumeMm3', ['1 US gal', '1 UK gal']],
  ['25.4 mm (2 in)', 'lengthMm', ['25.4 mm', '2 in']],
  ['25.4 mm (1.20 in)', 'lengthMm', ['25.4 mm', '1.20 in']],
  ['1.0 nm (5.0 nm)', 'lengthM', ['1.0 nm', '5.0 nm']],
  ['4k7 (4.80 kohm)', 'resistanceOhm', ['4k7', '4.80 kohm']],
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
  ['wrong-unit', 'areaMm2', ['5 A', '5 kg']],
  ['wrong-unit', 'speedMPerS', ['5 min']],
  ['wrong-unit', 'temperatureC', ['30 Δ°C']],
  ['unknown-unit', 'currentA', ['5 MA', '5 amperages', '5 A A', '4-5 A', '5 % A', '5 A/m', '4.2 A)']],
  ['unknown-unit', 'speedMPerS', ['5 foo', '5 x/s', '5 m/x']],
  ['unknown-unit', 'lengthM', ['5 ft 1/0 in', '5 ft 1 9/8 in', '5 ft 1,234 in', '12 ft 6 in-', '25.4 mm (1 in.']],
  ['unknown-unit', 'resistanceOhm', ['1.4R7', '-4R7', '4R7 x']],
  ['unknown-unit', 'ratio', ['-2:1', '2:1:3', '2:0']],
  ['unknown-unit', 'timeS', ['-1:02:03', '1:02:03:04']],
  ['unknown-unit', 'frequencyHz', ['5 mHz']],
  ['malformed', 'lengthM', ['1.2.3 m', '1,234.5 m', '1,234,567 m', '1/0 in', '1 9/8 in', '5 ft 6', '5.5 ft 6 in', '6 in 5 ft', '5 ft 14 in', '5 ± m']],
  ['malformed', 'lengthM', ['1 8/8 in', '5 6 ft', '5 ft 12 in', '5 ft 1/2 ft', '6 in 0 ft']],
  ['malformed', 'lengthM', ['± m', '5 ± -1 m', '5 ±-1 m', '5 ± 1 ± 1 m', '5 m ± 1 m ± 1 m']],
  ['malformed', 'timeS', ['1 min 60 s']],
  ['malformed', 'voltageV', ['1.2.05 V', '1.2.9 V']],
  ['malformed', 'massKg', ['1 lb 16 oz']],
  ['malformed', 'angleRad', ['1° 60′']],
  ['out-of-range', 'temperatureC', ['-300 °C', '-1 K', '-500 °F']],
  ['out-of-range', 'areaMm2', ['-5 mm²']],
  ['out-of-range', 'lengthM', ['1e999 m', '9e200 km 1e308 m', '1e308 km 5 m']],
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

test('a number that can be no gauge, or is no area, is refused without readings', () => {
  for (const text of ['250', '41', '0', '0.5']) expect(refused(text, 'areaMm2').readings, text).toBeUndefined()
  expect(refused('4', 'currentA').readings).toBeUndefined()
})

test('the message shows both readings, and which zero a value lies below', () => {
  expect(refused('1,234 mm', 'lengthMm').message).toContain(': "1.234 mm" or "1234 mm"; allowed: ')
  expect(refused('-5 mm²', 'areaMm2').reason).toBe('below 0')
  expect(refused('-1 K', 'temperatureC').reason).toBe('below absolute zero')
})

test('120 characters are read, and a message shows the first 60', () => {
  expect(parseQuantity(`2.5${'0'.repeat(114)} mm`, 'lengthMm')).toBe(2.5)
  expect(refused(`2.5${'0'.repeat(115)} mm`, 'lengthMm').code).toBe('too-long')
  const whole = `${'1'.repeat(57)} kg`
  expect(refused(whole, 'forceN').message).toContain(`"${whole}": `)
  expect(refused(`1${whole}`, 'forceN').message).toContain(`"1${whole.slice(0, 59)}…": `)
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
