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

test('count and gauge: 19 strands of 32 AWG, also thick ones', () => {
  for (const text of ['19 x 32 AWG', '19×32 AWG', '19/32 AWG', '19 x AWG 32', '19x32awg']) expect(area(text)).toBeCloseTo(19 * awgToAreaMm2(32), 12)
  expect(area('7 x 2/0 AWG')).toBeCloseTo(7 * awgToAreaMm2(-1), 12)
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
  ['7/1,234 mm', ['7 x 1.234 mm', '7 x 1234 mm']],
  ['24/0.2', ['24 x 0.2 mm', '24 x 0.2 in']],
])('"%s" is refused with both readings, and each reading can be read', (text, readings) => {
  const error = refusedWith(text)
  expect(error.readings).toEqual(readings)
  expect(new Set(readings.map(area)).size).toBe(2)
})

test.each(['0/0.3 mm', '7/0 mm', '7 x mm', '7 x five', '50 AWG', '7 x 99 AWG', 'AWG', '7/0.3 A'])('"%s" is no construction', (text) => {
  expect(refusedWith(text).kind).toBe('areaMm2')
})

test('parseStrands gives count and diameter, and nothing where the text says nothing of strands', () => {
  expect(parseStrands('7/0.3 mm')).toEqual({ strandCount: 7, strandDiameterMm: 0.3 })
  expect(parseStrands('19 x 0.012 in')?.strandDiameterMm).toBeCloseTo(0.3048, 12)
  for (const text of ['2.5 mm²', '18 AWG', '2/0', '3/4 mm²']) expect(parseStrands(text)).toBeNull()
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
