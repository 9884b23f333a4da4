import fc from 'fast-check'
import { expect, test } from 'vitest'
import { bundleTemperatureC } from './bundleTemperature.ts'
import { conductorTemperatureC } from './conductorTemperature.ts'
import { effectiveAmbientC } from './effectiveAmbient.ts'

const wire = Object.freeze({ areaMm2: 1, insulationThicknessMm: 0.6, insulationConductivityWPerMK: 0.17, ambientC: 30 })

test('in that air one wire alone is as hot as in its bundle, whatever the bundle, the film, the sun and the correlation', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 30 }),
      fc.double({ min: 1, max: 12, noNaN: true }),
      fc.double({ min: 0.2, max: 10, noNaN: true }),
      fc.record(
        { filmWPerM2K: fc.constant(14), solarAbsorbedWPerM: fc.double({ min: 0, max: 2, noNaN: true }), airSpeedMPerS: fc.constant(0.5) },
        { requiredKeys: [] },
      ),
      fc.constantFrom('churchill-chu' as const, 'morgan' as const),
      (loadedWires, wider, amps, more, correlation) => {
        const bundleOutsideMm = 2.4 * Math.sqrt(loadedWires / 0.8) * wider
        const it = { ...wire, ...more, correlation, loadedWires, bundleOutsideMm, currentA: amps / Math.sqrt(loadedWires) }
        const ambientC = effectiveAmbientC(it)
        expect(ambientC).toBeGreaterThanOrEqual(30)
        // Morgan's law jumps, and at a jump no air temperature fits exactly.
        expect(Math.abs(conductorTemperatureC({ ...it, ambientC }) - bundleTemperatureC(it).centreC)).toBeLessThan(correlation === 'morgan' ? 0.5 : 1e-6)
      },
    ),
  )
})

test('no current, no warming: the air outside', () => {
  expect(effectiveAmbientC({ ...wire, loadedWires: 7, bundleOutsideMm: 7, currentA: 0 })).toBe(30)
})

test('a wide bundle of two loaded wires warms its joint: it never comes out colder than the air', () => {
  expect(effectiveAmbientC({ ...wire, loadedWires: 2, bundleOutsideMm: 40, currentA: 15 })).toBeGreaterThan(40)
})
