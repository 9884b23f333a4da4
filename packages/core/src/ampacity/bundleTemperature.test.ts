import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { heatFlowWPerM } from '../heat/index.ts'
import { bundleTemperatureC } from './bundleTemperature.ts'
import { conductorTemperatureC } from './conductorTemperature.ts'

const wire = Object.freeze({ areaMm2: 1, conductorDiameterMm: 1.28, insulationThicknessMm: 0.6, insulationConductivityWPerMK: 0.17, ambientC: 40 })
const seven = Object.freeze({ ...wire, loadedWires: 7, bundleOutsideMm: 7.44 })

describe('bundleTemperatureC', () => {
  test('it balances: n wires make what the surface sheds, and the drop within is q/(4 pi k)', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 10, noNaN: true }),
        fc.integer({ min: 1, max: 40 }),
        fc.double({ min: 0.1, max: 0.4, noNaN: true }),
        fc.double({ min: 0, max: 3, noNaN: true }),
        (currentA, loadedWires, bundleConductivityWPerMK, sun) => {
          const bundleOutsideMm = 2.48 * Math.sqrt(loadedWires / 0.7)
          const share = Math.min(1, 8 / loadedWires)
          const it = { ...wire, currentA: currentA * share, loadedWires, bundleOutsideMm, bundleConductivityWPerMK, solarAbsorbedWPerM: sun }
          const { centreC, surfaceC } = bundleTemperatureC(it)
          const made = loadedWires * (currentA * share) ** 2 * 0.017241 * (1 + 0.00393 * (centreC - 20))
          const flow = heatFlowWPerM({ surfaceC, ambientC: 40, diameterMm: bundleOutsideMm, emissivity: 0.9, solarAbsorbedWPerM: sun })
          expect(Math.abs(flow.totalWPerM - made)).toBeLessThan(1e-8)
          expect(Math.abs(centreC - surfaceC - made / (4 * Math.PI * bundleConductivityWPerMK))).toBeLessThan(1e-8)
        },
      ),
    )
  })

  test('a bundle is hotter than its wire alone; more wires, a thinner bundle and a poorer conductor inside are hotter', () => {
    const { centreC } = bundleTemperatureC({ ...seven, currentA: 8 })
    expect(centreC).toBeGreaterThan(conductorTemperatureC({ ...wire, currentA: 8 }) + 15)
    expect(bundleTemperatureC({ ...seven, loadedWires: 6, currentA: 8 }).centreC).toBeLessThan(centreC)
    expect(bundleTemperatureC({ ...seven, bundleOutsideMm: 9, currentA: 8 }).centreC).toBeLessThan(centreC)
    expect(bundleTemperatureC({ ...seven, bundleConductivityWPerMK: 0.1, currentA: 8 }).centreC).toBeGreaterThan(centreC)
    expect(bundleTemperatureC({ ...seven, bundleConductivityWPerMK: 0.2, currentA: 8 }).centreC).toBe(centreC)
    expect(bundleTemperatureC({ ...seven, currentA: 0 })).toEqual({ centreC: 40, surfaceC: 40 })
  })

  test('a film acts on the surface of the bundle: closed form', () => {
    const R = 1 / (12 * Math.PI * 0.00744)
    const inside = 1 / (4 * Math.PI * 0.2)
    const w = 7 * 36 * 0.017241
    const heat = (w * (1 + 0.00393 * 20)) / (1 - w * 0.00393 * (R + inside))
    const { centreC, surfaceC } = bundleTemperatureC({ ...seven, currentA: 6, filmWPerM2K: 12 })
    expect(surfaceC).toBeCloseTo(40 + heat * R, 9)
    expect(centreC).toBeCloseTo(40 + heat * (R + inside), 9)
  })

  test('the current of no steady state is that of each wire', () => {
    expect(() => bundleTemperatureC({ ...seven, currentA: 200 })).toThrow(expect.objectContaining({ name: 'NoSteadyStateError', cause: 'runaway' }))
    try {
      bundleTemperatureC({ ...seven, currentA: 60 })
      throw new Error('it settled')
    } catch (error) {
      expect(error).toMatchObject({ cause: 'ceiling', ceilingC: 1083 })
      const { largestCurrentA } = error as { readonly largestCurrentA: number }
      expect(bundleTemperatureC({ ...seven, currentA: largestCurrentA }).centreC).toBeCloseTo(1083, 4)
    }
  })

  test('refuses a bundle too thin for its wires, and each parameter by name', () => {
    expect(() => bundleTemperatureC({ ...seven, currentA: 1, bundleOutsideMm: 6.5 })).toThrow(
      expect.objectContaining({ parameter: 'bundleOutsideMm', code: 'contradiction' }),
    )
    // Seven wires of 2.48 mm.
    expect(() => bundleTemperatureC({ ...seven, currentA: 1, bundleOutsideMm: 6.5 })).toThrow('at least 6.561')
    expect(() => bundleTemperatureC({ ...seven, currentA: 1, bundleOutsideMm: 1e34 })).toThrow(
      expect.objectContaining({ parameter: 'bundleOutsideMm', code: 'out-of-range' }),
    )
    expect(bundleTemperatureC({ ...wire, currentA: 1, loadedWires: 1, bundleOutsideMm: 2.48 }).centreC).toBeGreaterThan(40)
    for (const [parameter, value] of [
      ['currentA', -1],
      ['loadedWires', 0],
      ['loadedWires', 1.5],
      ['bundleOutsideMm', 0],
      ['bundleConductivityWPerMK', 0],
      ['currentA', Number.NaN],
      ['bundleOutsideMm', Infinity],
    ] as const) {
      expect(() => bundleTemperatureC({ ...seven, currentA: 1, [parameter]: value })).toThrow(expect.objectContaining({ name: 'DomainError', parameter }))
    }
  })
})
