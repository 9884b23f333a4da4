import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { NoSteadyStateError } from '../errors/index.ts'
import { type Correlation, heatFlowWPerM, insulationResistanceMKPerW } from '../heat/index.ts'
import { conductorTemperatureBandC, steadyCurrentBandA } from './bands.ts'
import { conductorTemperatureC } from './conductorTemperature.ts'
import { steadyCurrentA } from './steadyCurrent.ts'
import type { WireHeat } from './wire.ts'
import { wireState } from './wireState.ts'

const base = Object.freeze({ areaMm2: 1.5, insulationThicknessMm: 0.7, insulationConductivityWPerMK: 0.17, ambientC: 30 })

/** Any plausible wire: thin to thick, bare to thickly insulated, cold to hot, still to windy, shade to sun, both correlations. */
const anyWire: fc.Arbitrary<WireHeat> = fc
  .record({
    areaMm2: fc.double({ min: 0.05, max: 95, noNaN: true }),
    insulationThicknessMm: fc.double({ min: 0, max: 2, noNaN: true }),
    insulationConductivityWPerMK: fc.double({ min: 0.1, max: 0.4, noNaN: true }),
    emissivity: fc.double({ min: 0, max: 1, noNaN: true }),
    ambientC: fc.double({ min: -40, max: 125, noNaN: true }),
    airSpeedMPerS: fc.oneof(fc.constant(0), fc.double({ min: 0.3, max: 5, noNaN: true })),
    pressurePa: fc.double({ min: 20000, max: 110000, noNaN: true }),
    solarAbsorbedWPerM: fc.oneof(fc.constant(0), fc.double({ min: 0, max: 5, noNaN: true })),
    correlation: fc.constantFrom<Correlation>('churchill-chu', 'morgan'),
  })
  .map((wire) => Object.freeze({ ...wire, solarAbsorbedWPerM: wire.solarAbsorbedWPerM * 0.1 * Math.sqrt(wire.areaMm2) }))
const rise = fc.double({ min: 1, max: 150, noNaN: true })

describe('conductorTemperatureC and steadyCurrentA', () => {
  test('the current for a temperature makes that temperature', () => {
    fc.assert(
      fc.property(anyWire, rise, (wire, riseK) => {
        const limitC = wire.ambientC + riseK
        const currentA = steadyCurrentA({ ...wire, limitC })
        if (currentA === null) return
        const back = conductorTemperatureC({ ...wire, currentA })
        // At a jump of Morgan's law one current may have two temperatures, or a temperature no current.
        expect(Math.abs(back - limitC)).toBeLessThan(wire.correlation === 'morgan' ? 0.01 * riseK : 1e-6)
      }),
      { numRuns: 500 },
    )
  })

  test('the answer balances, term by term, as the heat room counts them', () => {
    fc.assert(
      fc.property(anyWire, fc.double({ min: 0.2, max: 1.2, noNaN: true }), (wire, share) => {
        const near = steadyCurrentA({ ...wire, solarAbsorbedWPerM: 0, limitC: wire.ambientC + 60 }) as number
        const state = wireState({ ...wire, currentA: share * near })
        const outside = Math.sqrt((4 * wire.areaMm2) / Math.PI) + 2 * wire.insulationThicknessMm
        const inside = insulationResistanceMKPerW({
          conductorDiameterMm: outside - 2 * wire.insulationThicknessMm,
          outsideDiameterMm: outside,
          conductivityWPerMK: wire.insulationConductivityWPerMK,
        })
        const flow = heatFlowWPerM({ emissivity: 0.9, ...wire, surfaceC: state.surfaceC, diameterMm: outside })
        const made = (share * near) ** 2 * state.resistanceOhmPerM
        const jump = wire.correlation === 'morgan' && Math.abs(state.residual) > 1e-8
        expect(Math.abs(made - flow.totalWPerM)).toBeLessThan(jump ? 0.01 * made + 0.01 : 1e-8)
        expect(Math.abs(state.conductorC - state.surfaceC - flow.totalWPerM * inside)).toBeLessThan(1e-7)
        expect(state.convectionWPerM).toBeCloseTo(flow.convectionWPerM, 9)
        expect(state.radiationWPerM).toBeCloseTo(flow.radiationWPerM, 9)
      }),
      { numRuns: 500 },
    )
  })

  test('more current is hotter; hotter air, thinner air, more sun and a longer lay allow less', () => {
    fc.assert(
      fc.property(anyWire, rise, (wire, riseK) => {
        const smooth = { ...wire, correlation: 'churchill-chu' as const }
        const limitC = wire.ambientC + riseK
        const A = (more: Partial<WireHeat>) => steadyCurrentA({ ...smooth, ...more, limitC }) ?? 0
        const plain = A({})
        expect(A({ ambientC: wire.ambientC + 0.5 })).toBeLessThanOrEqual(plain)
        expect(A({ pressurePa: (wire.pressurePa ?? 1) * 0.9 })).toBeLessThanOrEqual(plain)
        expect(A({ solarAbsorbedWPerM: (wire.solarAbsorbedWPerM ?? 0) + 0.1 })).toBeLessThanOrEqual(plain)
        expect(A({ layFactor: 1.05 })).toBeCloseTo(plain / Math.sqrt(1.05), 9)
        expect(conductorTemperatureC({ ...smooth, currentA: plain * 1.01 + 0.01 })).toBeGreaterThan(conductorTemperatureC({ ...smooth, currentA: plain }))
      }),
    )
  })

  test('no current: the air, or above it in the sun', () => {
    expect(conductorTemperatureC({ ...base, currentA: 0 })).toBe(30)
    const sunny = wireState({ ...base, currentA: 0, solarAbsorbedWPerM: 3 })
    expect(sunny.conductorC).toBeGreaterThan(35)
    expect(sunny.conductorC).toBeCloseTo(sunny.surfaceC, 8)
    expect(sunny.convectionWPerM + sunny.radiationWPerM).toBeCloseTo(3, 9)
  })

  test('no current is allowed at or below the air, nor where the sun alone reaches the limit', () => {
    expect(steadyCurrentA({ ...base, limitC: 30 })).toBeNull()
    expect(steadyCurrentA({ ...base, limitC: 29 })).toBeNull()
    expect(steadyCurrentA({ ...base, limitC: 31, solarAbsorbedWPerM: 20 })).toBeNull()
    expect(steadyCurrentBandA({ ...base, limitC: 30 })).toBeNull()
    expect(steadyCurrentA({ ...base, limitC: 30 + 1e-9 })).toBeGreaterThan(0)
  })

  test('a film in place of convection and radiation: both ways by hand, sun included', () => {
    const wire = { ...base, conductorDiameterMm: 1.6, filmWPerM2K: 12, solarAbsorbedWPerM: 2 }
    const film = 1 / (12 * Math.PI * 0.003)
    const wall = Math.log(3 / 1.6) / (2 * Math.PI * 0.17)
    // Sun at the surface warms by 2 x film; the wire's own heat crosses both.
    const limitC = 80
    const heat = (limitC - 30 - 2 * film) / (film + wall)
    const ohm = (1.7241e-8 / 1.5e-6) * (1 + 0.00393 * 60)
    const currentA = steadyCurrentA({ ...wire, limitC }) as number
    expect(currentA).toBeCloseTo(Math.sqrt(heat / ohm), 9)
    expect(conductorTemperatureC({ ...wire, currentA })).toBeCloseTo(80, 9)
  })

  test('the band holds both correlations, whatever was asked for; with a film it is one number', () => {
    const band = conductorTemperatureBandC({ ...base, currentA: 20, correlation: 'morgan' })
    expect(band.models.map(({ correlation }) => correlation)).toEqual(['churchill-chu', 'morgan'])
    expect(band.high).toBe(conductorTemperatureC({ ...base, currentA: 20, correlation: 'churchill-chu' }))
    expect(band.low).toBe(conductorTemperatureC({ ...base, currentA: 20, correlation: 'morgan' }))
    const current = steadyCurrentBandA({ ...base, limitC: 70 })
    expect(current?.low).toBe(steadyCurrentA({ ...base, limitC: 70 }))
    expect(current?.high).toBeGreaterThan((current?.low ?? 0) * 1.04)
    const film = conductorTemperatureBandC({ ...base, currentA: 20, filmWPerM2K: 15 })
    expect(film.low).toBe(film.high)
  })

  test('hook-up wire in still air: the piecewise law is 10 to 14 % of the rise cooler, as thermal comparisons give', () => {
    for (const areaMm2 of [0.05, 0.35, 1, 6]) {
      const wire = { ...base, areaMm2, insulationThicknessMm: 0.2 + 0.3 * Math.sqrt(areaMm2) }
      const currentA = steadyCurrentA({ ...wire, limitC: 70 }) as number
      const { low, high } = conductorTemperatureBandC({ ...wire, currentA })
      expect((high - low) / (high - 30)).toBeGreaterThan(0.08)
      expect((high - low) / (high - 30)).toBeLessThan(0.16)
    }
  })
})

describe('no steady state', () => {
  const potted = { ...base, areaMm2: 0.05, conductorDiameterMm: 0.25, insulationThicknessMm: 10 }
  const wall = Math.log(20.25 / 0.25) / (2 * Math.PI * 0.17)
  const runawayA = 1 / Math.sqrt(wall * (1.7241e-8 / 0.05e-6) * 0.00393)
  const caught = (wire: WireHeat & { currentA: number; ceilingC?: number }): NoSteadyStateError => {
    try {
      conductorTemperatureC(wire)
    } catch (error) {
      if (error instanceof NoSteadyStateError) return error
    }
    throw new Error('it settled')
  }

  test('runaway from I^2 R20 alpha times the wall = 1 on, just below it the ceiling', () => {
    const error = caught({ ...potted, currentA: runawayA * (1 + 1e-9) })
    expect(error).toMatchObject({ cause: 'runaway', code: 'runaway', ceilingC: 1083 })
    expect(error.largestCurrentA).toBe(steadyCurrentA({ ...potted, limitC: 1083 }))
    expect(caught({ ...potted, currentA: runawayA * (1 - 1e-6) }).cause).toBe('ceiling')
  })

  test('a film counts in runaway: it comes at 1/sqrt((wall + film) R20 alpha)', () => {
    const film = 1 / (10 * Math.PI * 0.0029)
    const thin = { ...base, areaMm2: 1, conductorDiameterMm: 1.3, insulationThicknessMm: 0.8, filmWPerM2K: 10 }
    const total = film + Math.log(2.9 / 1.3) / (2 * Math.PI * 0.17)
    const edge = 1 / Math.sqrt(total * 0.017241 * 0.00393)
    expect(caught({ ...thin, currentA: edge * 1.000001 }).cause).toBe('runaway')
    expect(caught({ ...thin, currentA: edge * 0.999 }).cause).toBe('ceiling')
  })

  test('a bare wire never runs away: it melts', () => {
    const bare = { ...base, insulationThicknessMm: 0 }
    const error = caught({ ...bare, currentA: 1e6 })
    expect(error).toMatchObject({ cause: 'ceiling', ceilingC: 1083 })
    expect(conductorTemperatureC({ ...bare, currentA: error.largestCurrentA })).toBeCloseTo(1083, 5)
    expect(caught({ ...bare, currentA: error.largestCurrentA * 1.0001 }).cause).toBe('ceiling')
  })

  test('a ceiling of the caller: its own current reaches it, more does not', () => {
    fc.assert(
      fc.property(anyWire, rise, (wire, riseK) => {
        const ceilingC = wire.ambientC + riseK
        const smooth = { ...wire, correlation: 'churchill-chu' as const }
        const largest = steadyCurrentA({ ...smooth, limitC: ceilingC })
        if (largest === null) return
        expect(conductorTemperatureC({ ...smooth, currentA: largest, ceilingC })).toBeCloseTo(ceilingC, 6)
        expect(caught({ ...smooth, currentA: largest * 1.001 + 1e-4, ceilingC })).toMatchObject({ cause: 'ceiling', largestCurrentA: largest, ceilingC })
      }),
    )
  })

  test('air or sun past the ceiling: no current at all reaches it from below', () => {
    expect(caught({ ...base, currentA: 0, ceilingC: 25 })).toMatchObject({ cause: 'ceiling', largestCurrentA: 0 })
    expect(caught({ ...base, currentA: 0, ceilingC: 31, solarAbsorbedWPerM: 20 })).toMatchObject({ cause: 'ceiling', largestCurrentA: 0 })
    expect(conductorTemperatureC({ ...base, currentA: 0, ceilingC: 30 })).toBe(30)
  })

  test('each metal has its own ceiling', () => {
    for (const [material, meltingC] of [
      ['aluminium-1350', 657.2],
      ['tin', 231.928],
    ] as const) {
      expect(Math.abs(caught({ ...base, material, currentA: 1e5, insulationThicknessMm: 0 }).ceilingC - meltingC)).toBeLessThan(1)
      expect(() => conductorTemperatureC({ ...base, material, currentA: 1, ceilingC: meltingC + 5 })).toThrow(
        expect.objectContaining({ name: 'DomainError', parameter: 'ceilingC' }),
      )
    }
  })
})

test('ECSS-Q-ST-30-11C table C-3: AWG 24 in a vacuum carries 3.4 A by radiation; air too thin for convection is refused, not promised 5.5 A', () => {
  const awg24 = { areaMm2: 0.205, conductorDiameterMm: 0.511, insulationThicknessMm: 0.145, insulationConductivityWPerMK: 0.2, emissivity: 0.75, ambientC: 70 }
  for (const pressurePa of [1e-9, 1, 999]) {
    expect(() => steadyCurrentA({ ...awg24, limitC: 150, pressurePa })).toThrow(expect.objectContaining({ name: 'DomainError', parameter: 'pressurePa' }))
  }
  expect(steadyCurrentA({ ...awg24, limitC: 150, pressurePa: 1000 })).toBeGreaterThan(3.4)
})
