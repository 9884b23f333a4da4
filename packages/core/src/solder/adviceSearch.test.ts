import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { moveOf, nearestPosition } from './adviceSearch.ts'

describe('the nearest position that serves', () => {
  test('a threshold upwards or downwards is found to a thousandth, on the serving side', () => {
    fc.assert(
      fc.property(fc.double({ min: 2, max: 90, noNaN: true }), fc.boolean(), (threshold, upwards) => {
        const serves = (value: number): boolean => (upwards ? value >= threshold : value <= threshold)
        const from = upwards ? 1 : 100
        const found = nearestPosition(from, { low: 1, high: 100 }, serves) ?? Number.NaN
        expect(serves(found)).toBe(true)
        expect(Math.abs(found - threshold)).toBeLessThanOrEqual(1.001e-3 * threshold)
      }),
    )
  })

  test('of two ways the shorter by ratio', () => {
    const serves = (value: number): boolean => value <= 4 || value >= 30
    expect(nearestPosition(10, { low: 1, high: 100 }, serves)).toBeCloseTo(4, 1)
    const other = (value: number): boolean => value <= 2 || value >= 12
    expect(nearestPosition(10, { low: 1, high: 100 }, other)).toBeCloseTo(12, 1)
  })

  test('a place between two ends that both fail', () => {
    const found = nearestPosition(1, { low: 1, high: 16 }, (value) => value > 3.5 && value < 5) ?? Number.NaN
    expect(found).toBeCloseTo(3.5, 1)
  })

  test('from nothing, and below it', () => {
    expect(nearestPosition(0, { low: 0, high: 20 }, (value) => value >= 7)).toBeCloseTo(7, 1)
    expect(nearestPosition(-10, { low: -40, high: 20 }, (value) => value <= -30)).toBeCloseTo(-30, 1)
    expect(nearestPosition(-10, { low: -40, high: 20 }, (value) => value >= 5)).toBeCloseTo(5, 1)
  })

  test('the end itself, and nowhere', () => {
    expect(nearestPosition(1, { low: 1, high: 100 }, (value) => value >= 100)).toBe(100)
    expect(nearestPosition(1, { low: 0.5, high: 100 }, () => false)).toBeNull()
    expect(nearestPosition(50, { low: 60, high: 55 }, () => true)).toBeLessThan(50.1)
    expect(nearestPosition(5, { low: 5, high: 5 }, () => true)).toBeNull()
  })
})

test('a move is the size of the logarithm, endless where there is none', () => {
  expect(moveOf(2, 4)).toBeCloseTo(Math.LN2, 12)
  expect(moveOf(4, 2)).toBeCloseTo(Math.LN2, 12)
  for (const [from, to] of [
    [null, 4],
    [0, 4],
    [4, 0],
    [-1, 2],
    ['SAC305', 'Sn42Bi58'],
    [4, 'none'],
  ] as const) {
    expect(moveOf(from, to)).toBe(Infinity)
  }
})
