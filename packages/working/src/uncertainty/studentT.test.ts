import fc from 'fast-check'
import { expect, test } from 'vitest'
import { coverageFactor, normalWithin } from './studentT.ts'

const coverage = fc.double({ min: 0.01, max: 0.9999, noNaN: true })

test('one degree of freedom is the Cauchy distribution: k = tan(pi c/2)', () => {
  fc.assert(fc.property(coverage, (c) => void expect(coverageFactor(c, 1) / Math.tan((Math.PI * c) / 2)).toBeCloseTo(1, 10)))
})

test('two degrees of freedom: k = c sqrt(2/(1 - c^2))', () => {
  fc.assert(fc.property(coverage, (c) => void expect(coverageFactor(c, 2) / (c * Math.sqrt(2 / (1 - c * c)))).toBeCloseTo(1, 10)))
})

test('four degrees of freedom: the share within k is (s (3 - s^2))/2 with s = k/sqrt(4 + k^2)', () => {
  fc.assert(
    fc.property(coverage, (c) => {
      const k = coverageFactor(c, 4)
      const s = k / Math.sqrt(4 + k * k)
      expect((s * (3 - s * s)) / 2).toBeCloseTo(c, 10)
    }),
  )
})

test('fewer degrees of freedom reach wider, down to the normal distribution', () => {
  fc.assert(
    fc.property(coverage, fc.double({ min: 0.5, max: 1e4, noNaN: true }), (c, nu) => {
      const k = coverageFactor(c, nu)
      expect(k).toBeGreaterThan(coverageFactor(c, 1.1 * nu))
      expect(k).toBeGreaterThan(coverageFactor(c, null))
      // Fisher's expansion: the first correction to the normal quantile is (k^3 + k)/(4 nu).
      const normal = coverageFactor(c, null)
      if (nu > 100) expect(k - normal - (normal ** 3 + normal) / (4 * nu)).toBeLessThan((10 * normal ** 5 + 10) / nu ** 2)
    }),
  )
})

test('the normal share is the integral of the bell curve', () => {
  for (const k of [0.1, 0.5, 1, 1.96, 3, 5]) {
    const steps = 2000
    let sum = 0
    for (let at = 0; at <= steps; at++) sum += Math.exp(-0.5 * ((k * at) / steps) ** 2) * (at === 0 || at === steps ? 1 : at % 2 === 1 ? 4 : 2)
    expect(normalWithin(k)).toBeCloseTo((Math.sqrt(2 / Math.PI) * sum * k) / steps / 3, 12)
  }
  expect(normalWithin(0)).toBe(0)
  expect(normalWithin(9)).toBe(1)
})

test('the factor gives its share back', () => {
  fc.assert(fc.property(coverage, (c) => void expect(normalWithin(coverageFactor(c, null))).toBeCloseTo(c, 13)))
})
