import { expect, test } from 'vitest'
import { commonWallMm, commonWalls, iso6722 } from './index.ts'

test('a bound between two spans belongs to the thinner wire; the last span is open', () => {
  expect([0.1, 1, 1.0001, 2.5, 2.5001, 6, 6.0001, 1e6].map(commonWallMm)).toEqual([0.6, 0.6, 0.7, 0.7, 0.8, 0.8, 1, 1])
})

test('spans and walls rise', () => {
  const spans = commonWalls.rows.map(({ largestAreaMm2 }) => largestAreaMm2 ?? Infinity)
  expect(spans).toEqual(spans.toSorted((a, b) => a - b))
  const walls = commonWalls.rows.map(({ wallMm }) => wallMm)
  expect(walls).toEqual(walls.toSorted((a, b) => a - b))
})

test('ISO 6722-1 (from memory): between the thin and the thick wall of road-vehicle cable of 0.5 to 10 mm2, or within 0.15 mm of the thick one', () => {
  for (const { areaMm2, conductorMaximumMm, thinWallMaximumMm, thickWallMaximumMm } of iso6722.rows) {
    if (thinWallMaximumMm === null || thickWallMaximumMm === null || areaMm2 > 10) continue
    const wall = (outsideMm: number) => (outsideMm - conductorMaximumMm) / 2
    expect(commonWallMm(areaMm2)).toBeGreaterThan(wall(thinWallMaximumMm))
    expect(commonWallMm(areaMm2)).toBeLessThanOrEqual(wall(thickWallMaximumMm) + 0.15)
  }
})
