import { DomainError, UnknownEntryError } from '@strandwise/core/errors'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { formatQuantity } from './formatQuantity.ts'
import { type QuantityKind, quantityKinds } from './kinds.ts'
import { normalise } from './normalise.ts'
import { parseQuantity } from './parseQuantity.ts'
import { readNumber } from './readNumber.ts'
import { findUnit, unitName } from './units.ts'

const kinds = Object.keys(quantityKinds) as QuantityKind[]

/** Half of a text's last printed digit in the kind's own unit, taken from the last number before a bracket or "±". */
function halfDigit(text: string, kind: QuantityKind): number {
  const first = normalise(text.replace(/ \(.*$/, '').replace(/ ± [\d.]+/, '')).replace(/^-?\d+ ft (?=\d)/, '')
  const number = readNumber(first, 0)
  if (number === null) throw new Error(`no number in "${text}"`)
  const unit = findUnit(kind, unitName(first.slice(number.end).trim()))
  return number.halfDigit * (unit === undefined ? 1 : unit.times / unit.over)
}

const someValue = fc.oneof(
  fc.double({ min: 1e-12, max: 1e12, noNaN: true }),
  fc.tuple(fc.double({ min: 1, max: 10, noNaN: true }), fc.integer({ min: -12, max: 14 })).map(([mantissa, power]) => mantissa * 10 ** power),
  fc.constantFrom(0, 1, 0.1, 999.99, 9.9996, 0.3048, 3.6576, 99.95),
)
const someOptions = fc.record(
  {
    system: fc.constantFrom('metric', 'inch', 'both'),
    significant: fc.integer({ min: 1, max: 15 }),
    uncertaintyShare: fc.double({ min: 1e-9, max: 3, noNaN: true }),
  },
  { requiredKeys: [] },
)

describe.each(kinds)('%s', (kind) => {
  test('what is printed reads back within its printed digits', () => {
    const signed = (quantityKinds[kind].lowest ?? Number.NEGATIVE_INFINITY) < -1e6
    fc.assert(
      fc.property(someValue, fc.boolean(), someOptions, (size, negative, { uncertaintyShare, ...options }) => {
        const value = negative && signed ? -size : size
        const uncertainty = uncertaintyShare === undefined ? {} : { uncertainty: uncertaintyShare * size }
        const text = formatQuantity(value, kind, { ...options, ...uncertainty })
        const back = parseQuantity(text, kind)
        expect(Math.abs(back - value), text).toBeLessThanOrEqual(halfDigit(text, kind) * (1 + 1e-9) + 1e-14 * Math.abs(value) + 1e-13)
        if (options.significant !== undefined && uncertaintyShare === undefined && kind !== 'temperatureC') {
          expect(Math.abs(back - value), text).toBeLessThanOrEqual(
            0.5 * 10 ** (1 - options.significant) * Math.abs(value) * (1 + 1e-9) + 1e-13 * Math.abs(value),
          )
        }
      }),
      { numRuns: 400 },
    )
  })
})

test.each([
  [0.0042, 'currentA', { significant: 3 }, '4.20 mA'],
  [4.2, 'currentA', {}, '4.2 A'],
  [0.0042, 'currentA', { uncertainty: 0.00021 }, '4.20 ± 0.21 mA'],
  [2.5, 'areaMm2', { system: 'both' }, '2.5 mm² (4934 cmil)'],
  [3.81, 'lengthM', { system: 'both' }, '3.81 m (12 ft 6 in)'],
  [3.6575, 'lengthM', { system: 'inch', significant: 2 }, '12 ft 0 in'],
  [85, 'temperatureC', { system: 'both' }, '85 °C (185 °F)'],
  [30, 'temperatureDifferenceK', { system: 'both' }, '30 K (54 °F)'],
  [0.00035, 'resistanceOhm', {}, '350 µΩ'],
  [0.0074, 'resistanceOhmPerM', { system: 'inch' }, '2.256 Ω/1000 ft'],
  [12, 'voltageV', { system: 'both' }, '12 V'],
  [Math.PI / 4, 'angleRad', {}, '45°'],
  [0, 'lengthMm', { system: 'inch' }, '0 in'],
  [-0.0000001, 'lengthMm', { significant: 1 }, '-0.0001 µm'],
  [0, 'lengthM', {}, '0 m'],
  [0, 'lengthM', { system: 'inch' }, '0 in'],
  [0, 'currentA', {}, '0 A'],
  [0, 'massKg', {}, '0 kg'],
  [-0, 'voltageV', {}, '0 V'],
  [0, 'lengthM', { uncertainty: 0.002 }, '0.0 ± 2.0 mm'],
  [1000, 'lengthM', {}, '1 km'],
  [1, 'lengthM', {}, '1 m'],
  [0.999, 'lengthM', {}, '999 mm'],
  [0.03, 'ratio', {}, '0.03'],
  [3.81, 'lengthM', { system: 'inch', uncertainty: 0.0127 }, '150.00 ± 0.50 in'],
  [3.81, 'lengthM', { system: 'inch', significant: 5 }, '12 ft 6.00 in'],
  [-3.81, 'lengthM', { system: 'inch' }, '-12 ft 6 in'],
  [9.996, 'voltageV', { significant: 3 }, '10.0 V'],
  [4.2, 'voltageV', { uncertainty: 0.0996 }, '4.20 ± 0.10 V'],
  [-17.78, 'temperatureC', { system: 'inch', uncertainty: 0.2 }, '0.00 ± 0.36 °F'],
  [-17.8, 'temperatureC', { system: 'inch', uncertainty: 0.2 }, '-0.04 ± 0.36 °F'],
  [2.5e-6, 'ratio', {}, '0.0000025'],
  [2.5e-7, 'ratio', {}, '2.5e-7'],
  [2.5e-7, 'ratio', { significant: 3 }, '2.50e-7'],
  [1.5e14, 'ratio', {}, '150000000000000'],
  [1.5e15, 'ratio', {}, '1.5e15'],
  [1.5e15, 'ratio', { significant: 3 }, '1.50e15'],
] as const)('%s as %s with %o is "%s"', (value, kind, options, text) => {
  expect(formatQuantity(value, kind, options)).toBe(text)
})

test('refusals: not finite, out of the kind, options out of their domain, an unknown kind', () => {
  for (const value of [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]) expect(() => formatQuantity(value, 'lengthM')).toThrow(DomainError)
  expect(() => formatQuantity(-1, 'areaMm2')).toThrow(DomainError)
  expect(() => formatQuantity(-274, 'temperatureC')).toThrow(DomainError)
  for (const significant of [0, 16, 2.5, Number.NaN]) expect(() => formatQuantity(1, 'lengthM', { significant })).toThrow('options.significant')
  for (const uncertainty of [-1, Number.NaN, Number.POSITIVE_INFINITY])
    expect(() => formatQuantity(1, 'lengthM', { uncertainty })).toThrow('options.uncertainty')
  expect(() => formatQuantity(1, 'lengthM', { system: 'cubits' as 'inch' })).toThrow('options.system')
  expect(() => formatQuantity(1, '__proto__' as QuantityKind)).toThrow(UnknownEntryError)
})
