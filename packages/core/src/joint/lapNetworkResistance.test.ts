import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { DomainError } from '../errors/index.ts'
import { lapJointResistanceOhm } from './lapJointResistance.ts'
import { lapNetworkResistanceOhm } from './lapNetworkResistance.ts'

const ohmPerM = fc.double({ min: 1e-4, max: 1, noNaN: true })
const siemensPerM = fc.double({ min: 1, max: 1e9, noNaN: true })
const mm = fc.double({ min: 0.1, max: 100, noNaN: true })
const relative = (got: number, want: number): number => Math.abs(got / want - 1)
const wet = (lengthMm: number, interfaceSPerM: number): { readonly lengthMm: number; readonly interfaceSPerM: number } => ({ lengthMm, interfaceSPerM })

describe('lapNetworkResistanceOhm', () => {
  test('one stretch is the closed form; so is any cut through it', () => {
    fc.assert(
      fc.property(ohmPerM, ohmPerM, siemensPerM, mm, fc.double({ min: 0.01, max: 0.98, noNaN: true }), (r1, r2, g, L, cut) => {
        const conductorsOhmPerM = [r1, r2] as const
        const want = lapJointResistanceOhm({ overlapMm: L, conductorsOhmPerM, interfaceSPerM: g })
        const whole = lapNetworkResistanceOhm({ conductorsOhmPerM, stretches: [wet(L, g)] })
        const halves = lapNetworkResistanceOhm({ conductorsOhmPerM, stretches: [wet(cut * L, g), wet((1 - cut) * L, g)] })
        const thirds = lapNetworkResistanceOhm({ conductorsOhmPerM, stretches: [wet(L / 3, g), wet(L / 3, g), wet(L / 3, g)] })
        return relative(whole, want) < 1e-13 && relative(halves, want) < 1e-12 && relative(thirds, want) < 1e-12
      }),
    )
  })

  test('a dry stretch before adds conductor 1, a dry stretch behind conductor 2: exactly their own resistance', () => {
    const conductorsOhmPerM = [0.03, 0.008] as const
    const lap = lapNetworkResistanceOhm({ conductorsOhmPerM, stretches: [wet(3, 1e5)] })
    const before = lapNetworkResistanceOhm({ conductorsOhmPerM, stretches: [wet(4, 0), wet(2, 0), wet(3, 1e5)] })
    const behind = lapNetworkResistanceOhm({ conductorsOhmPerM, stretches: [wet(3, 1e5), wet(4, 0), wet(2, 0)] })
    expect(Math.abs(before - lap - 0.03 * 0.006)).toBeLessThan(1e-16)
    expect(Math.abs(behind - lap - 0.008 * 0.006)).toBeLessThan(1e-16)
  })

  test('reversing the lap and swapping its conductors gives the same resistance', () => {
    const stretches = [wet(1, 3e6), wet(2, 0), wet(0.5, 1e4), wet(3, 0), wet(2, 8e5)]
    const there = lapNetworkResistanceOhm({ conductorsOhmPerM: [0.03, 0.008], stretches })
    const back = lapNetworkResistanceOhm({ conductorsOhmPerM: [0.008, 0.03], stretches: [...stretches].reverse() })
    expect(relative(there, back)).toBeLessThan(1e-14)
  })

  test('less wetting never resists less', () => {
    fc.assert(
      fc.property(ohmPerM, ohmPerM, siemensPerM, mm, mm, mm, (r1, r2, g, a, b, c) => {
        const conductorsOhmPerM = [r1, r2] as const
        const full = lapNetworkResistanceOhm({ conductorsOhmPerM, stretches: [wet(a, g), wet(b, g), wet(c, g)] })
        const gap = lapNetworkResistanceOhm({ conductorsOhmPerM, stretches: [wet(a, g), wet(b, 0), wet(c, g)] })
        const end = lapNetworkResistanceOhm({ conductorsOhmPerM, stretches: [wet(a, g), wet(b, 0), wet(c, 0)] })
        return gap >= full * (1 - 1e-12) && end >= gap * (1 - 1e-12)
      }),
    )
  })

  test('stretches far longer than their transfer length: side by side between two ends, nothing overflows', () => {
    const λ = Math.sqrt(1e9 * 0.05)
    const want = ((0.02 * 0.03) / 0.05) * 2000 + (0.02 ** 2 + 0.03 ** 2) / (0.05 * λ)
    const got = lapNetworkResistanceOhm({ conductorsOhmPerM: [0.02, 0.03], stretches: [wet(1e6, 1e9), wet(1e6, 1e9)] })
    expect(relative(got, want)).toBeLessThan(1e-15)
    // The current is already shared at the overlap's middle, so a gap there only adds its length in parallel paths.
    const gap = lapNetworkResistanceOhm({ conductorsOhmPerM: [0.02, 0.03], stretches: [wet(1e6, 1e9), wet(10, 0), wet(1e6, 1e9)] })
    expect(relative(gap - got, (0.02 * 0.03 * 0.01) / 0.05)).toBeLessThan(1e-9)
  })

  test('perfect conductors: the wetted stretches in parallel, the dry ones nothing', () => {
    const stretches = [wet(5, 0), wet(2, 1e5), wet(3, 0), wet(4, 2e5), wet(1, 0)]
    expect(relative(lapNetworkResistanceOhm({ conductorsOhmPerM: [0, 0], stretches }), 1 / (1e5 * 0.002 + 2e5 * 0.004))).toBeLessThan(1e-15)
  })

  test('points of wetting far below their transfer length', () => {
    // Two weak bonds: in parallel, whatever the wire between them.
    const got = lapNetworkResistanceOhm({ conductorsOhmPerM: [0.02, 0.02], stretches: [wet(1e-6, 1e-3), wet(10, 0), wet(1e-6, 1e-3)] })
    expect(relative(got, 0.5e12)).toBeLessThan(1e-12)
  })

  test.each([
    ['stretches', { stretches: [wet(1, 0), wet(2, 0)] }, 'wrong-choice'],
    ['stretches', { stretches: [] }, 'wrong-choice'],
    ['stretches', { stretches: undefined }, 'missing'],
    ['stretches', { stretches: 'wet' }, 'wrong-choice'],
    ['stretches.1.lengthMm', { stretches: [wet(1, 1), wet(0, 1)] }, 'out-of-range'],
    ['stretches.0.lengthMm', { stretches: [{}] }, 'missing'],
    ['stretches.0.lengthMm', { stretches: [undefined] }, 'missing'],
    ['stretches.0.interfaceSPerM', { stretches: [wet(1, -1)] }, 'out-of-range'],
    ['stretches.1.interfaceSPerM', { stretches: [wet(1, 1), wet(1, Number.NaN)] }, 'not-a-number'],
    ['stretches', { stretches: [wet(1e-300, 1e-300)] }, 'not-a-number'],
    ['conductorsOhmPerM.0', { conductorsOhmPerM: [-1, 1] }, 'out-of-range'],
  ])('refuses %s: %j, %s', (parameter, change, code) => {
    let caught: unknown
    try {
      lapNetworkResistanceOhm({ conductorsOhmPerM: [1, 1], stretches: [wet(1, 1)], ...change } as never)
    } catch (error) {
      caught = error
    }
    expect(caught).toBeInstanceOf(DomainError)
    expect((caught as DomainError).parameter).toBe(parameter)
    if (code !== 'not-a-number') expect((caught as DomainError).code).toBe(code)
  })
})
