import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { DomainError } from '../errors/index.ts'
import { lapCurrents } from './lapCurrents.ts'
import { shearLagPeakRatio } from './shearLagPeakRatio.ts'
import { transferLengthMm } from './transferLength.ts'

const unlike = Object.freeze({ overlapMm: 6, conductorsOhmPerM: Object.freeze([0.0231, 0.0049] as const), interfaceSPerM: 3e5 })
const at = (i: Omit<Parameters<typeof lapCurrents>[0], 'atMm'>, xMm: number): { readonly firstShare: number; readonly interfacePerM: number } => {
  const [found] = lapCurrents({ ...i, atMm: [xMm] })
  if (found === undefined) throw new Error('no answer')
  return found
}

describe('lapCurrents', () => {
  test('equals the hyperbolic form', () => {
    const [r1, r2] = unlike.conductorsOhmPerM
    const s = r1 + r2
    const λ = Math.sqrt(unlike.interfaceSPerM * s)
    const u = λ * 0.006
    for (const xMm of [0, 0.7, 3, 5.5, 6]) {
      const x = xMm / 1000
      const share = r2 / s + (r1 * Math.sinh(u - λ * x) - r2 * Math.sinh(λ * x)) / (s * Math.sinh(u))
      const crossing = (λ * (r1 * Math.cosh(u - λ * x) + r2 * Math.cosh(λ * x))) / (s * Math.sinh(u))
      expect(Math.abs(at(unlike, xMm).firstShare - share)).toBeLessThan(1e-14)
      expect(Math.abs(at(unlike, xMm).interfacePerM / crossing - 1)).toBeLessThan(1e-13)
    }
  })

  test('all of the current enters in the first conductor and leaves in the second', () => {
    const positive = fc.double({ min: 1e-4, max: 1, noNaN: true })
    fc.assert(
      fc.property(positive, positive, fc.double({ min: 1e-3, max: 1e12, noNaN: true }), fc.double({ min: 0.01, max: 1e4, noNaN: true }), (r1, r2, g, L) => {
        const lap = { overlapMm: L, conductorsOhmPerM: [r1, r2] as const, interfaceSPerM: g }
        return Math.abs(at(lap, 0).firstShare - 1) < 1e-14 && Math.abs(at(lap, L).firstShare) < 1e-14
      }),
    )
  })

  test('the interface carries what the share loses: its sum over the overlap is the whole current', () => {
    const n = 2000
    const atMm = Array.from({ length: n }, (_, k) => ((k + 0.5) * unlike.overlapMm) / n)
    const found = lapCurrents({ ...unlike, atMm })
    expect(found.length).toBe(n)
    const sum = found.reduce((total, { interfacePerM }) => total + (interfacePerM * unlike.overlapMm) / 1000 / n, 0)
    expect(Math.abs(sum - 1)).toBeLessThan(1e-6)
    for (const [k, { firstShare }] of found.entries()) if (k > 0) expect(firstShare).toBeLessThan(found[k - 1]?.firstShare ?? 0)
  })

  test('it crosses hardest at an end; with unlike wires at the one where the better conductor begins to help', () => {
    const start = at(unlike, 0).interfacePerM
    const end = at(unlike, 6).interfacePerM
    expect(start).toBeGreaterThan(end)
    for (const xMm of [1, 2, 3, 4, 5]) expect(at(unlike, xMm).interfacePerM).toBeLessThan(start)
  })

  test('like wires: peak over mean is the shear-lag ratio, the same mathematics', () => {
    const like = { overlapMm: 7, conductorsOhmPerM: [0.0172, 0.0172] as const, interfaceSPerM: 8e5 }
    const peak = at(like, 0).interfacePerM * 0.007
    expect(Math.abs(peak / shearLagPeakRatio({ lengthMm: 7, perMm: 1 / transferLengthMm(like) }) - 1)).toBeLessThan(1e-13)
  })

  test('a very long overlap: side by side in its middle, in the share of the conductances; nothing overflows', () => {
    const long = { overlapMm: 1e6, conductorsOhmPerM: [0.02, 0.03] as const, interfaceSPerM: 1e9 }
    expect(at(long, 5e5)).toEqual({ firstShare: 0.6, interfacePerM: 0 })
    expect(at(long, 0).interfacePerM).toBeCloseTo(Math.sqrt(1e9 * 0.05) * 0.4, 6)
    expect(at(long, 1e6).interfacePerM).toBeCloseTo(Math.sqrt(1e9 * 0.05) * 0.6, 6)
  })

  test('a very short one, and perfect conductors: evenly', () => {
    for (const lap of [
      { overlapMm: 2, conductorsOhmPerM: [0, 0] as const, interfaceSPerM: 1e5 },
      { overlapMm: 2, conductorsOhmPerM: [1e-9, 1e-9] as const, interfaceSPerM: 1e-6 },
    ]) {
      expect(at(lap, 0)).toEqual({ firstShare: 1, interfacePerM: 500 })
      expect(at(lap, 0.5)).toEqual({ firstShare: 0.75, interfacePerM: 500 })
      expect(at(lap, 2)).toEqual({ firstShare: 0, interfacePerM: 500 })
    }
  })

  test('no places, no answers', () => {
    expect(lapCurrents({ ...unlike, atMm: [] })).toEqual([])
  })

  test.each([
    ['atMm.1', { atMm: [1, -0.001] }],
    ['atMm.0', { atMm: [6.001] }],
    ['atMm.0', { atMm: [Number.NaN] }],
    ['atMm', { atMm: undefined }],
    ['overlapMm', { overlapMm: 0 }],
    ['conductorsOhmPerM.1', { conductorsOhmPerM: [1, -1] }],
    ['interfaceSPerM', { interfaceSPerM: Number.NaN }],
    // The interface current per metre overflows: when uniform, and at the ends.
    ['overlapMm', { overlapMm: 5e-324, atMm: [0] }],
    ['overlapMm', { overlapMm: 5e-324, atMm: [5e-324], conductorsOhmPerM: [0, 0] }],
    ['overlapMm', { overlapMm: 1e-310, atMm: [0], conductorsOhmPerM: [1e305, 1e305], interfaceSPerM: 1.7e308 }],
    ['conductorsOhmPerM', { conductorsOhmPerM: [1.7e308, 1.7e308] }],
  ])('refuses %s: %j', (parameter, change) => {
    let caught: unknown
    try {
      lapCurrents({ ...unlike, atMm: [1], ...change } as never)
    } catch (error) {
      caught = error
    }
    expect(caught).toBeInstanceOf(DomainError)
    expect((caught as DomainError).parameter).toBe(parameter)
  })
})
