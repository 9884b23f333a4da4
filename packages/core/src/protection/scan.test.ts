import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { scan } from './scan.ts'

const at = fc.double({ min: 0, max: 1, noNaN: true })

describe('scan', () => {
  test('a parabola: its vertex and both roots', () => {
    const { leastAt, least, below } = scan((x) => (x - 0.37) ** 2 - 0.04)
    expect(leastAt).toBeCloseTo(0.37, 5)
    expect(least).toBeCloseTo(-0.04, 10)
    expect(below).toHaveLength(1)
    expect(below[0]?.[0]).toBeCloseTo(0.17, 10)
    expect(below[0]?.[1]).toBeCloseTo(0.57, 10)
  })

  test('a dip narrower than the samples is found', () => {
    const { below } = scan((x) => Math.abs(x - 0.61) - 1e-3)
    expect(below[0]?.[0]).toBeCloseTo(0.609, 8)
    expect(below[0]?.[1]).toBeCloseTo(0.611, 8)
  })

  test('a function that never falls below 0 has no stretch, one that touches 0 neither', () => {
    expect(scan((x) => 1 + x).below).toEqual([])
    expect(scan((x) => (x - 0.5) ** 2).below).toEqual([])
  })

  test('one that lies below throughout is one stretch, its least at the right end', () => {
    expect(scan((x) => -x - 1)).toEqual({ leastAt: 1, least: -2, below: [[0, 1]] })
  })

  test('an infinite start value is crossed like any other', () => {
    const { below } = scan((x) => (x < 0.1 ? Infinity : 0.3 - x))
    expect(below).toHaveLength(1)
    expect(below[0]?.[0]).toBeCloseTo(0.3, 10)
  })

  test('bent one way: the least is never above any sample, and stretches end where the sign turns', () => {
    fc.assert(
      fc.property(at, fc.double({ min: -0.5, max: 0.5, noNaN: true }), fc.double({ min: 0.1, max: 10, noNaN: true }), (vertex, depth, steepness) => {
        const h = (x: number) => steepness * (x - vertex) ** 2 - depth
        const { least, below } = scan(h)
        for (let k = 0; k <= 50; k += 1) {
          expect(least).toBeLessThanOrEqual(h(k / 50) + 1e-9)
          const inside = below.some(([from, to]) => k / 50 >= from && k / 50 <= to)
          if (Math.abs(h(k / 50)) > 1e-9) expect(inside).toBe(h(k / 50) < 0)
        }
      }),
    )
  })
})
