import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { fourNumbers, moments } from './moments.ts'

/** The same integrals by Simpson's rule on fine slices. */
function simpson(z: number, x: number, k: number): number {
  const n = 4000
  const h = x / n
  let sum = 0
  for (let j = 0; j <= n; j++) {
    const u = j * h
    sum += (j === 0 || j === n ? 1 : j % 2 === 1 ? 4 : 2) * Math.exp(-z * (x - u)) * u ** k
  }
  return (sum * h) / 3
}

describe('moments of a decay', () => {
  test('against Simpson on both sides of the series', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-3, max: 30, noNaN: true }), fc.constantFrom(1 / 3, 1, 0.7), (z, x) => {
        const out = fourNumbers()
        moments(z, x, out)
        for (const k of [0, 1, 2]) expect((out[k] ?? 0) / simpson(z, x, k)).toBeCloseTo(1, 7)
        expect(out[3]).toBeCloseTo(Math.exp(-z * x), 13)
      }),
      { numRuns: 60 },
    )
  })

  test('series and recurrence meet where one hands over to the other', () => {
    for (const x of [1, 1 / 3]) {
      const below = fourNumbers()
      const above = fourNumbers()
      moments((0.6 * (1 - 1e-12)) / x, x, below)
      moments((0.6 * (1 + 1e-12)) / x, x, above)
      for (let k = 0; k < 4; k++) expect((above[k] ?? 0) / (below[k] ?? 1)).toBeCloseTo(1, 11)
    }
  })

  test('without decay they are powers; with a fast one, what was there last', () => {
    const out = fourNumbers()
    moments(0, 0.5, out)
    expect([...out]).toEqual([0.5, 0.125, 0.125 / 3, 1])
    moments(1e9, 1, out)
    for (const k of [0, 1, 2]) expect((out[k] ?? 0) * 1e9).toBeCloseTo(1, 6)
    expect(out[3]).toBe(0)
  })
})
