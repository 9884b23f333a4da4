import { expect, test } from 'vitest'
import { bundleCurrentA } from './bundleCurrent.ts'
import { bundleTemperatureC } from './bundleTemperature.ts'
import { steadyCurrentA } from './steadyCurrent.ts'

const wire = { areaMm2: 1, insulationThicknessMm: 0.6, insulationConductivityWPerMK: 0.17, ambientC: 30 }
const bundle = { ...wire, loadedWires: 7, bundleOutsideMm: 7 }

test('inverse: the current found brings the middle of the bundle to the limit, by both correlations', () => {
  for (const correlation of ['churchill-chu', 'morgan'] as const) {
    const currentA = bundleCurrentA({ ...bundle, correlation, limitC: 70 })
    expect(bundleTemperatureC({ ...bundle, correlation, currentA: currentA ?? Number.NaN }).centreC).toBeCloseTo(70, 6)
  }
})

test('each wire of a bundle carries less than one wire alone, and less the more there are', () => {
  const alone = steadyCurrentA({ ...wire, limitC: 70 }) ?? 0
  const seven = bundleCurrentA({ ...bundle, limitC: 70 }) ?? 0
  const nineteen = bundleCurrentA({ ...bundle, loadedWires: 19, bundleOutsideMm: 12, limitC: 70 }) ?? 0
  expect(seven).toBeLessThan(alone)
  expect(nineteen).toBeLessThan(seven)
})

test('null where the air is at the limit; a bundle too thin and a limit past melting are refused', () => {
  expect(bundleCurrentA({ ...bundle, limitC: 30 })).toBeNull()
  expect(() => bundleCurrentA({ ...bundle, bundleOutsideMm: 4, limitC: 70 })).toThrow(/bundleOutsideMm/)
  expect(() => bundleCurrentA({ ...bundle, limitC: 2000 })).toThrow(/limitC/)
})
