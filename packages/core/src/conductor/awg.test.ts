import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { DomainError } from '../errors/index.ts'
import { areaMm2ToAwg, awgToAreaMm2, awgToDiameterMm, nearestAwg } from './awg.ts'

const gauge = fc.double({ min: -5.4, max: 40.4, noNaN: true })
const wholeGauge = fc.integer({ min: -5, max: 40 })

describe('the series of ASTM B258 by its definition', () => {
  test('its two fixed points: No. 36 is 0.005 in, No. 4/0 is 0.46 in', () => {
    expect(awgToDiameterMm(36)).toBeCloseTo(0.127, 14)
    expect(awgToDiameterMm(-3)).toBeCloseTo(11.684, 12)
  })

  test('one step more divides the diameter by the 39th root of 92', () => {
    fc.assert(
      fc.property(fc.integer({ min: -5, max: 39 }), (n) => {
        expect((awgToDiameterMm(n) / awgToDiameterMm(n + 1)) ** 39).toBeCloseTo(92, 9)
      }),
    )
  })

  test('six steps thinner halves the diameter within 0.3 %, three halves the area within 0.5 %: the bench rule', () => {
    expect(Math.abs(awgToDiameterMm(12) / awgToDiameterMm(18) / 2 - 1)).toBeLessThan(0.003)
    expect(Math.abs(awgToAreaMm2(12) / awgToAreaMm2(15) / 2 - 1)).toBeLessThan(0.005)
  })
})

describe('properties', () => {
  test('gauge to area and back returns the gauge, fractions too', () => {
    fc.assert(
      fc.property(gauge, (n) => {
        expect(areaMm2ToAwg(awgToAreaMm2(n))).toBeCloseTo(n, 11)
      }),
    )
  })

  test('every whole gauge is the nearest to its own area, and to any area within half a step of it', () => {
    fc.assert(
      fc.property(wholeGauge, fc.double({ min: -0.45, max: 0.45, noNaN: true }), (n, off) => {
        expect(nearestAwg(awgToAreaMm2(n))).toBe(n)
        expect(nearestAwg(awgToAreaMm2(n + off))).toBe(n)
      }),
    )
  })

  test('a higher gauge is a thinner wire', () => {
    fc.assert(
      fc.property(gauge, gauge, (a, b) => {
        if (Math.abs(a - b) > 1e-9) expect(Math.sign(awgToDiameterMm(a) - awgToDiameterMm(b))).toBe(Math.sign(b - a))
      }),
    )
  })

  test('the gauge 0 is 0, not -0', () => {
    expect(Object.is(nearestAwg(awgToAreaMm2(-0.3)), 0)).toBe(true)
  })
})

describe('edges', () => {
  test.each([-5.5, 40.5])('gauge %d is the last one in', (n) => {
    expect(awgToAreaMm2(n)).toBeGreaterThan(0)
  })

  test.each([-5.5000001, 40.5000001, 99, -99, Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])('gauge %d is refused by name', (n) => {
    for (const formula of [awgToDiameterMm, awgToAreaMm2]) {
      expect(() => formula(n)).toThrow(DomainError)
      expect(() => formula(n)).toThrow('"gauge"')
    }
  })

  test('both ends of the area range have a gauge inside the range of gauges', () => {
    for (const area of [0.0045, 191]) expect(awgToAreaMm2(areaMm2ToAwg(area))).toBeCloseTo(area, 10)
    expect([nearestAwg(0.0045), nearestAwg(191)]).toEqual([40, -5])
  })

  test.each([0, -1, 0.00449, 191.1, Number.NaN, Number.POSITIVE_INFINITY])('area %d is refused by name', (area) => {
    for (const formula of [areaMm2ToAwg, nearestAwg]) {
      expect(() => formula(area)).toThrow(DomainError)
      expect(() => formula(area)).toThrow('"areaMm2"')
    }
  })

  test('a gauge that is no number is refused as such', () => {
    expect(() => awgToAreaMm2('18' as unknown as number)).toThrow(expect.objectContaining({ code: 'not-a-number', parameter: 'gauge' }))
    expect(() => awgToAreaMm2(undefined as unknown as number)).toThrow(expect.objectContaining({ code: 'missing' }))
  })
})
