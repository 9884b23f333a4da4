import { DomainError, UnknownEntryError } from '@strandwise/core/errors'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { propagate } from './propagate.ts'
import type { Uncertain } from './uncertain.ts'

const size = fc.double({ min: 1e-3, max: 1e3, noNaN: true })

test('a straight line: variances add with their slopes, shares add up to 1', () => {
  fc.assert(
    fc.property(size, size, size, size, (a, b, ua, ub) => {
      const got = propagate((x) => a * x.p - b * x.q, Object.freeze({ p: { value: 2, standardUncertainty: ua }, q: { value: 3, standardUncertainty: ub } }))
      const u = Math.hypot(a * ua, b * ub)
      expect(got.value).toBeCloseTo(2 * a - 3 * b, 8)
      expect(got.standardUncertainty / u).toBeCloseTo(1, 8)
      expect(got.shares.p + got.shares.q).toBeCloseTo(1, 12)
      expect(got.shares.p).toBeCloseTo((a * ua) ** 2 / u ** 2, 8)
      expect((got.high - got.low) / (2 * u)).toBeCloseTo(1.959963984540054, 7)
      expect(got.coverage).toBe(0.95)
    }),
  )
})

test('a power law: relative uncertainties add with their exponents', () => {
  fc.assert(
    fc.property(size, size, fc.double({ min: 1e-5, max: 0.05, noNaN: true }), (x, y, share) => {
      const got = propagate(({ p, q }) => p ** 2 / Math.sqrt(q), {
        p: { value: x, standardUncertainty: share * x },
        q: { value: y, standardUncertainty: share * y },
      })
      expect(got.standardUncertainty / Math.abs(got.value) / (share * Math.hypot(2, 0.5))).toBeCloseTo(1, 7)
    }),
  )
})

test('shapes: half-width over sqrt 3, sqrt 6, sqrt 2; low and high are rectangular', () => {
  const of = (x: Uncertain) => propagate((i) => i.x, { x })
  expect(of({ value: 5, halfWidth: 1, distribution: 'rectangular' }).standardUncertainty).toBeCloseTo(1 / Math.sqrt(3), 10)
  expect(of({ value: 5, halfWidth: 1, distribution: 'triangular' }).standardUncertainty).toBeCloseTo(1 / Math.sqrt(6), 10)
  expect(of({ value: 5, halfWidth: 1, distribution: 'u-shaped' }).standardUncertainty).toBeCloseTo(1 / Math.sqrt(2), 10)
  const bounds = of({ low: 4, high: 6 })
  expect([bounds.value, bounds.standardUncertainty]).toEqual([5, of({ value: 5, halfWidth: 1, distribution: 'rectangular' }).standardUncertainty])
})

describe('correlation', () => {
  const pair = { a: { value: 10, standardUncertainty: 2 }, b: { value: 20, standardUncertainty: 1 } } as const
  const sum = (coefficient: number, method: 'linear' | 'monte-carlo' = 'linear') =>
    propagate(({ a, b }) => a + b, pair, { method, correlations: [['a', 'b', coefficient]], draws: 40_000 })

  test('coefficients of 1 and -1 add and subtract uncertainties', () => {
    expect(sum(1).standardUncertainty).toBeCloseTo(3, 8)
    expect(sum(-1).standardUncertainty).toBeCloseTo(1, 8)
    expect(sum(0).standardUncertainty).toBeCloseTo(Math.sqrt(5), 8)
  })

  test('each share holds half of the cross term', () => {
    const { shares } = sum(0.5)
    expect(shares.a).toBeCloseTo((4 + 1) / 7, 8)
    expect(shares.b).toBeCloseTo((1 + 1) / 7, 8)
  })

  test('by draws: the same uncertainty and shares, within their noise', () => {
    for (const coefficient of [-0.9, -0.4, 0.5, 0.95]) {
      expect(sum(coefficient, 'monte-carlo').standardUncertainty / sum(coefficient).standardUncertainty).toBeCloseTo(1, 1.5)
      expect(Math.abs(sum(coefficient, 'monte-carlo').shares.a - sum(coefficient).shares.a)).toBeLessThan(0.05)
    }
  })

  test('refused: outside -1 to 1, with itself, with a stranger, coefficients that exclude each other', () => {
    for (const bad of [1.01, -1.01, Number.NaN]) expect(() => sum(bad)).toThrow('options.correlations.0.2')
    expect(() => propagate(({ a }) => a, pair, { correlations: [['a', 'a', 0.5]] })).toThrow(DomainError)
    expect(() => propagate(({ a }) => a, pair, { correlations: [['a', 'c' as 'b', 0.5]] })).toThrow(UnknownEntryError)
    const three = { a: pair.a, b: pair.b, c: pair.b }
    const impossible = [
      ['a', 'b', 0.9],
      ['b', 'c', 0.9],
      ['a', 'c', -0.9],
    ] as const
    expect(() => propagate(({ a }) => a, three, { correlations: impossible })).toThrow('options.correlations')
  })
})

test('what is certain adds nothing; where nothing is uncertain the interval is the value', () => {
  const got = propagate(({ a, b }) => a * b, { a: { value: 3, standardUncertainty: 0 }, b: { low: 7, high: 7 } })
  expect(got).toEqual({ value: 21, standardUncertainty: 0, low: 21, high: 21, coverage: 0.95, shares: { a: 0, b: 0 }, degreesOfFreedom: null })
  const part = propagate(({ a, b }) => a * b, { a: { value: 3, standardUncertainty: 0 }, b: { low: 6, high: 8 } })
  expect(part.shares).toEqual({ a: 0, b: 1 })
})

test('at the edge of a domain the slope is taken from the inside; where neither side is allowed the refusal comes through', () => {
  const squareRoot = (least: number) => (x: { readonly a: number }) => {
    if (x.a < least) throw new DomainError('a', x.a, `at least ${least}`)
    return x.a ** 2
  }
  expect(propagate(squareRoot(2), { a: { value: 2, standardUncertainty: 0.01 } }).standardUncertainty).toBeCloseTo(0.04, 8)
  const narrow = (x: { readonly a: number }) => {
    if (x.a !== 2) throw new DomainError('a', x.a, '2')
    return x.a
  }
  expect(() => propagate(narrow, { a: { value: 2, standardUncertainty: 0.01 } })).toThrow('"a" is')
})

test('refused: options and inputs outside their domain, a model without a number', () => {
  const inputs = { a: { value: 1, standardUncertainty: 0.1 } }
  const same = ({ a }: { readonly a: number }) => a
  for (const coverage of [0, 1, -1, 2, Number.NaN]) expect(() => propagate(same, inputs, { coverage })).toThrow('options.coverage')
  for (const draws of [99, 10_000_001, 1000.5, Number.NaN, Number.POSITIVE_INFINITY]) expect(() => propagate(same, inputs, { draws })).toThrow('options.draws')
  for (const seed of [-1, 0.5, Number.NaN]) expect(() => propagate(same, inputs, { seed })).toThrow('options.seed')
  expect(() => propagate(same, inputs, { method: 'guess' as 'linear' })).toThrow('options.method')
  expect(() => propagate(same, { a: { value: Number.NaN, standardUncertainty: 1 } })).toThrow('inputs.a.value')
  expect(() => propagate(same, { a: { value: 1, standardUncertainty: -1 } })).toThrow('inputs.a.standardUncertainty')
  expect(() => propagate(same, { a: { value: 1, standardUncertainty: 1, degreesOfFreedom: 0 } })).toThrow('inputs.a.degreesOfFreedom')
  expect(() => propagate(same, { a: { value: 1, halfWidth: Number.POSITIVE_INFINITY, distribution: 'rectangular' } })).toThrow('inputs.a.halfWidth')
  expect(() => propagate(same, { a: { value: 1, halfWidth: 1, distribution: 'round' as 'rectangular' } })).toThrow('inputs.a.distribution')
  expect(() => propagate(same, { a: { low: 2, high: 1 } })).toThrow('inputs.a.high')
  for (const nothing of [undefined, null]) {
    const call = () => propagate(same, { a: nothing as unknown as Uncertain })
    expect(call).toThrow(expect.objectContaining({ parameter: 'inputs.a', code: 'missing' }))
  }
  expect(() => propagate(() => Number.NaN, inputs)).toThrow('"fn" is NaN')
})
