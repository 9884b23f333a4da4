import { describe, expect, test } from 'vitest'
import type { Correlation } from '../heat/index.ts'
import { airProperties, morganBands, rayleighNumber } from '../heat/index.ts'
import { steadyCurrentA } from './steadyCurrent.ts'
import { wireState } from './wireState.ts'

const base = Object.freeze({ areaMm2: 1.5, insulationThicknessMm: 0.7, insulationConductivityWPerMK: 0.17, ambientC: 30 })

describe('wireState', () => {
  test('at most 6 evaluations on average, start included, and a residual of 1e-9, over the stated grid', () => {
    let sum = 0
    let count = 0
    let worst = 0
    let most = 0
    for (const areaMm2 of [0.05, 0.14, 0.35, 0.75, 1.5, 4, 10, 25, 50, 95]) {
      for (const insulationThicknessMm of [0, 0.2, 0.5, 0.8, 1.2, 2]) {
        for (const ambientC of [-40, 0, 23, 60, 90, 125]) {
          for (const rise of [1, 3, 10, 25, 50, 80, 110, 150]) {
            for (const correlation of ['churchill-chu', 'morgan'] as const satisfies readonly Correlation[]) {
              const wire = { areaMm2, insulationThicknessMm, insulationConductivityWPerMK: 0.17, ambientC, correlation }
              const state = wireState({ ...wire, currentA: steadyCurrentA({ ...wire, limitC: ambientC + rise }) as number })
              sum += state.evaluations
              count += 1
              most = Math.max(most, state.evaluations)
              worst = Math.max(worst, Math.abs(state.residual))
            }
          }
        }
      }
    }
    expect(count).toBe(5760)
    expect(sum / count).toBeLessThanOrEqual(4)
    expect(most).toBeLessThanOrEqual(10)
    expect(worst).toBeLessThanOrEqual(1e-9)
  })

  test('nothing is extrapolated in a common wire; each reason by its own case', () => {
    expect(wireState({ ...base, currentA: 20, airSpeedMPerS: 1 }).extrapolated).toEqual([])
    for (const currentA of [0, 0.5, 20]) expect(wireState({ ...base, currentA, correlation: 'morgan' }).extrapolated).toEqual([])
    expect(wireState({ ...base, currentA: 20, airSpeedMPerS: 0.001 }).extrapolated).toEqual(['reynolds-prandtl'])
    expect(wireState({ ...base, currentA: 80 }).extrapolated).toEqual(['resistivity'])
    expect(wireState({ ...base, currentA: 1, ambientC: -70 }).extrapolated).toEqual(['resistivity'])
    const hair = { ...base, areaMm2: 1e-6, insulationThicknessMm: 0, currentA: 1e-5, correlation: 'morgan' as const, pressurePa: 1000 }
    expect(wireState(hair).extrapolated).toEqual(['rayleigh'])
    expect(wireState({ ...base, areaMm2: 1e8, currentA: 1e7 }).extrapolated).toEqual(['rayleigh'])
  })

  test('with a film convection is what the film carries, radiation is 0 and no correlation is stretched', () => {
    const state = wireState({ ...base, currentA: 20, filmWPerM2K: 12, airSpeedMPerS: 0.0001, solarAbsorbedWPerM: 1 })
    expect(state.radiationWPerM).toBe(0)
    expect(state.convectionWPerM).toBeCloseTo(400 * state.resistanceOhmPerM + 1, 9)
    expect(state.extrapolated).toEqual([])
    expect(Math.abs(state.residual)).toBeLessThan(1e-9)
  })

  test('Reynolds and Rayleigh numbers are those of the surface', () => {
    const state = wireState({ ...base, currentA: 20, airSpeedMPerS: 1 })
    const outsideM = (Math.sqrt(6 / Math.PI) + 1.4) / 1000
    expect(state.rayleigh).toBe(rayleighNumber(state.surfaceC, 30, outsideM, 101325))
    expect(state.reynolds).toBeGreaterThan(100)
    // Air properties at the film temperature.
    const air = airProperties((state.surfaceC + 30) / 2)
    expect(state.reynolds).toBeCloseTo((air.densityKgPerM3 * outsideM) / air.viscosityPaS, 9)
    expect(wireState({ ...base, currentA: 20 }).reynolds).toBe(0)
  })
})

describe('the jumps of the piecewise law', () => {
  const bare = { ...base, insulationThicknessMm: 0, emissivity: 0, correlation: 'morgan' as const }
  /** Area of the bare wire whose Rayleigh number is at the edge at 60 °C. */
  const areaAt = (edge: number) => {
    let [low, high] = [1e-9, 1e9]
    while (high / low > 1 + 1e-15) {
      const middle = Math.sqrt(low * high)
      if (rayleighNumber(60, 30, Math.sqrt((4 * middle) / Math.PI) / 1000, 101325) < edge) low = middle
      else high = middle
    }
    return low
  }
  const edges = morganBands.map(({ below }) => below).filter((edge) => edge < Infinity)

  test.each(edges)('at Rayleigh %s every current near the jump is answered, in order, and the first of two roots is taken', (edge) => {
    const wire = { ...bare, areaMm2: areaAt(edge) }
    const before = steadyCurrentA({ ...wire, limitC: 60 - 1e-9 }) as number
    const after = steadyCurrentA({ ...wire, limitC: 60 + 1e-9 }) as number
    const span = Math.abs(after - before)
    expect(span / before).toBeGreaterThan(1e-4)
    const drops = after < before
    for (const share of [-0.5, 0.02, 0.5, 0.98, 1.5]) {
      const state = wireState({ ...wire, currentA: Math.min(before, after) + share * span })
      if (share < 0) expect(state.conductorC).toBeLessThan(60)
      else if (share > 1) expect(state.conductorC).toBeGreaterThan(60)
      else if (drops) {
        // A cooler and a hotter temperature both balance; the cooler one is reached first.
        expect(state.conductorC).toBeLessThan(60 + 1e-6)
        expect(Math.abs(state.residual)).toBeLessThan(1e-9)
      } else {
        // At the jump no temperature balances: the heat exceeds the loss on one side only.
        expect(state.conductorC).toBeCloseTo(60, 6)
      }
    }
  })
})
