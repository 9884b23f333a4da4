import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { heatFlowWPerM } from '../heat/index.ts'
import { bundleCurrentA } from './bundleCurrent.ts'
import { bundleStates } from './bundleStates.ts'
import { bundleTemperatureC } from './bundleTemperature.ts'
import { conductorTemperatureC } from './conductorTemperature.ts'
import { steadyCurrentA } from './steadyCurrent.ts'

const wire = Object.freeze({ areaMm2: 1, conductorDiameterMm: 1.28, insulationThicknessMm: 0.6, insulationConductivityWPerMK: 0.17, ambientC: 40 })
const seven = Object.freeze({ ...wire, loadedWires: 7, bundleOutsideMm: 7.44 })

describe('bundleTemperatureC', () => {
  test('each case balances: n wires make what the surface sheds, the drop within is that of a round source in the middle', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 10, noNaN: true }),
        fc.integer({ min: 1, max: 40 }),
        fc.double({ min: 0.1, max: 0.4, noNaN: true }),
        fc.double({ min: 0, max: 3, noNaN: true }),
        fc.double({ min: 1, max: 5, noNaN: true }),
        (currentA, loadedWires, bundleConductivityWPerMK, sun, wider) => {
          const outsideMm = 2.48 * Math.sqrt(loadedWires / 0.8) * wider
          const share = Math.min(1, 8 / loadedWires)
          const it = { ...wire, currentA: currentA * share, loadedWires, bundleOutsideMm: outsideMm, bundleConductivityWPerMK, solarAbsorbedWPerM: sun }
          const [given, packed, alone] = bundleStates(it)
          const madeAt = (centreC: number) => (currentA * share) ** 2 * 0.017241 * (1 + 0.00393 * (centreC - 20))
          const shed = (surfaceC: number, diameterMm: number) =>
            heatFlowWPerM({ surfaceC, ambientC: 40, diameterMm, emissivity: 0.9, solarAbsorbedWPerM: sun }).totalWPerM
          expect(given.outsideMm).toBeCloseTo(outsideMm, 9)
          expect(packed.outsideMm).toBeCloseTo(loadedWires === 1 ? 2.48 : 2.48 * Math.sqrt(loadedWires / 0.8), 9)
          for (const { surfaceC, centreC, outsideMm: mm } of [given, packed]) {
            const made = loadedWires * madeAt(centreC)
            expect(Math.abs(shed(surfaceC, mm) - made)).toBeLessThan(1e-7)
            const drop = (made * (0.5 + Math.log(mm / packed.outsideMm))) / (2 * Math.PI * bundleConductivityWPerMK)
            expect(Math.abs(centreC - surfaceC - drop)).toBeLessThan(1e-7)
          }
          expect(alone.centreC).toBeCloseTo(conductorTemperatureC(it), 9)
          expect(bundleTemperatureC(it).centreC).toBe(Math.max(given.centreC, packed.centreC, alone.centreC))
        },
      ),
    )
  })

  test('a bundle is hotter than its wire alone; more wires and a poorer conductor inside are hotter', () => {
    const { centreC } = bundleTemperatureC({ ...seven, currentA: 8 })
    expect(centreC).toBeGreaterThan(conductorTemperatureC({ ...wire, currentA: 8 }) + 15)
    expect(bundleTemperatureC({ ...seven, loadedWires: 6, currentA: 8 }).centreC).toBeLessThan(centreC)
    expect(bundleTemperatureC({ ...seven, bundleConductivityWPerMK: 0.1, currentA: 8 }).centreC).toBeGreaterThan(centreC)
    expect(bundleTemperatureC({ ...seven, bundleConductivityWPerMK: 0.2, currentA: 8 }).centreC).toBe(centreC)
    expect(bundleTemperatureC({ ...seven, currentA: 0 })).toEqual({ centreC: 40, surfaceC: 40 })
  })

  test('other wires never help: a wide bundle is no cooler and allows no more than its loaded wires packed, or one of them alone', () => {
    const thin = { areaMm2: 0.823, insulationThicknessMm: 0.6, insulationConductivityWPerMK: 0.17, ambientC: 40 }
    const wide = { ...thin, loadedWires: 2, bundleOutsideMm: 40 }
    const aloneA = steadyCurrentA({ ...thin, limitC: 70 }) ?? Number.NaN
    const wideA = bundleCurrentA({ ...wide, limitC: 70 }) ?? Number.NaN
    expect(aloneA).toBeCloseTo(13.164, 3)
    expect(wideA).toBeCloseTo(11.006, 3)
    expect(bundleTemperatureC({ ...wide, currentA: aloneA }).centreC).toBeGreaterThan(80)
  })

  test('growing outside: the middle never cools and the current never grows, by both correlations', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 60 }),
        fc.double({ min: 1, max: 60, noNaN: true }),
        fc.double({ min: 1.0001, max: 3, noNaN: true }),
        fc.double({ min: 0.5, max: 12, noNaN: true }),
        fc.constantFrom('churchill-chu' as const, 'morgan' as const),
        (loadedWires, wider, step, currentA, correlation) => {
          const bundleOutsideMm = 2.48 * Math.sqrt(loadedWires / 0.8) * wider
          const near = { ...wire, correlation, loadedWires, bundleOutsideMm, currentA: currentA / Math.sqrt(loadedWires) }
          const far = { ...near, bundleOutsideMm: bundleOutsideMm * step }
          // Morgan's law jumps by up to 0.8 % in Nu.
          const slack = correlation === 'morgan' ? 1.01 : 1 + 1e-9
          expect((bundleTemperatureC(far).centreC - 40) * slack).toBeGreaterThanOrEqual(bundleTemperatureC(near).centreC - 40)
          expect(bundleCurrentA({ ...far, limitC: 105 })).toBeLessThanOrEqual((bundleCurrentA({ ...near, limitC: 105 }) ?? 0) * slack)
        },
      ),
    )
  })

  test('one wire in a bundle of its own outside is that wire or hotter; a bundle below the packing has its source across all of it', () => {
    const one = { ...wire, loadedWires: 1, bundleOutsideMm: 2.48, currentA: 12 }
    expect(bundleTemperatureC(one).centreC).toBeGreaterThanOrEqual(conductorTemperatureC({ ...wire, currentA: 12 }))
    const tight = { ...seven, bundleOutsideMm: 7, currentA: 8 }
    const [given, packed] = bundleStates(tight)
    expect(given).toEqual({ ...packed, name: 'bundle' })
    expect(packed.outsideMm).toBe(7)
  })

  test('without an outside two to four wires have the surface of their hull, (n + pi) D, and more lie packed', () => {
    for (const [loadedWires, ratio] of [
      [1, 1],
      [2, (2 + Math.PI) / Math.PI],
      [3, (3 + Math.PI) / Math.PI],
      [4, (4 + Math.PI) / Math.PI],
      [5, Math.sqrt(5 / 0.8)],
      [19, Math.sqrt(19 / 0.8)],
    ] as const) {
      const [given] = bundleStates({ ...wire, loadedWires, currentA: 3 })
      expect(given.outsideMm).toBeCloseTo(2.48 * ratio, 9)
      expect(bundleTemperatureC({ ...wire, loadedWires, bundleOutsideMm: given.outsideMm, currentA: 3 })).toEqual(
        bundleTemperatureC({ ...wire, loadedWires, currentA: 3 }),
      )
    }
    expect(() => bundleTemperatureC({ ...wire, loadedWires: 1e80, currentA: 0 })).toThrow(expect.objectContaining({ parameter: 'loadedWires' }))
  })

  test('a film acts on the surface: closed form of the wires packed', () => {
    const packedM = 0.00248 * Math.sqrt(7 / 0.8)
    const R = 1 / (12 * Math.PI * packedM)
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
      throw new Error('a steady state was found')
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
