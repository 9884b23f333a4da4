import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { readingInterval } from './readingInterval.ts'

const base = Object.freeze({ reading: 0.5, percentOfReading: 0.5, counts: 3, resolution: 0.1 })
const size = fc.double({ min: 0, max: 1e4, noNaN: true })

describe('readingInterval', () => {
  test('by hand: 0.5 % of 200 ohm and 3 counts of 0.1 ohm are 1.3 ohm', () => {
    const { low, high, standardUncertainty } = readingInterval({ ...base, reading: 200 })
    expect(low).toBeCloseTo(198.7, 12)
    expect(high).toBeCloseTo(201.3, 12)
    expect(standardUncertainty).toBeCloseTo(1.3 / Math.sqrt(3), 12)
  })

  test('by hand: leads are taken off the value, their uncertainty is added to the width', () => {
    const { low, high, standardUncertainty } = readingInterval({
      reading: 5,
      percentOfReading: 0,
      counts: 3,
      resolution: 0.1,
      leadOhm: 0.2,
      leadUncertaintyOhm: 0.4,
    })
    expect(low).toBeCloseTo(4.1, 12)
    expect(high).toBeCloseTo(5.5, 12)
    expect(standardUncertainty).toBeCloseTo(0.5 / Math.sqrt(3), 12)
  })

  test('the low end is not clipped: a reading inside the meter floor reaches below zero', () => {
    expect(readingInterval({ ...base, reading: 0.1 }).low).toBeLessThan(0)
  })

  test('a negative reading has the width of its size', () => {
    const { low, high } = readingInterval({ reading: -10, percentOfReading: 1, counts: 0, resolution: 0.01 })
    expect([low, high]).toEqual([-10.1, -9.9])
  })

  test('an exact meter without leads gives the reading unchanged', () => {
    expect(readingInterval({ reading: 7, percentOfReading: 0, counts: 0, resolution: 0.1 })).toEqual({ low: 7, high: 7, standardUncertainty: 0 })
  })

  test('a null that was not taken counts as 0', () => {
    expect(readingInterval(base)).toEqual(readingInterval({ ...base, leadOhm: 0, leadUncertaintyOhm: 0 }))
  })

  test('holds reading minus lead in its middle; width grows with each part of the accuracy', () => {
    fc.assert(
      fc.property(size, size, size, size, size, size, (reading, percentOfReading, counts, resolution, leadOhm, leadUncertaintyOhm) => {
        const input = { reading, percentOfReading, counts, resolution, leadOhm, leadUncertaintyOhm }
        const { low, high, standardUncertainty } = readingInterval(input)
        const scale = Math.abs(low) + Math.abs(high) + 1
        expect(Math.abs((low + high) / 2 - (reading - leadOhm)) / scale).toBeLessThan(1e-12)
        expect(standardUncertainty).toBeLessThanOrEqual(((high - low) / 2 / Math.sqrt(3)) * (1 + 1e-12) + scale * 1e-12)
        const wider = readingInterval({ ...input, counts: counts + 1, percentOfReading: percentOfReading + 1 })
        expect(wider.high - wider.low).toBeGreaterThanOrEqual(high - low)
        expect(wider.standardUncertainty).toBeGreaterThanOrEqual(standardUncertainty)
      }),
    )
  })

  test.each(['reading', 'percentOfReading', 'counts', 'resolution', 'leadOhm', 'leadUncertaintyOhm'])(
    '%s: NaN and infinities are refused by name',
    (parameter) => {
      for (const value of [Number.NaN, Infinity, -Infinity]) {
        expect(() => readingInterval({ ...base, [parameter]: value })).toThrow(expect.objectContaining({ name: 'DomainError', parameter }))
      }
    },
  )

  test.each(['percentOfReading', 'counts', 'resolution', 'leadOhm', 'leadUncertaintyOhm'])('%s: 0 passes, just below it is refused by name', (parameter) => {
    expect(readingInterval({ ...base, [parameter]: 0 }).high).toBeLessThan(2)
    expect(() => readingInterval({ ...base, [parameter]: -Number.EPSILON })).toThrow(
      expect.objectContaining({ name: 'DomainError', parameter, value: -Number.EPSILON, code: 'out-of-range' }),
    )
  })

  test('a result past the largest number is refused, not returned as infinity', () => {
    expect(() => readingInterval({ ...base, reading: 1e308, percentOfReading: 200 })).toThrow(expect.objectContaining({ parameter: 'reading' }))
  })
})
