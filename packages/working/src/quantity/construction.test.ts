import { awgToAreaMm2, strandedAreaMm2 } from '@strandwise/core/conductor'
import { expect, test } from 'vitest'
import { parseStrands } from './construction.ts'
import { parseQuantity } from './parseQuantity.ts'
import { QuantityError } from './quantityError.ts'

const area = (text: string): number => parseQuantity(text, 'areaMm2')

test('count over diameter, in mm or in inches, with a point or a comma', () => {
  const wanted = strandedAreaMm2({ strandCount: 7, strandDiameterMm: 0.3 })
  for (const text of ['7/0.3 mm', '7/0,3 mm', '7/.3mm', '7 / 0.3 mm', '7 x 0.3 mm', '7×0.3 mm', '7 strands of 0.3 mm'])
    expect(area(text)).toBeCloseTo(wanted, 12)
  expect(area('7/0.012 in')).toBeCloseTo(strandedAreaMm2({ strandCount: 7, strandDiameterMm: 0.3048 }), 12)
  expect(area('1 x 3/64 in')).toBeCloseTo((Math.PI / 4) * ((3 / 64) * 25.4) ** 2, 12)
})

test.each([
  ['19 strands of 0.25 mm', 19, 0.25],
  ['7strands of 0.3 mm', 7, 0.3],
  ['7 strand of 0.3 mm', 7, 0.3],
  ['7 wires of 0.3 mm', 7, 0.3],
  ['1 wire of 0.3 mm', 1, 0.3],
  ['7 strands 0.3 mm', 7, 0.3],
  ['24/2 mm', 24, 2],
  ['7/7 mm', 7, 7],
  ['7/0.3 cm', 7, 3],
  ['7 x 0.3 cm', 7, 3],
  ['1 x 3/64in', 1, (3 / 64) * 25.4],
  ['1 x 11/64 in', 1, (11 / 64) * 25.4],
  ['2 x 7 x 3/64 in', 14, (3 / 64) * 25.4],
])('"%s" is %s strands of %s mm', (text, count, diameter) => {
  expect(area(text) / (count * (Math.PI / 4) * diameter ** 2)).toBeCloseTo(1, 12)
  expect(parseStrands(text)?.strandCount).toBe(count)
  expect(parseStrands(text)?.strandDiameterMm).toBeCloseTo(diameter, 12)
})

test.each([
  ['1 3/4 mm²', 1.75],
  ['2.5 × 10² mm²', 250],
  ['2 × 10² mm²', 200],
  ['5 x 10^-3 in²', 3.2258],
  ['1 x 1.5 mm²', 1.5],
  ['1 wire of 1.5 mm²', 1.5],
  ['67.4 mm² ( 2/0 )', 67.4],
])('"%s" is an area of %s mm², with nothing to count', (text, wanted) => {
  expect(area(text)).toBeCloseTo(wanted, 12)
  expect(parseStrands(text)).toBeNull()
})

test('a statement in brackets may differ by half of the last digit of the diameter: 0.35 mm would be 0.67 mm², 0.0125 in 0.55 mm²', () => {
  expect(area('7/0.3 mm (0.60 mm²)')).toBe(area('7/0.3 mm'))
  expect(area('7/0.012 in (0.54 mm²)')).toBe(area('7/0.012 in'))
  for (const text of ['7/0.3 mm (0.80 mm²)', '7/0.012 in (0.60 mm²)']) expect(refusedWith(text).code).toBe('ambiguous')
})

test('count and gauge: 19 strands of 32 AWG, also thick ones', () => {
  for (const text of ['19 x 32 AWG', '19×32 AWG', '19/32 AWG', '19 x AWG 32', '19x32awg']) expect(area(text)).toBeCloseTo(19 * awgToAreaMm2(32), 12)
  expect(area('7 x 2/0 AWG')).toBeCloseTo(7 * awgToAreaMm2(-1), 12)
  expect(area('19 x 0 AWG')).toBeCloseTo(19 * awgToAreaMm2(0), 9)
  expect(area('1/0 AWG')).toBeCloseTo(awgToAreaMm2(0), 12)
})

test('strands of strands multiply', () => {
  expect(area('7 x 19 x 0.1 mm')).toBeCloseTo(133 * (Math.PI / 4) * 0.01, 12)
  expect(area('2 x 7/0.3 mm')).toBeCloseTo(14 * (Math.PI / 4) * 0.09, 12)
})

test.each([
  ['3/4 in', ['3 x 4 in', '1 x 3/4 in']],
  ['7/0.3 mm²', ['2.1 mm²', '23.3333333333 mm²']],
  ['2 x 1.5 mm²', ['3 mm²', '1.5 mm²']],
  ['7/16 in', ['7 x 16 in', '1 x 7/16 in']],
  ['7/1,234 mm', ['7 x 1.234 mm', '7 x 1234 mm']],
  ['7 x 1,234 mm', ['7 x 1.234 mm', '7 x 1234 mm']],
  ['24/0.2', ['24 x 0.2 mm', '24 x 0.2 in']],
])('"%s" is refused with both readings, and each reading can be read', (text, readings) => {
  const error = refusedWith(text)
  expect(error.readings).toEqual(readings)
  expect(new Set(readings.map(area)).size).toBe(2)
})

test.each(['0/0.3 mm', '7/0 mm', '7 x mm', '7 x five', '50 AWG', '7 x 99 AWG', 'AWG', '7/0.3 A'])('"%s" is no construction', (text) => {
  expect(refusedWith(text).kind).toBe('areaMm2')
})

test.each(['7 x . mm', '7 x .', '7 x 1/0', '7 x 1/0 mm²', '7 x 1/0 in', '7 x 1 x 1.5 mm²'])('"%s" is a broken construction', (text) => {
  expect(refusedWith(text).code).toBe('malformed')
})

test('a refusal says what is wrong with the diameter', () => {
  expect(refusedWith('7 x . mm').reason).toBe('no diameter after the count of strands')
  expect(refusedWith('7 x 1/0 in').reason).toBe('a fraction over 0')
  for (const text of ['7/. mm', '7/, mm', '1.5 x 2 mm']) expect(refusedWith(text).code).toBe('unknown-unit')
  for (const text of ['7/1,234', '7 x 1,234']) expect(refusedWith(text).readings).toEqual(['7 x 1.234', '7 x 1234'])
})

test('parseStrands gives count and diameter, and nothing where the text says nothing of strands', () => {
  expect(parseStrands('7/0.3 mm')).toEqual({ strandCount: 7, strandDiameterMm: 0.3 })
  expect(parseStrands('19 x 0.012 in')?.strandDiameterMm).toBeCloseTo(0.3048, 12)
  for (const text of ['2.5 mm²', '18 AWG', '2/0', '3/4 mm²']) expect(parseStrands(text)).toBeNull()
})

test('parseStrands reads up to 120 characters, and nothing that is no text', () => {
  expect(parseStrands(`7/0.3${'0'.repeat(112)} mm`)).toEqual({ strandCount: 7, strandDiameterMm: 0.3 })
  expect(parseStrands(`7/0.3${'0'.repeat(113)} mm`)).toBeNull()
  for (const value of [5, null, undefined, {}]) expect(parseStrands(value as unknown as string)).toBeNull()
})

test('parseStrands refuses a broken construction with the text as it was given', () => {
  expect(() => parseStrands('7 × 1/0 mm')).toThrow(expect.objectContaining({ name: 'QuantityError', text: '7 × 1/0 mm', kind: 'areaMm2' }))
})

function refusedWith(text: string): QuantityError {
  try {
    area(text)
  } catch (error) {
    if (error instanceof QuantityError) return error
    throw error
  }
  throw new Error(`"${text}" was taken`)
}
