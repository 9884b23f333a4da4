import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { DomainError } from '../errors/index.ts'
import { lapJointResistanceOhm } from './lapJointResistance.ts'
import { transferLengthMm } from './transferLength.ts'

const like = Object.freeze({ overlapMm: 10, conductorsOhmPerM: Object.freeze([0.0172, 0.0172] as const), interfaceSPerM: 1e5 })
const relative = (got: number, want: number): number => Math.abs(got / want - 1)

/** Textbook form, valid until cosh overflows. */
function hyperbolic(r1: number, r2: number, g: number, L: number): number {
  const s = r1 + r2
  const λ = Math.sqrt(g * s)
  const u = λ * L
  return (r1 * r2 * L) / s + ((r1 ** 2 + r2 ** 2) * Math.cosh(u) + 2 * r1 * r2) / (s * λ * Math.sinh(u))
}

describe('lapJointResistanceOhm', () => {
  const ohmPerM = fc.double({ min: 1e-4, max: 1, noNaN: true })
  const siemensPerM = fc.double({ min: 1, max: 1e9, noNaN: true })
  const mm = fc.double({ min: 0.1, max: 100, noNaN: true })

  test('equals the hyperbolic form wherever that one does not overflow', () => {
    fc.assert(
      fc.property(ohmPerM, ohmPerM, siemensPerM, mm, (r1, r2, g, L) => {
        fc.pre(Math.sqrt(g * (r1 + r2)) * L < 6e5)
        return relative(lapJointResistanceOhm({ overlapMm: L, conductorsOhmPerM: [r1, r2], interfaceSPerM: g }), hyperbolic(r1, r2, g, L / 1000)) < 1e-13
      }),
    )
  })

  test('like wires: r L/2 + (r/lambda) coth(u/2)', () => {
    const λ = Math.sqrt(2 * 0.0172 * 1e5)
    expect(relative(lapJointResistanceOhm(like), 0.0172 * 0.005 + 0.0172 / λ / Math.tanh(λ * 0.005))).toBeLessThan(1e-15)
  })

  test('limit of a short overlap: the interface alone, 1/(g L), to the last digit', () => {
    expect(lapJointResistanceOhm({ overlapMm: 1e-9, conductorsOhmPerM: [0.0172, 0.005], interfaceSPerM: 1e-3 })).toBe(1 / (1e-3 * (1e-9 / 1000)))
    // The next term of the series is (r1 + r2) L/3.
    const thin = lapJointResistanceOhm({ overlapMm: 1, conductorsOhmPerM: [0.03, 0.01], interfaceSPerM: 1 })
    expect(Math.abs(thin - 1000 - (0.04 * 0.001) / 3)).toBeLessThan(1e-12)
  })

  test('limit of a long overlap: both ends plus the conductors side by side, to the last digits, however long', () => {
    for (const overlapMm of [1e3, 1e6, 1e12]) {
      const λ = Math.sqrt(1e7 * 0.05)
      const want = ((0.02 * 0.03) / 0.05) * (overlapMm / 1000) + (0.02 ** 2 + 0.03 ** 2) / (0.05 * λ)
      expect(relative(lapJointResistanceOhm({ overlapMm, conductorsOhmPerM: [0.02, 0.03], interfaceSPerM: 1e7 }), want)).toBeLessThan(1e-15)
    }
  })

  test('limit of one perfect conductor: (r1/lambda) coth u, from either side; of two: 1/(g L)', () => {
    const want = 0.0172 / Math.sqrt(0.0172 * 2e5) / Math.tanh(Math.sqrt(0.0172 * 2e5) * 0.004)
    expect(relative(lapJointResistanceOhm({ overlapMm: 4, conductorsOhmPerM: [0.0172, 0], interfaceSPerM: 2e5 }), want)).toBeLessThan(1e-15)
    expect(relative(lapJointResistanceOhm({ overlapMm: 4, conductorsOhmPerM: [0, 0.0172], interfaceSPerM: 2e5 }), want)).toBeLessThan(1e-15)
    expect(lapJointResistanceOhm({ overlapMm: 4, conductorsOhmPerM: [0, 0], interfaceSPerM: 2e5 })).toBe(1 / (2e5 * 0.004))
  })

  test('either way round it is the same; it scales with the conductors; a better interface never resists more', () => {
    fc.assert(
      fc.property(ohmPerM, ohmPerM, siemensPerM, mm, (r1, r2, g, L) => {
        const R = lapJointResistanceOhm({ overlapMm: L, conductorsOhmPerM: [r1, r2], interfaceSPerM: g })
        const turned = lapJointResistanceOhm({ overlapMm: L, conductorsOhmPerM: [r2, r1], interfaceSPerM: g })
        const scaled = lapJointResistanceOhm({ overlapMm: L, conductorsOhmPerM: [4 * r1, 4 * r2], interfaceSPerM: g / 4 })
        const better = lapJointResistanceOhm({ overlapMm: L, conductorsOhmPerM: [r1, r2], interfaceSPerM: 2 * g })
        return relative(turned, R) < 1e-14 && relative(scaled, 4 * R) < 1e-14 && better <= R
      }),
    )
  })

  test('in the overlap it is not monotone: what falls is the resistance beyond that of both conductors side by side', () => {
    const R = (overlapMm: number): number => lapJointResistanceOhm({ ...like, overlapMm })
    const least = 2 * Math.asinh(1) * transferLengthMm(like)
    expect(R(least)).toBeLessThan(R(least * 0.99))
    expect(R(least)).toBeLessThan(R(least * 1.01))
    fc.assert(
      fc.property(ohmPerM, ohmPerM, siemensPerM, mm, (r1, r2, g, L) => {
        const beyond = (overlapMm: number): number =>
          lapJointResistanceOhm({ overlapMm, conductorsOhmPerM: [r1, r2], interfaceSPerM: g }) - ((r1 * r2) / (r1 + r2)) * (overlapMm / 1000)
        return beyond(1.5 * L) <= beyond(L) * (1 + 1e-9) + 1e-12
      }),
    )
  })

  test('a product g (r1 + r2) that leaves the range of a double does not take the answer with it', () => {
    const big = lapJointResistanceOhm({ overlapMm: 1, conductorsOhmPerM: [1e200, 1e200], interfaceSPerM: 1e200 })
    expect(relative(big, 0.5e200 * 1e-3 + 1e200 / (Math.sqrt(2) * 1e200))).toBeLessThan(1e-15)
    expect(lapJointResistanceOhm({ overlapMm: 1000, conductorsOhmPerM: [1e-200, 1e-200], interfaceSPerM: 1e-200 })).toBe(1e200)
    const small = lapJointResistanceOhm({ overlapMm: 1000, conductorsOhmPerM: [1e-160, 1e-160], interfaceSPerM: 1e-160 })
    expect(small).toBe(1e160)
  })

  test.each([
    ['overlapMm', { ...like, overlapMm: 0 }],
    ['overlapMm', { ...like, overlapMm: -1 }],
    ['overlapMm', { ...like, overlapMm: Number.NaN }],
    ['overlapMm', { ...like, overlapMm: Number.POSITIVE_INFINITY }],
    ['conductorsOhmPerM.0', { ...like, conductorsOhmPerM: [-1e-9, 1] }],
    ['conductorsOhmPerM.1', { ...like, conductorsOhmPerM: [1, Number.NaN] }],
    ['conductorsOhmPerM', { ...like, conductorsOhmPerM: [1] }],
    ['conductorsOhmPerM', { ...like, conductorsOhmPerM: undefined }],
    ['interfaceSPerM', { ...like, interfaceSPerM: 0 }],
    ['interfaceSPerM', { ...like, interfaceSPerM: Number.POSITIVE_INFINITY }],
    // 1/(g L) overflows; the sum of two conductors overflows.
    ['overlapMm', { ...like, overlapMm: 1e-300, interfaceSPerM: 1e-300 }],
    ['overlapMm', { ...like, conductorsOhmPerM: [1.7e308, 1.7e308] }],
  ])('refuses: %s in %j', (parameter, input) => {
    let caught: unknown
    try {
      lapJointResistanceOhm(input as unknown as typeof like)
    } catch (error) {
      caught = error
    }
    expect(caught).toBeInstanceOf(DomainError)
    expect((caught as DomainError).parameter).toBe(parameter)
  })

  test('a missing pair and a pair of another length give different errors', () => {
    const code = (pair: unknown): unknown => {
      try {
        return lapJointResistanceOhm({ ...like, conductorsOhmPerM: pair as [number, number] })
      } catch (error) {
        return (error as DomainError).code
      }
    }
    expect(code(undefined)).toBe('missing')
    expect(code([1, 2, 3])).toBe('wrong-choice')
    expect(code('ab')).toBe('wrong-choice')
  })
})
