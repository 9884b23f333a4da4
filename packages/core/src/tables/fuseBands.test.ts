import { describe, expect, test } from 'vitest'
import { type FuseSeries, fuseBands } from './fuseBands.ts'

const all: readonly (readonly [string, FuseSeries])[] = Object.entries(fuseBands)

describe.each(all)('fuse band %s as data', (_name, series) => {
  const multiples = series.band.map((point) => point.multiple)
  const shortest = series.band.map((point) => point.shortestS ?? Infinity)
  const longest = series.band.map((point) => point.longestS ?? Infinity)

  test('ratings and multiples rise, none twice', () => {
    for (const list of [series.ratingsA, multiples]) {
      expect([...new Set(list)].sort((a, b) => a - b)).toEqual(list)
      expect(Math.min(...list)).toBeGreaterThan(0)
    }
  })

  test('a larger current never takes longer, and the shortest time lies below the longest', () => {
    for (let i = 0; i < multiples.length; i += 1) {
      expect(shortest[i]).toBeLessThan(longest[i] ?? 0)
      if (i > 0) {
        expect(shortest[i]).toBeLessThan(shortest[i - 1] ?? 0)
        expect(longest[i]).toBeLessThan(longest[i - 1] ?? 0)
      }
    }
  })

  test('the first point need not open: a fuse carries a little more than its rating', () => {
    expect(series.band[0]?.longestS).toBeNull()
    expect(multiples[0]).toBeGreaterThan(1)
  })

  test('intervals are in order and everything recalled says so', () => {
    expect(series.ambientFactorPerK.low).toBeLessThan(series.ambientFactorPerK.high)
    const { low, nominal, high } = series.continuousLoadShare
    expect(low).toBeLessThan(nominal)
    expect(nominal).toBeLessThan(high)
    expect(series.provenance.status).toBe('from memory')
  })

  test('no fuse falls to nothing where wire insulation still holds: at 150 °C more than 0.7 of the rating is left', () => {
    expect(1 - series.ambientFactorPerK.high * (150 - series.referenceC)).toBeGreaterThan(0.7)
  })
})
