import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { DomainError } from '../errors/index.ts'
import { breakEvenOverlapMm } from './breakEvenOverlap.ts'
import { lapJointResistanceOhm } from './lapJointResistance.ts'
import { transferLengthMm } from './transferLength.ts'

describe('breakEvenOverlapMm', () => {
  test('like wires: 2.3994 transfer lengths, whatever wire and interface', () => {
    for (const [r, g] of [
      [0.0172, 1e5],
      [0.5, 3e7],
    ] as const) {
      const lap = { conductorsOhmPerM: [r, r] as const, interfaceSPerM: g }
      expect(Math.abs((breakEvenOverlapMm(lap) ?? 0) / transferLengthMm(lap) - 2 * 1.1996786402577337)).toBeLessThan(1e-14)
    }
  })

  test('at that overlap the joint equals plain wire; below it resists more, above it less', () => {
    const ohmPerM = fc.double({ min: 1e-4, max: 1, noNaN: true })
    fc.assert(
      fc.property(ohmPerM, ohmPerM, fc.double({ min: 1, max: 1e9, noNaN: true }), fc.double({ min: 1.01, max: 100, noNaN: true }), (r1, r2, g, times) => {
        const plainOhmPerM = (times * r1 * r2) / (r1 + r2)
        const lap = { conductorsOhmPerM: [r1, r2] as const, interfaceSPerM: g }
        const L = breakEvenOverlapMm({ ...lap, plainOhmPerM }) ?? 0
        const over = (overlapMm: number): number => lapJointResistanceOhm({ ...lap, overlapMm }) / ((plainOhmPerM * overlapMm) / 1000) - 1
        return Math.abs(over(L)) < 1e-12 && over(0.99 * L) > 0 && over(1.01 * L) < 0
      }),
    )
  })

  test('compares with the larger of the two where nothing is said', () => {
    const lap = { conductorsOhmPerM: [0.005, 0.02] as const, interfaceSPerM: 1e6 }
    expect(breakEvenOverlapMm(lap)).toBe(breakEvenOverlapMm({ ...lap, plainOhmPerM: 0.02 }))
    expect(breakEvenOverlapMm({ conductorsOhmPerM: [0.02, 0.005], interfaceSPerM: 1e6 })).toBe(breakEvenOverlapMm({ ...lap, plainOhmPerM: 0.02 }))
    expect(breakEvenOverlapMm(lap)).not.toBe(breakEvenOverlapMm({ ...lap, plainOhmPerM: 0.005 }))
  })

  test('null where both side by side are no better than the plain wire', () => {
    expect(breakEvenOverlapMm({ conductorsOhmPerM: [2, 2], interfaceSPerM: 10, plainOhmPerM: 1 })).toBeNull()
    expect(breakEvenOverlapMm({ conductorsOhmPerM: [2, 2], interfaceSPerM: 10, plainOhmPerM: 0 })).toBeNull()
    expect(breakEvenOverlapMm({ conductorsOhmPerM: [2, 2], interfaceSPerM: 10, plainOhmPerM: 1.001 })).toBeGreaterThan(0)
    expect(breakEvenOverlapMm({ conductorsOhmPerM: [0, 0], interfaceSPerM: 10 })).toBeNull()
  })

  test('perfect conductors against plain wire: 1/(g L) = p L; one perfect: coth u = u', () => {
    expect(breakEvenOverlapMm({ conductorsOhmPerM: [0, 0], interfaceSPerM: 50, plainOhmPerM: 2 })).toBeCloseTo(100, 10)
    expect(breakEvenOverlapMm({ conductorsOhmPerM: [2, 0], interfaceSPerM: 50 })).toBeCloseTo(119.96786402577337, 10)
  })

  test('limits: a plain wire with almost the same, or a far higher, resistance', () => {
    // R - p0 L tends to (r1^2 + r2^2)/(s lambda); divided by p - p0 it is the overlap.
    const hardly = breakEvenOverlapMm({ conductorsOhmPerM: [2, 2], interfaceSPerM: 50, plainOhmPerM: 1 + 1e-6 }) ?? 0
    expect(hardly / ((1000 * (8 / 4 / Math.sqrt(200))) / 1e-6)).toBeCloseTo(1, 5)
    const much = breakEvenOverlapMm({ conductorsOhmPerM: [2, 2], interfaceSPerM: 50, plainOhmPerM: 2e12 }) ?? 0
    expect(much / (1000 / Math.sqrt(50 * 2e12))).toBeCloseTo(1, 5)
  })

  test.each([
    ['conductorsOhmPerM.0', { conductorsOhmPerM: [-1, 1] }],
    ['conductorsOhmPerM', { conductorsOhmPerM: [1.7e308, 1.7e308] }],
    ['interfaceSPerM', { interfaceSPerM: 0 }],
    ['plainOhmPerM', { plainOhmPerM: -1e-9 }],
    ['plainOhmPerM', { plainOhmPerM: Number.NaN }],
    ['plainOhmPerM', { conductorsOhmPerM: [0, 0], interfaceSPerM: 1e-310, plainOhmPerM: 1e-310 }],
    ['plainOhmPerM', { conductorsOhmPerM: [1e-310, 1e-310], interfaceSPerM: 1e-310, plainOhmPerM: 1e-309 }],
  ])('refuses %s: %j', (parameter, change) => {
    let caught: unknown
    try {
      breakEvenOverlapMm({ conductorsOhmPerM: [1, 1], interfaceSPerM: 1, ...change } as never)
    } catch (error) {
      caught = error
    }
    expect(caught).toBeInstanceOf(DomainError)
    expect((caught as DomainError).parameter).toBe(parameter)
  })
})
