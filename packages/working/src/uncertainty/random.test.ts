import { describe, expect, test } from 'vitest'
import { chiSquared, normalsOf, type Stream, streamOf } from './random.ts'

/** A stream of given numbers; it fails if asked for more. */
function told(...values: readonly number[]): Stream {
  let at = 0
  return () => {
    const value = values[at++]
    if (value === undefined) throw new Error('no more numbers')
    return value
  }
}

/** sfc32 in arbitrary-precision integers. */
function wholes(low: bigint, high: bigint, count: number): readonly number[] {
  const word = (value: bigint): bigint => BigInt.asUintN(32, value)
  let [a, b, c, counter] = [word(low), word(high), 0x9e3779b9n, 1n]
  return Array.from({ length: 12 + count }, () => {
    const sum = word(a + b + counter)
    counter = word(counter + 1n)
    a = b ^ (b >> 9n)
    b = word(c + (c << 3n))
    c = word(((c << 21n) | (c >> 11n)) + sum)
    return Number(sum) / 2 ** 32
  }).slice(12)
}

describe('the stream', () => {
  test.each([0, 1, 20_261_130, 2 ** 32 - 1, 2 ** 32 + 5, Number.MAX_SAFE_INTEGER])('of seed %s is sfc32 of its two halves', (seed) => {
    const next = streamOf(seed)
    const wanted = wholes(BigInt(seed) % 2n ** 32n, BigInt(seed) / 2n ** 32n, 40)
    expect(Array.from({ length: 40 }, () => next())).toEqual(wanted)
  })
})

describe('normal draws', () => {
  test('come in pairs, by the polar method', () => {
    // x = 0.5 and y = -0.25.
    const scale = Math.sqrt((-2 * Math.log(0.3125)) / 0.3125)
    const next = normalsOf(told(0.75, 0.375, 0.375, 0.75))
    expect([next(), next()]).toEqual([0.5 * scale, -0.25 * scale])
    expect([next(), next()]).toEqual([-0.25 * scale, 0.5 * scale])
  })

  test('no pair on or outside the circle, nor at its middle', () => {
    const next = normalsOf(told(0.95, 0.95, 0, 0.5, 0.5, 0.5, 0.75, 0.5))
    expect(next()).toBe(0.5 * Math.sqrt((-2 * Math.log(0.25)) / 0.25))
    expect(next()).toBe(0)
  })

  test('mean 0, variance 1, and as many beyond two as there are', () => {
    const next = normalsOf(streamOf(7))
    const draws = Array.from({ length: 40_000 }, () => next())
    const mean = draws.reduce((sum, one) => sum + one, 0) / draws.length
    // Five standard errors.
    expect(Math.abs(mean)).toBeLessThan(5 / 200)
    expect(Math.abs(draws.reduce((sum, one) => sum + one * one, 0) / draws.length - 1)).toBeLessThan((5 * Math.SQRT2) / 200)
    expect(Math.abs(draws.filter((one) => Math.abs(one) > 2).length / draws.length - 0.0455)).toBeLessThan((5 * Math.sqrt(0.0455)) / 200)
  })
})

describe('chi-squared draws', () => {
  test.each([2.5, 6, 40])('of %s degrees of freedom: their mean and twice it as their variance', (freedom) => {
    const stream = streamOf(11)
    const normals = normalsOf(stream)
    const count = 20_000
    const draws = Array.from({ length: count }, () => chiSquared(freedom, stream, normals))
    const mean = draws.reduce((sum, one) => sum + one, 0) / count
    const variance = draws.reduce((sum, one) => sum + (one - mean) ** 2, 0) / count
    expect(Math.abs(mean - freedom)).toBeLessThan(5 * Math.sqrt((2 * freedom) / count))
    // The fourth moment of chi-squared gives the standard error of the variance.
    expect(Math.abs(variance - 2 * freedom)).toBeLessThan(5 * Math.sqrt((8 * freedom * (freedom + 6)) / count))
  })

  test('a normal draw is taken where its number lies below the bound, else the next', () => {
    const d = 6 / 2 - 1 / 3
    const v = (x: number): number => (1 + x / Math.sqrt(9 * d)) ** 3
    const bound = (x: number): number => Math.exp(0.5 * x * x + d - d * v(x) + d * Math.log(v(x)))
    const share = (x: number, by: number): number => 1 - by * bound(x)
    expect(chiSquared(6, told(share(2, 0.999)), told(2))).toBeCloseTo(2 * d * v(2), 12)
    expect(chiSquared(6, told(share(2, 1.001), share(-1, 0.999)), told(2, -1))).toBeCloseTo(2 * d * v(-1), 12)
    // A normal draw so low that the cube is not positive is rejected without drawing a number.
    expect(chiSquared(6, told(0.5), told(-20, 0))).toBeCloseTo(2 * d, 12)
  })
})
