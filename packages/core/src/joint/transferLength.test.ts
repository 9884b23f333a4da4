import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { DomainError } from '../errors/index.ts'
import { interfaceConductanceSPerM } from './interfaceConductance.ts'
import { lapDefaults } from './lapDefaults.ts'
import { transferLengthMm } from './transferLength.ts'

function parameterOf(run: () => unknown): string {
  try {
    run()
  } catch (error) {
    if (error instanceof DomainError) return error.parameter
    throw error
  }
  return 'nothing refused'
}

const pair = Object.freeze([0.0172, 0.0172] as const)
const positive = fc.double({ min: 1e-6, max: 1e6, noNaN: true })

describe('transferLengthMm', () => {
  test('hand case: g 50 S/m, 1 and 1 ohm/m: a tenth of a metre', () => {
    expect(transferLengthMm({ conductorsOhmPerM: [1, 1], interfaceSPerM: 50 })).toBe(100)
    expect(transferLengthMm({ conductorsOhmPerM: [2, 0], interfaceSPerM: 50 })).toBe(100)
  })

  test('falls with the root of the interface, and does not overflow with it', () => {
    fc.assert(
      fc.property(positive, positive, positive, (r1, r2, g) => {
        const one = transferLengthMm({ conductorsOhmPerM: [r1, r2], interfaceSPerM: g })
        return Math.abs(transferLengthMm({ conductorsOhmPerM: [r2, r1], interfaceSPerM: 4 * g }) / (one / 2) - 1) < 1e-14
      }),
    )
    expect(transferLengthMm({ conductorsOhmPerM: [1e200, 1e200], interfaceSPerM: 0.5e200 })).toBeCloseTo(1e-197, 205)
    expect(transferLengthMm({ conductorsOhmPerM: [1e-200, 1e-200], interfaceSPerM: 0.5e-200 }) / 1e203).toBeCloseTo(1, 12)
  })

  test('where the product of interface and conductors leaves the doubles, its root does not', () => {
    expect(transferLengthMm({ conductorsOhmPerM: [1e-200, 0], interfaceSPerM: 1e-110 }) / 1e158).toBeCloseTo(1, 12)
    expect(transferLengthMm({ conductorsOhmPerM: [0, 1e200], interfaceSPerM: 1e120 }) / 1e-157).toBeCloseTo(1, 12)
    expect(parameterOf(() => transferLengthMm({ conductorsOhmPerM: [1.7e308, 1.7e308], interfaceSPerM: 1 }))).toBe('conductorsOhmPerM')
  })

  test.each([
    ['conductorsOhmPerM', { conductorsOhmPerM: undefined }],
    ['conductorsOhmPerM', { conductorsOhmPerM: null }],
    ['conductorsOhmPerM', { conductorsOhmPerM: [1, 1, 1] }],
    ['conductorsOhmPerM', { conductorsOhmPerM: { length: 2, 0: 1, 1: 1 } }],
    ['conductorsOhmPerM', { conductorsOhmPerM: Float64Array.of(1, 1) }],
    ['conductorsOhmPerM.0', { conductorsOhmPerM: ['1', 1] }],
    ['conductorsOhmPerM.0', { conductorsOhmPerM: [-1, 3] }],
    ['conductorsOhmPerM.1', { conductorsOhmPerM: [1, 2n] }],
    ['conductorsOhmPerM.1', { conductorsOhmPerM: [3, -1] }],
    ['conductorsOhmPerM.1', { conductorsOhmPerM: [1, Number.NaN] }],
    ['interfaceSPerM', { interfaceSPerM: '5' }],
    ['interfaceSPerM', { interfaceSPerM: 5n }],
    ['interfaceSPerM', { interfaceSPerM: -5 }],
    ['interfaceSPerM', { interfaceSPerM: Number.POSITIVE_INFINITY }],
  ])('refuses %s in %o', (parameter, change) => {
    expect(parameterOf(() => transferLengthMm({ conductorsOhmPerM: pair, interfaceSPerM: 1, ...change } as never))).toBe(parameter)
  })

  test('refuses perfect conductors, whose transfer length has no end, and bad numbers by name', () => {
    expect(parameterOf(() => transferLengthMm({ conductorsOhmPerM: [0, 0], interfaceSPerM: 1 }))).toBe('conductorsOhmPerM')
    expect(parameterOf(() => transferLengthMm({ conductorsOhmPerM: [-1, 1], interfaceSPerM: 1 }))).toBe('conductorsOhmPerM.0')
    expect(parameterOf(() => transferLengthMm({ conductorsOhmPerM: [1, Number.POSITIVE_INFINITY], interfaceSPerM: 1 }))).toBe('conductorsOhmPerM.1')
    expect(parameterOf(() => transferLengthMm({ conductorsOhmPerM: [1, 1], interfaceSPerM: 0 }))).toBe('interfaceSPerM')
    expect(parameterOf(() => transferLengthMm({ conductorsOhmPerM: [1, 1], interfaceSPerM: Number.NaN }))).toBe('interfaceSPerM')
  })
})

describe('interfaceConductanceSPerM', () => {
  test('hand cases: layer alone, film alone, both in series', () => {
    expect(interfaceConductanceSPerM({ bondWidthMm: 1, layerMm: 0.1, layerOhmM: 1.5e-7 }) / (1e-3 / 1.5e-11)).toBeCloseTo(1, 14)
    expect(interfaceConductanceSPerM({ bondWidthMm: 2, layerMm: 0, layerOhmM: 1.5e-7, filmOhmM2: 4e-9 })).toBeCloseTo(5e5, 6)
    const layer = interfaceConductanceSPerM({ bondWidthMm: 2, layerMm: 0.1, layerOhmM: 1.5e-7 })
    const film = interfaceConductanceSPerM({ bondWidthMm: 2, layerMm: 0, layerOhmM: 1.5e-7, filmOhmM2: 4e-11 })
    const both = interfaceConductanceSPerM({ bondWidthMm: 2, layerMm: 0.1, layerOhmM: 1.5e-7, filmOhmM2: 4e-11 })
    expect(1 / both / (1 / layer + 1 / film)).toBeCloseTo(1, 14)
  })

  test('grows with the width; without a word no film is assumed', () => {
    expect(lapDefaults.filmOhmM2).toBe(0)
    expect(interfaceConductanceSPerM({ bondWidthMm: 1, layerMm: 0.1, layerOhmM: 1.5e-7, filmOhmM2: 0 })).toBe(
      interfaceConductanceSPerM({ bondWidthMm: 1, layerMm: 0.1, layerOhmM: 1.5e-7 }),
    )
    fc.assert(
      fc.property(positive, positive, positive, (w, s, ρ) => {
        const one = interfaceConductanceSPerM({ bondWidthMm: w, layerMm: s, layerOhmM: ρ })
        return Math.abs(interfaceConductanceSPerM({ bondWidthMm: 2 * w, layerMm: s, layerOhmM: ρ }) / one - 2) < 1e-13
      }),
    )
  })

  test.each([
    ['bondWidthMm', { bondWidthMm: 0 }],
    ['bondWidthMm', { bondWidthMm: Number.NaN }],
    ['layerMm', { layerMm: -0.1 }],
    ['layerMm', { layerMm: 0 }],
    ['layerMm', { layerMm: 0, filmOhmM2: 0 }],
    ['layerOhmM', { layerOhmM: 0 }],
    ['filmOhmM2', { filmOhmM2: -1 }],
    ['filmOhmM2', { filmOhmM2: Number.POSITIVE_INFINITY }],
    ['bondWidthMm', { bondWidthMm: 1e300, layerMm: 1e-300 }],
  ])('refuses %s: %j', (parameter, change) => {
    expect(parameterOf(() => interfaceConductanceSPerM({ bondWidthMm: 1, layerMm: 0.1, layerOhmM: 1.5e-7, ...change }))).toBe(parameter)
  })
})
