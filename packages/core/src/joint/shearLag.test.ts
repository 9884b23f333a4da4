import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { DomainError } from '../errors/index.ts'
import { shearLagPeakRatio } from './shearLagPeakRatio.ts'
import { shearLagPerMm } from './shearLagPerMm.ts'

function parameterOf(run: () => unknown): string {
  try {
    run()
  } catch (error) {
    if (error instanceof DomainError) return error.parameter
    throw error
  }
  return 'nothing refused'
}

const wire = Object.freeze({ modulusMPa: 110000, areaMm2: 2 })

describe('shearLagPeakRatio', () => {
  test('hand cases: x coth x at x = 1 and 0; a stiff or short lap bears evenly', () => {
    expect(shearLagPeakRatio({ lengthMm: 4, perMm: 0.5 })).toBeCloseTo(1 / Math.tanh(1), 15)
    expect(shearLagPeakRatio({ lengthMm: 4, perMm: 0 })).toBe(1)
    expect(shearLagPeakRatio({ lengthMm: 1e-200, perMm: 1e-200 })).toBe(1)
    expect(shearLagPeakRatio({ lengthMm: 1e-150, perMm: 1e-150 })).toBe(1)
  })

  test('a long lap: the peak grows as half its length, so the ends never bear less than 1/(2 m) of mean', () => {
    expect(shearLagPeakRatio({ lengthMm: 1000, perMm: 2 })).toBe(1000)
    const lengthMm = fc.double({ min: 0.01, max: 100, noNaN: true })
    fc.assert(
      fc.property(lengthMm, fc.double({ min: 0.01, max: 10, noNaN: true }), (L, m) => {
        const ratio = shearLagPeakRatio({ lengthMm: L, perMm: m })
        const peakOverPull = (l: number): number => shearLagPeakRatio({ lengthMm: l, perMm: m }) / l
        return ratio >= 1 && ratio >= (L * m) / 2 && peakOverPull(2 * L) <= peakOverPull(L) * (1 + 1e-14)
      }),
    )
  })

  test('refuses by name', () => {
    expect(parameterOf(() => shearLagPeakRatio({ lengthMm: 0, perMm: 1 }))).toBe('lengthMm')
    expect(parameterOf(() => shearLagPeakRatio({ lengthMm: 1, perMm: -1 }))).toBe('perMm')
    expect(parameterOf(() => shearLagPeakRatio({ lengthMm: Number.NaN, perMm: 1 }))).toBe('lengthMm')
    expect(parameterOf(() => shearLagPeakRatio({ lengthMm: 1e300, perMm: 1e300 }))).toBe('perMm')
  })
})

describe('shearLagPerMm', () => {
  const lap = { shearModulusMPa: 11000, bondWidthMm: 2, layerMm: 0.1, conductors: [wire, { modulusMPa: 55000, areaMm2: 8 }] } as const

  test('hand case: G w/s = 220000 MPa over E A of 220000 and 440000 N', () => {
    expect(shearLagPerMm(lap)).toBeCloseTo(Math.sqrt(1.5), 14)
  })

  test.each([
    ['shearModulusMPa', { shearModulusMPa: 0 }],
    ['shearModulusMPa', { shearModulusMPa: 1e300, layerMm: 1e-300 }],
    ['bondWidthMm', { bondWidthMm: 0 }],
    ['layerMm', { layerMm: 0 }],
    ['conductors.0.modulusMPa', { conductors: [{ ...wire, modulusMPa: 0 }, wire] }],
    ['conductors.1.areaMm2', { conductors: [wire, { ...wire, areaMm2: Number.NaN }] }],
    ['conductors.1.modulusMPa', { conductors: [wire] }],
    ['conductors.0.modulusMPa', { conductors: undefined }],
  ])('refuses %s: %j', (parameter, change) => {
    expect(parameterOf(() => shearLagPerMm({ ...lap, ...change } as never))).toBe(parameter)
  })
})
