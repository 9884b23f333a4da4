import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { fuseBands } from '../tables/index.ts'
import { fuseOpeningS } from './fuseOpening.ts'

const refused = (parameter: string) => expect.objectContaining({ name: 'DomainError', parameter })
const { band, ratingsA } = fuseBands['ISO 8820-3']
const at = (currentA: number, ratedA = 10, ambientFactor = 1) => fuseOpeningS({ ratedA, ambientFactor, band, currentA })

describe('fuseOpeningS', () => {
  test('at each point its own row, for every rating, whatever rounding the multiple went through', () => {
    for (const ratedA of ratingsA) {
      for (const ambientFactor of [1, 0.95, 1.07]) {
        for (const { multiple, shortestS, longestS } of band) {
          expect(at(multiple * ratedA * ambientFactor, ratedA, ambientFactor)).toEqual({ shortestS, longestS })
          expect(at(ratedA * (multiple * ambientFactor), ratedA, ambientFactor)).toEqual({ shortestS, longestS })
        }
      }
    }
  })

  test('below the first point it never opens', () => {
    expect(at(10.99)).toEqual({ shortestS: null, longestS: null })
    expect(at(0)).toEqual({ shortestS: null, longestS: null })
  })

  test('beside a point that may never open it may never open: null within, the other edge goes on', () => {
    const { shortestS, longestS } = at(12)
    expect(longestS).toBeNull()
    expect(shortestS).toBeGreaterThan(0.75)
    expect(shortestS).toBeLessThan(360_000)
    expect(at(13.4999).longestS).toBeNull()
    expect(at(13.5001).longestS).toBeLessThan(600)
  })

  test('by hand: half way between two points on the log of the multiple is half way on the log of the time', () => {
    const { shortestS, longestS } = at(10 * Math.sqrt(2 * 3.5))
    expect(shortestS).toBeCloseTo(Math.sqrt(0.15 * 0.04), 12)
    expect(longestS).toBeCloseTo(Math.sqrt(5 * 0.5), 12)
  })

  test('above the last point its times hold', () => {
    expect(at(60)).toEqual({ shortestS: 0.02, longestS: 0.1 })
    expect(at(1e6)).toEqual({ shortestS: 0.02, longestS: 0.1 })
  })

  test('a null at the upper end of a segment makes that edge null inside it too; a last point that never opens stays so', () => {
    const odd = [
      { multiple: 1.5, shortestS: 10, longestS: 100 },
      { multiple: 2, shortestS: 1, longestS: null },
    ]
    expect(fuseOpeningS({ ratedA: 1, band: odd, currentA: 1.7 }).longestS).toBeNull()
    expect(fuseOpeningS({ ratedA: 1, band: odd, currentA: 9 })).toEqual({ shortestS: 1, longestS: null })
    expect(fuseOpeningS({ ratedA: 1, band: odd, currentA: 1.5 }).longestS).toBe(100)
  })

  test('a warm fuse acts like one of a smaller rating', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 200, noNaN: true }), fc.double({ min: 0.5, max: 1.2, noNaN: true }), (currentA, ambientFactor) => {
        expect(at(currentA, 10, ambientFactor)).toEqual(at(currentA, 10 * ambientFactor))
      }),
    )
  })

  test('a larger current never takes longer, and the shortest time never passes the longest', () => {
    const amps = fc.double({ min: 0, max: 100, noNaN: true })
    fc.assert(
      fc.property(amps, amps, (a, b) => {
        const [less, more] = [at(Math.min(a, b)), at(Math.max(a, b))]
        for (const edge of ['shortestS', 'longestS'] as const) expect(more[edge] ?? Infinity).toBeLessThanOrEqual((less[edge] ?? Infinity) * (1 + 1e-9))
        expect(less.shortestS ?? 0).toBeLessThanOrEqual(less.longestS ?? Infinity)
      }),
    )
  })

  test('each number past its edge is refused by name', () => {
    const good = { ratedA: 10, band, currentA: 20 }
    for (const value of [0, -1, Number.NaN, Infinity]) {
      expect(() => fuseOpeningS({ ...good, ratedA: value })).toThrow(refused('ratedA'))
      expect(() => fuseOpeningS({ ...good, ambientFactor: value })).toThrow(refused('ambientFactor'))
    }
    for (const value of [-1e-9, Number.NaN, Infinity, undefined])
      expect(() => fuseOpeningS({ ...good, currentA: value as number })).toThrow(refused('currentA'))
  })

  test('a band that is missing, empty, falling, or upside down is refused by path', () => {
    const good = { ratedA: 10, currentA: 20 }
    const point = { multiple: 2, shortestS: 0.1, longestS: 5 }
    for (const list of [undefined, [], 'band']) expect(() => fuseOpeningS({ ...good, band: list } as never)).toThrow(refused('band'))
    expect(() => fuseOpeningS({ ...good, band: [point, { ...point, multiple: 2 }] })).toThrow(refused('band.1.multiple'))
    expect(() => fuseOpeningS({ ...good, band: [{ ...point, multiple: 0 }] })).toThrow(refused('band.0.multiple'))
    expect(() => fuseOpeningS({ ...good, band: [{ ...point, shortestS: 0 }] })).toThrow(refused('band.0.shortestS'))
    expect(() => fuseOpeningS({ ...good, band: [{ ...point, longestS: -1 }] })).toThrow(refused('band.0.longestS'))
    expect(() => fuseOpeningS({ ...good, band: [{ ...point, shortestS: 6 }] })).toThrow(refused('band.0.shortestS'))
    expect(() => fuseOpeningS({ ...good, band: [{ ...point, shortestS: null }] })).toThrow(refused('band.0.shortestS'))
    expect(() => fuseOpeningS({ ...good, band: [{ multiple: 2, shortestS: 0.1 }] } as never)).toThrow(refused('band.0.longestS'))
  })
})
