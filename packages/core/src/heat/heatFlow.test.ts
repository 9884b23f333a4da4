import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { DomainError } from '../errors/index.ts'
import { airProperties } from './airProperties.ts'
import { forcedConvectionNusselt } from './forcedConvectionNusselt.ts'
import { heatFlowWPerM } from './heatFlow.ts'
import { naturalConvectionNusselt } from './naturalConvectionNusselt.ts'
import { surfaceFlowWPerM } from './surfaceFlow.ts'

const base = Object.freeze({ surfaceC: 60, ambientC: 20, diameterMm: 2.4, emissivity: 0.9 })

describe('heatFlowWPerM', () => {
  test('hand case, 2.4 mm at 60 in air of 20 C: film 40 C, each term from its own formula', () => {
    const flow = heatFlowWPerM({ ...base, airSpeedMPerS: 1 })
    const air = airProperties(40)
    const nu = air.viscosityPaS / air.densityKgPerM3
    const Ra = (9.80665 * air.expansionPerK * 40 * 0.0024 ** 3 * air.prandtl) / nu ** 2
    const Re = 0.0024 / nu
    const k = air.conductivityWPerMK
    expect(flow.naturalWPerM).toBeCloseTo(naturalConvectionNusselt({ rayleigh: Ra, prandtl: air.prandtl }) * k * Math.PI * 40, 12)
    expect(flow.forcedWPerM).toBeCloseTo(forcedConvectionNusselt({ reynolds: Re, prandtl: air.prandtl }) * k * Math.PI * 40, 12)
    expect(flow.radiationWPerM).toBeCloseTo(0.9 * 5.670374419e-8 * Math.PI * 0.0024 * (333.15 ** 4 - 293.15 ** 4), 12)
    expect(flow.convectionWPerM).toBe(flow.forcedWPerM)
  })

  test('at the ambient temperature nothing flows; sunshine alone is a negative total', () => {
    const none = heatFlowWPerM({ ...base, surfaceC: 20, airSpeedMPerS: 2, solarAbsorbedWPerM: 2.5 })
    expect(none).toEqual({ naturalWPerM: 0, forcedWPerM: 0, convectionWPerM: 0, radiationWPerM: 0, totalWPerM: -2.5 })
  })

  test('a cooler surface draws heat: every flow is negative, and the larger by size counts', () => {
    const cold = heatFlowWPerM({ ...base, surfaceC: -10, airSpeedMPerS: 0.5 })
    expect(cold.naturalWPerM).toBeLessThan(0)
    expect(cold.forcedWPerM).toBeLessThan(0)
    expect(cold.radiationWPerM).toBeLessThan(0)
    expect(cold.convectionWPerM).toBe(Math.min(cold.naturalWPerM, cold.forcedWPerM))
  })

  test('a breath of air below Re Pr 0.2 counts as no stream', () => {
    expect(heatFlowWPerM({ ...base, airSpeedMPerS: 1e-3 }).forcedWPerM).toBe(0)
  })

  test('swapping surface and ambient turns every sign round', () => {
    fc.assert(
      fc.property(fc.double({ min: -60, max: 300, noNaN: true }), fc.double({ min: -60, max: 300, noNaN: true }), (surfaceC, ambientC) => {
        const there = heatFlowWPerM({ ...base, surfaceC, ambientC, airSpeedMPerS: 0.3 })
        const back = heatFlowWPerM({ ...base, surfaceC: ambientC, ambientC: surfaceC, airSpeedMPerS: 0.3 })
        expect(there.totalWPerM).toBeCloseTo(-back.totalWPerM, 10)
      }),
    )
  })

  test('a hotter surface sheds more, and the solver form gives the same total', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 21, max: 300, noNaN: true }),
        fc.double({ min: 0.3, max: 20, noNaN: true }),
        fc.double({ min: 0, max: 3, noNaN: true }),
        fc.boolean(),
        (surfaceC, diameterMm, airSpeedMPerS, morgan) => {
          const input = { ...base, surfaceC, diameterMm, airSpeedMPerS, correlation: morgan ? ('morgan' as const) : ('churchill-chu' as const) }
          const flow = heatFlowWPerM(input)
          expect(flow.totalWPerM).toBeCloseTo(surfaceFlowWPerM(surfaceC, 20, diameterMm / 1000, 0.9, airSpeedMPerS, 101325, morgan), 10)
          expect(heatFlowWPerM({ ...input, surfaceC: surfaceC * 1.05 }).totalWPerM).toBeGreaterThan(flow.totalWPerM)
        },
      ),
    )
  })

  test('refuses each parameter by name', () => {
    const wrong = [
      ['surfaceC', -173.16],
      ['ambientC', 1627],
      ['diameterMm', 0],
      ['emissivity', 1.01],
      ['emissivity', -0.01],
      ['airSpeedMPerS', -1],
      ['pressurePa', 0],
      ['solarAbsorbedWPerM', Infinity],
      ['diameterMm', 1e200],
    ] as const
    for (const [parameter, value] of wrong) {
      expect(() => heatFlowWPerM({ ...base, [parameter]: value })).toThrow(expect.objectContaining({ name: 'DomainError', parameter }))
      expect(() => heatFlowWPerM({ ...base, [parameter]: Number.NaN })).toThrow(expect.objectContaining({ parameter, code: 'not-a-number' }))
    }
  })
})

describe('surfaceFlowWPerM', () => {
  test('no number in, no number out: a DomainError', () => {
    for (const wrong of [Number.NaN, Infinity, -Infinity, -700]) expect(() => surfaceFlowWPerM(wrong, 20, 0.002, 0.9, 1, 101325, false)).toThrow(DomainError)
    expect(() => surfaceFlowWPerM(60, 20, Number.NaN, 0.9, 0, 101325, true)).toThrow(DomainError)
    expect(() => surfaceFlowWPerM(60, 20, 0.002, 0.9, 0, Infinity, true)).toThrow(DomainError)
    expect(() => surfaceFlowWPerM(60, 20, 0.002, 0.9, Number.NaN, 101325, true)).toThrow(DomainError)
  })
})
