import { describe, expect, test } from 'vitest'
import { type FuseSeries, fuseBands } from './fuseBands.ts'

const all: readonly (readonly [string, FuseSeries])[] = Object.entries(fuseBands)

const bands = all.flatMap(([name, { band, ownBands = [] }]: readonly [string, FuseSeries]) => [
  [name, band] as const,
  ...ownBands.map((own) => [`${name}, ${own.ratingsA.join(' and ')} A`, own.band] as const),
])

describe.each(bands)('fuse band %s as data', (_name, band) => {
  const multiples = band.map((point) => point.multiple)
  const shortest = band.map((point) => point.shortestS ?? Infinity)
  const longest = band.map((point) => point.longestS ?? Infinity)

  test('multiples rise, none twice', () => {
    expect([...new Set(multiples)].sort((a, b) => a - b)).toEqual(multiples)
    expect(Math.min(...multiples)).toBeGreaterThan(0)
  })

  test('a larger current never takes longer, and the shortest time lies below the longest', () => {
    for (let i = 0; i < multiples.length; i += 1) {
      expect(shortest[i]).toBeLessThan(longest[i] ?? 0)
      if (i > 0) {
        expect(shortest[i]).toBeLessThanOrEqual(shortest[i - 1] ?? 0)
        expect(longest[i]).toBeLessThan(longest[i - 1] ?? 0)
      }
    }
  })

  test('the first point need not open: a fuse carries its rating at least; from some point on it is sure to open', () => {
    expect(band[0]?.longestS).toBeNull()
    expect(multiples[0]).toBeGreaterThanOrEqual(1)
    expect(band.at(-1)?.longestS).not.toBeNull()
  })
})

describe.each(all)('fuse series %s as data', (_name, series) => {
  test('ratings rise, and those with a band of their own are among them', () => {
    expect([...new Set(series.ratingsA)].sort((a, b) => a - b)).toEqual(series.ratingsA)
    for (const { ratingsA } of series.ownBands ?? []) expect(series.ratingsA).toEqual(expect.arrayContaining([...ratingsA]))
  })

  test('intervals are in order and what is recalled or transcribed is never called published', () => {
    expect(series.ambientFactorPerK.low).toBeLessThan(series.ambientFactorPerK.high)
    const { low, nominal, high } = series.continuousLoadShare
    expect(low).toBeLessThan(nominal)
    expect(nominal).toBeLessThan(high)
    expect(series.provenance.status).toBe('from memory')
  })

  test('no fuse falls to nothing in the air that the loss is used in: at 150 °C more than 0.4 of the rating is left', () => {
    expect(1 - series.ambientFactorPerK.high * (150 - series.referenceC)).toBeGreaterThan(0.4)
  })
})

test("makers' sheets of large blades: 40 A carries 34 A at 65 °C and 22 A at 125 °C, within the spread of the loss", () => {
  const { ambientFactorPerK } = fuseBands['ISO 8820-3 type E']
  for (const [ambientC, carriesA] of [
    [65, 34],
    [85, 30],
    [110, 25],
    [125, 22],
  ] as const) {
    const lossPerK = (1 - carriesA / 40) / (ambientC - 20)
    expect(lossPerK).toBeGreaterThan(ambientFactorPerK.low)
    expect(lossPerK).toBeLessThan(ambientFactorPerK.high + 1e-4)
  }
})
