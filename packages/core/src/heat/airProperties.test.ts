import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { DomainError } from '../errors/index.ts'
import { airProperties } from './airProperties.ts'

describe('airProperties', () => {
  test('hand case, 300 K at one atmosphere: each fit written out', () => {
    const air = airProperties(26.85, 101325)
    expect(air.viscosityPaS).toBeCloseTo((1.458e-6 * 300 ** 1.5) / 410.4, 15)
    expect(air.conductivityWPerMK).toBeCloseTo((2.64638e-3 * 300 ** 1.5) / (300 + 245.4 * 10 ** (-12 / 300)), 12)
    expect(air.densityKgPerM3).toBeCloseTo((101325 * 0.0289586) / (8.314462618 * 300), 10)
    expect(air.expansionPerK).toBe(1 / 300)
    expect(air.prandtl).toBeCloseTo((air.viscosityPaS * 1006) / air.conductivityWPerMK, 14)
  })

  test('the pressure defaults to the standard atmosphere, and only the density follows it', () => {
    expect(airProperties(20)).toEqual(airProperties(20, 101325))
    const half = airProperties(20, 50662.5)
    expect(half.densityKgPerM3).toBeCloseTo(airProperties(20).densityKgPerM3 / 2, 12)
    expect(half.viscosityPaS).toBe(airProperties(20).viscosityPaS)
  })

  test('hotter air is thinner, more viscous and conducts better', () => {
    fc.assert(
      fc.property(fc.double({ min: -173, max: 1500, noNaN: true }), fc.double({ min: 0.01, max: 100, noNaN: true }), (T, step) => {
        const [cool, warm] = [airProperties(T), airProperties(T + step)]
        expect(warm.densityKgPerM3).toBeLessThan(cool.densityKgPerM3)
        expect(warm.viscosityPaS).toBeGreaterThan(cool.viscosityPaS)
        expect(warm.conductivityWPerMK).toBeGreaterThan(cool.conductivityWPerMK)
      }),
    )
  })

  test('refuses temperatures outside 100 to 1900 K and a pressure of 0 by name', () => {
    for (const T of [-173.16, 1626.86, Number.NaN, Infinity, -Infinity]) {
      expect(() => airProperties(T)).toThrow(expect.objectContaining({ name: 'DomainError', parameter: 'temperatureC' }))
    }
    for (const p of [0, -1, Number.NaN, Infinity]) expect(() => airProperties(20, p)).toThrow(expect.objectContaining({ parameter: 'pressurePa' }))
    expect(() => airProperties(-100, Number.MAX_VALUE)).not.toThrow()
    expect(airProperties(-173.15).densityKgPerM3).toBeGreaterThan(3)
    expect(airProperties(1626.85).densityKgPerM3).toBeLessThan(0.2)
    expect(() => airProperties(undefined as unknown as number)).toThrow(DomainError)
  })
})
