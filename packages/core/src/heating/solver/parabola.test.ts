import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { curvature, firstPassing, highest, parabolaAt, startSlope } from './parabola.ts'

const number = fc.integer({ min: -100, max: 100 })

describe('the parabola of a step', () => {
  test('goes through start, a third and the end', () => {
    fc.assert(
      fc.property(number, number, number, (a, b, c) => {
        expect(parabolaAt(a, b, c, 0)).toBe(a)
        expect(parabolaAt(a, b, c, 1 / 3)).toBeCloseTo(b, 9)
        expect(parabolaAt(a, b, c, 1)).toBeCloseTo(c, 9)
        expect(startSlope(a, b, c) + curvature(a, b, c)).toBeCloseTo(c - a, 9)
      }),
    )
  })

  test('its highest value is no lower than any within, and is reached', () => {
    fc.assert(
      fc.property(number, number, number, (a, b, c) => {
        const top = highest(a, b, c)
        let seen = Math.max(a, c)
        for (let k = 0; k <= 2000; k++) seen = Math.max(seen, parabolaAt(a, b, c, k / 2000))
        expect(top).toBeGreaterThanOrEqual(seen - 1e-9)
        expect(top).toBeLessThanOrEqual(seen + 1e-3)
      }),
    )
  })

  test('the first passing is the first of many places looked at', () => {
    fc.assert(
      fc.property(number, number, number, number, fc.boolean(), (a, b, c, whole, upwards) => {
        // Off the whole numbers no parabola of theirs just touches it.
        const bound = whole + 0.123
        const sign = upwards ? 1 : -1
        fc.pre(sign * (bound - a) > 0)
        const x = firstPassing(a, b, c, bound, upwards)
        let seen = 2
        for (let k = 1; k <= 3000 && seen === 2; k++) if (sign * (parabolaAt(a, b, c, k / 3000) - bound) >= 0) seen = k / 3000
        // A crown between two places looked at may just touch.
        if (seen <= 1) expect(Math.abs(x - seen)).toBeLessThan(1 / 2999)
        else if (x <= 1) expect(Math.abs(parabolaAt(a, b, c, x) - bound)).toBeLessThan(1e-2)
        if (x <= 1) expect(parabolaAt(a, b, c, x)).toBeCloseTo(bound, 6)
      }),
    )
  })

  test('on the bound: at once where it goes on, never where it turns back', () => {
    expect(firstPassing(5, 6, 8, 5, true)).toBe(0)
    expect(firstPassing(5, 4, 2, 5, true)).toBe(2)
    expect(firstPassing(5, 4, 2, 5, false)).toBe(0)
    expect(firstPassing(5, 5, 5, 5, true)).toBe(2)
    expect(firstPassing(6, 7, 9, 5, true)).toBe(0)
  })

  test('at its end, and just short of it', () => {
    expect(firstPassing(0, 1 / 3, 1, 1, true)).toBe(1)
    expect(firstPassing(0, 1 / 3, 1, 1 + 1e-9, true)).toBe(2)
    expect(firstPassing(0, 1 / 3, 1, 0.25, true)).toBeCloseTo(0.25, 12)
    expect(firstPassing(0, -1 / 3, -1, -0.25, false)).toBeCloseTo(0.25, 12)
  })

  test('hardly below the bound, it dips and comes back', () => {
    // x (2 x - 1): back at a half.
    const dip = (below: number) => firstPassing(-below, -1 / 9, 1, 0, true)
    for (const below of [5e-324, 1e-300, 1e-17]) expect(dip(below)).toBeCloseTo(0.5, 12)
    expect(dip(1e-6)).toBeCloseTo(0.5, 5)
    expect(firstPassing(5e-324, 1 / 9, -1, 0, false)).toBeCloseTo(0.5, 12)
  })

  test('a crown that passes between two ends below', () => {
    // 4 x (1 - x): 0, 8/9, 0; passes 0.75 at a quarter.
    expect(firstPassing(0, 8 / 9, 0, 0.75, true)).toBeCloseTo(0.25, 12)
    expect(firstPassing(0, 8 / 9, 0, 1.01, true)).toBe(2)
    expect(highest(0, 8 / 9, 0)).toBeCloseTo(1, 12)
    // A crown before the start or after the end passes nothing.
    expect(firstPassing(0, -1, -4, 0.01, true)).toBe(2)
    expect(firstPassing(-1, -4 / 9, 0, 0.2, true)).toBe(2)
  })
})
