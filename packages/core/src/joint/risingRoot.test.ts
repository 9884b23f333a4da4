import { describe, expect, test } from 'vitest'
import { risingRoot, risingRootAbove } from './risingRoot.ts'

function counted(f: (x: number) => number): { readonly f: (x: number) => number; readonly calls: () => number } {
  let calls = 0
  return {
    f: (x) => {
      calls++
      return f(x)
    },
    calls: () => calls,
  }
}

describe('risingRoot', () => {
  test.each<[string, (x: number) => number, number, number, number]>([
    ['a line', (x) => 3 * x - 6, -10, 50, 2],
    ['a steep exponential', (x) => Math.expm1(x - 1), -20, 100, 1],
    ['a flat power', (x) => (x - 0.3) ** 7, -1, 4, 0.3],
    ['a jump', (x) => (x < 0.7 ? -1 : 2), 0, 3, 0.7],
    ['infinite ends', (x) => (x < 1 ? -Infinity : x > 2 ? Infinity : x - 1.25), 0, 50, 1.25],
    ['a root at the low end', (x) => x - 4, 4, 9, 4],
    ['a root at the high end', (x) => x - 9, 4, 9, 9],
  ])('%s', (_name, f, low, high, want) => {
    const watched = counted(f)
    expect(Math.abs(risingRoot(watched.f, low, high) - want)).toBeLessThan(_name === 'a flat power' ? 1e-2 : 1e-14 * (1 + want))
    expect(watched.calls()).toBeLessThan(200)
  })

  test('a smooth function needs few calls', () => {
    const watched = counted((x) => x ** 3 - 2)
    expect(risingRoot(watched.f, 0, 10)).toBeCloseTo(Math.cbrt(2), 14)
    expect(watched.calls()).toBeLessThan(40)
  })
})

describe('risingRootAbove', () => {
  test('finds a bracket by doubling, and the first crossing within it', () => {
    expect(risingRootAbove((x) => x - 1234.5, 0, 1)).toBeCloseTo(1234.5, 10)
    expect(risingRootAbove((x) => x - 10, 10, 1)).toBeCloseTo(10, 14)
    expect(risingRootAbove((x) => x - 11, 10, 1)).toBeCloseTo(11, 14)
  })

  test('null where nothing rises to 0', () => {
    expect(risingRootAbove(() => -1, 0, 1)).toBeNull()
    expect(risingRootAbove(() => Number.NaN, 0, 1)).toBeNull()
  })
})

describe('how many calls', () => {
  test.each<[string, (x: number) => number, number, number, number]>([
    ['a line is met at once', (x) => 3 * x - 6, -10, 50, 3],
    ['a bent curve', (x) => x ** 3 - 2, 0, 10, 28],
    ['a curve bent the other way', (x) => Math.sqrt(x) - 2, 0, 100, 16],
    ['a steep exponential', (x) => Math.expm1(x - 1), -20, 100, 24],
  ])('%s', (_name, f, low, high, most) => {
    const watched = counted(f)
    risingRoot(watched.f, low, high)
    expect(watched.calls()).toBeLessThanOrEqual(most)
  })
})
