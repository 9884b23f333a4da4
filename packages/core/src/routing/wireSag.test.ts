import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { standardGravityMPerS2 } from '../heat/index.ts'
import { wireSagMm } from './wireSag.ts'

const positive = fc.double({ min: 1e-3, max: 1e3, noNaN: true })
/** Pull over the weight of the span, within the domain. */
const weights = fc.double({ min: 1.001, max: 1e4, noNaN: true })
const weightN = (spanMm: number, massKgPerM: number) => (massKgPerM * standardGravityMPerS2 * spanMm) / 1000

/** A span of 1 m whose wire weighs 1 N. */
const metre = Object.freeze({ spanMm: 1000, massKgPerM: 1 / standardGravityMPerS2 })
const tie = Object.freeze({ spanMm: 300, massKgPerM: 0.012, pullN: 0.5 })

describe('wireSagMm', () => {
  test('by hand: 1 N of wire over 1 m: pulled by 1 N it sags an eighth of the span, by 5 N a fortieth', () => {
    expect(wireSagMm({ ...metre, pullN: 1 })).toBeCloseTo(125, 10)
    expect(wireSagMm({ ...metre, pullN: 5 })).toBeCloseTo(25, 10)
  })

  test('moments about a tie: half of the weight at a quarter of the span is held by the pull at the sag', () => {
    fc.assert(
      fc.property(positive, positive, weights, (spanMm, massKgPerM, times) => {
        const W = weightN(spanMm, massKgPerM)
        const s = wireSagMm({ spanMm, massKgPerM, pullN: times * W })
        expect(Math.abs((times * W * s) / ((W / 2) * (spanMm / 4)) - 1)).toBeLessThan(1e-13)
      }),
    )
  })

  test('half the span sags a quarter; twice the mass twice; twice the pull half', () => {
    fc.assert(
      fc.property(positive, positive, weights, (spanMm, massKgPerM, times) => {
        const i = { spanMm, massKgPerM, pullN: 2 * times * weightN(spanMm, massKgPerM) }
        const s = wireSagMm(i)
        expect(wireSagMm({ ...i, spanMm: spanMm / 2 }) / s).toBeCloseTo(1 / 4, 13)
        expect(wireSagMm({ ...i, massKgPerM: 2 * massKgPerM }) / s).toBeCloseTo(2, 13)
        expect(wireSagMm({ ...i, pullN: 2 * i.pullN }) / s).toBeCloseTo(1 / 2, 13)
      }),
    )
  })

  test('the true curve a cosh(x/a), a = T/(m g), hangs lower by at most 2.1 %, and flatter by ever less', () => {
    fc.assert(
      fc.property(positive, positive, fc.double({ min: 1.001, max: 100, noNaN: true }), (spanMm, massKgPerM, times) => {
        const aMm = times * spanMm
        // cosh(x) - 1 = 2 sinh(x/2)^2 keeps its digits where the wire is flat.
        const trueMm = 2 * aMm * Math.sinh(spanMm / aMm / 4) ** 2
        const short = 1 - wireSagMm({ spanMm, massKgPerM, pullN: times * weightN(spanMm, massKgPerM) }) / trueMm
        expect(short).toBeGreaterThan(0)
        expect(short).toBeLessThan(0.021 / times ** 2)
      }),
    )
  })

  test('too little pull: the error tells how much is needed, and that much sags an eighth of the span', () => {
    fc.assert(
      fc.property(positive, positive, fc.double({ min: 1e-3, max: 0.999, noNaN: true }), (spanMm, massKgPerM, times) => {
        const given = { spanMm, massKgPerM, pullN: times * weightN(spanMm, massKgPerM) }
        const needed = Number(/^at least (\S+), the weight of massKgPerM over spanMm/.exec(refusal(given).allowed)?.[1])
        expect(wireSagMm({ ...given, pullN: needed })).toBe(spanMm / 8)
        expect(refusal({ ...given, pullN: needed * (1 - 1e-15) }).parameter).toBe('pullN')
      }),
    )
  })

  test.each([
    [{ spanMm: 0 }, 'spanMm'],
    [{ spanMm: Number.NaN }, 'spanMm'],
    [{ massKgPerM: -0.012 }, 'massKgPerM'],
    [{ massKgPerM: Number.POSITIVE_INFINITY }, 'massKgPerM'],
    [{ massKgPerM: 1e308 }, 'massKgPerM'],
    [{ pullN: 0 }, 'pullN'],
    [{ pullN: 0.0353 }, 'pullN'],
    [{ pullN: Number.NEGATIVE_INFINITY }, 'pullN'],
  ])('%o is refused by name', (change, parameter) => {
    expect(refusal({ ...tie, ...change })).toMatchObject({ name: 'DomainError', parameter })
  })
})

/** Parameter and allowed range of the refusal. */
function refusal(i: Parameters<typeof wireSagMm>[0]): { readonly parameter: string; readonly allowed: string } {
  try {
    wireSagMm(i)
  } catch (error) {
    return error as { readonly parameter: string; readonly allowed: string }
  }
  throw new Error(`${JSON.stringify(i)} was accepted`)
}
