import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { DomainError } from '../errors/index.ts'
import { awgToAreaMm2 } from './awg.ts'
import { circularMilsToMm2, mm2ToCircularMils } from './circularMils.ts'

describe('circular mils', () => {
  test('by definition: No. 4/0 is 460 mil across, so 460^2 of them; No. 36 is 5 mil, so 25', () => {
    expect(mm2ToCircularMils(awgToAreaMm2(-3))).toBeCloseTo(211_600, 6)
    expect(mm2ToCircularMils(awgToAreaMm2(36))).toBeCloseTo(25, 12)
  })

  test('a circle one inch across holds a million', () => {
    expect(circularMilsToMm2(1e6)).toBeCloseTo((Math.PI / 4) * 25.4 ** 2, 10)
  })

  test('there and back returns the area', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-6, max: 1e6, noNaN: true }), (area) => {
        expect(circularMilsToMm2(mm2ToCircularMils(area)) / area).toBeCloseTo(1, 14)
      }),
    )
  })

  test.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])('%d is refused by name', (value) => {
    expect(() => mm2ToCircularMils(value)).toThrow(DomainError)
    expect(() => mm2ToCircularMils(value)).toThrow('"areaMm2"')
    expect(() => circularMilsToMm2(value)).toThrow('"circularMils"')
  })

  test('an area too large to write in circular mils is refused, not returned as infinite', () => {
    expect(() => mm2ToCircularMils(Number.MAX_VALUE)).toThrow(DomainError)
  })
})
