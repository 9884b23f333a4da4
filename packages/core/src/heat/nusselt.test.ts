import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { churchillBernsteinNusselt, forcedConvectionNusselt } from './forcedConvectionNusselt.ts'
import { morganBands, naturalConvectionNusselt } from './naturalConvectionNusselt.ts'

const still = (rayleigh: number, correlation?: 'churchill-chu' | 'morgan', prandtl = 0.7) =>
  naturalConvectionNusselt(Object.freeze(correlation === undefined ? { rayleigh, prandtl } : { rayleigh, prandtl, correlation }))

describe('naturalConvectionNusselt', () => {
  test('no buoyancy: conduction alone leaves 0.36 by Churchill and Chu, 0 by Morgan', () => {
    expect(still(0)).toBeCloseTo(0.36, 15)
    expect(still(0, 'morgan')).toBe(0)
  })

  test('equals the powers written out, at any Prandtl number', () => {
    fc.assert(
      fc.property(fc.double({ min: -8, max: 12, noNaN: true }), fc.double({ min: 0.01, max: 1000, noNaN: true }), (exponent, Pr) => {
        const Ra = 10 ** exponent
        const written = (0.6 + (0.387 * Ra ** (1 / 6)) / (1 + (0.559 / Pr) ** (9 / 16)) ** (8 / 27)) ** 2
        expect(Math.abs(still(Ra, 'churchill-chu', Pr) / written - 1)).toBeLessThan(1e-13)
      }),
    )
  })

  test('Morgan: each band holds below its upper edge, the next one from it', () => {
    for (const [index, band] of morganBands.entries()) {
      const next = morganBands[index + 1]
      const Ra = next === undefined ? 1e9 : band.below
      if (next !== undefined) expect(still(Ra, 'morgan')).toBeCloseTo(next.factor * Ra ** next.exponent, 10)
      const inside = next === undefined ? Ra : band.below * (1 - 1e-9)
      expect(Math.abs(still(inside, 'morgan') / (band.factor * inside ** band.exponent) - 1)).toBeLessThan(1e-13)
    }
  })

  test('Morgan jumps by -0.16, 0.19, -0.04 and -0.76 % at its edges', () => {
    const jumps = [1e-2, 1e2, 1e4, 1e7].map((Ra) => 100 * (still(Ra, 'morgan') / still(Ra * (1 - 1e-12), 'morgan') - 1))
    expect(jumps.map((jump) => Number(jump.toFixed(2)))).toEqual([-0.16, 0.19, -0.04, -0.76])
  })

  test('Churchill and Chu grow with the Rayleigh number and are the default', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-6, max: 1e11, noNaN: true }), (Ra) => {
        expect(still(Ra * 1.01)).toBeGreaterThan(still(Ra))
        expect(still(Ra)).toBe(still(Ra, 'churchill-chu'))
      }),
    )
  })

  test('refuses by name what lies outside', () => {
    for (const Ra of [-1e-300, 1.0000001e12, Number.NaN, Infinity]) expect(() => still(Ra)).toThrow(expect.objectContaining({ parameter: 'rayleigh' }))
    for (const Pr of [0, -1, Number.NaN, Infinity]) {
      expect(() => still(1, 'churchill-chu', Pr)).toThrow(expect.objectContaining({ name: 'DomainError', parameter: 'prandtl' }))
    }
    expect(() => still(1, 'other' as 'morgan')).toThrow(expect.objectContaining({ parameter: 'correlation', code: 'wrong-choice' }))
    expect(still(1e12)).toBeGreaterThan(1000)
  })
})

describe('forcedConvectionNusselt', () => {
  test('equals the powers written out, and its form without a limit', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 1e7, noNaN: true }), fc.double({ min: 0.3, max: 1000, noNaN: true }), (Re, Pr) => {
        const written = 0.3 + ((0.62 * Re ** 0.5 * Pr ** (1 / 3)) / (1 + (0.4 / Pr) ** (2 / 3)) ** 0.25) * (1 + (Re / 282000) ** (5 / 8)) ** 0.8
        expect(Math.abs(forcedConvectionNusselt({ reynolds: Re, prandtl: Pr }) / written - 1)).toBeLessThan(1e-13)
        expect(forcedConvectionNusselt({ reynolds: Re, prandtl: Pr })).toBe(churchillBernsteinNusselt({ reynolds: Re, prandtl: Pr }))
      }),
    )
  })

  test('Re Pr must be above 0.2; the form without a limit goes on to still air', () => {
    expect(() => forcedConvectionNusselt({ reynolds: 0.2, prandtl: 1 })).toThrow(
      expect.objectContaining({ parameter: 'reynolds', source: expect.stringContaining('Bernstein') }),
    )
    expect(forcedConvectionNusselt({ reynolds: 0.2000001, prandtl: 1 })).toBeGreaterThan(0.3)
    expect(churchillBernsteinNusselt({ reynolds: 0, prandtl: 0.7 })).toBe(0.3)
  })

  test('refuses by name what lies outside', () => {
    for (const Re of [0, -1, Number.NaN, Infinity]) {
      expect(() => forcedConvectionNusselt({ reynolds: Re, prandtl: 0.7 })).toThrow(expect.objectContaining({ parameter: 'reynolds' }))
    }
    for (const Pr of [0, Number.NaN, Infinity]) {
      expect(() => forcedConvectionNusselt({ reynolds: 10, prandtl: Pr })).toThrow(expect.objectContaining({ parameter: 'prandtl' }))
      expect(() => churchillBernsteinNusselt({ reynolds: 10, prandtl: Pr })).toThrow(expect.objectContaining({ parameter: 'prandtl' }))
    }
    expect(() => churchillBernsteinNusselt({ reynolds: -1, prandtl: 0.7 })).toThrow(expect.objectContaining({ parameter: 'reynolds' }))
  })
})
