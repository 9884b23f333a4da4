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

  test('a move that works only at the end, and one that works nowhere', () => {
    expect(nearestPosition(1, { low: 1, high: 100 }, (value) => value >= 100)).toBe(100)
    expect(nearestPosition(1, { low: 0.5, high: 100 }, () => false)).toBeNull()
    expect(nearestPosition(50, { low: 60, high: 55 }, () => true)).toBeLessThan(50.1)
    expect(nearestPosition(5, { low: 5, high: 5 }, () => true)).toBeNull()
  })
})

describe('the places that are tried', () => {
  /** The values tried by the search. */
  const tried = (from: number, low: number, high: number, serves: (value: number) => boolean = () => false): readonly number[] => {
    const values: number[] = []
    nearestPosition(from, { low, high }, (value) => {
      values.push(value)
      return serves(value)
    })
    return values
  }

  test('four on the way, by equal ratios; by equal steps where an end is not above 0', () => {
    expect(tried(1, 1, 16)).toEqual([2, 4, 8, 16])
    expect(tried(16, 1, 16)).toEqual([8, 4, 2, 1])
    expect(tried(0, 0, 20)).toEqual([5, 10, 15, 20])
    expect(tried(8, 0, 8)).toEqual([6, 4, 2, 0])
    expect(tried(8, -8, 8)).toEqual([4, 0, -4, -8])
    expect(tried(-8, -8, 8)).toEqual([-4, 0, 4, 8])
    expect(tried(-16, -16, -8)).toEqual([-14, -12, -10, -8])
    expect(tried(4, 4, 4)).toEqual([])
  })

  test('the last position is exactly the end', () => {
    for (const [from, high] of [
      [0.49, 0.7],
      [3, 420],
      [0.3, 0.9],
      [1.1, 13.7],
    ] as const) {
      expect(tried(from, from, high).at(-1)).toBe(high)
    }
  })

  test('each halves what is left, and a thousandth is near enough: eleven for a ratio of three', () => {
    for (const threshold of [2.5, 20, 90]) {
      const values = tried(1, 1, 81, (value) => value >= threshold)
      const onTheWay = values.findIndex((value) => value >= threshold) + 1
      expect(values.length - onTheWay).toBeGreaterThanOrEqual(threshold > 81 ? 0 : 10)
      expect(values.length - onTheWay).toBeLessThanOrEqual(12)
    }
  })

  test('towards 0, where no share is near enough, it still ends', () => {
    const found = nearestPosition(-10, { low: -10, high: 20 }, (value) => value > 0) ?? Number.NaN
    expect(found).toBeGreaterThan(0)
    expect(found).toBeLessThan(1e-12)
    expect(tried(-10, -10, 20, (value) => value > 0).length).toBeLessThan(70)
  })

  test('of two positions without a ratio the lower one', () => {
    expect(nearestPosition(-10, { low: -40, high: 20 }, (value) => value <= -30 || value >= 5)).toBeCloseTo(-30, 1)
  })
})

test('a move’s size is the logarithm of its ratio, infinite without a ratio', () => {
  expect(moveOf(2, 4)).toBeCloseTo(Math.LN2, 12)
  expect(moveOf(4, 2)).toBeCloseTo(Math.LN2, 12)
  for (const [from, to] of [
    [null, 4],
    [0, 4],
    [4, 0],
    [-1, 2],
    ['SAC305', 'Sn42Bi58'],
    [4, 'none'],
    ['2', 4],
    [4, '2'],
    ['2', '4'],
  ] as const) {
    expect(moveOf(from, to)).toBe(Infinity)
  }
})
