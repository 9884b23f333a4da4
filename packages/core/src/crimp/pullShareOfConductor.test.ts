import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { awgToAreaMm2 } from '../conductor/index.ts'
import { metal } from '../materials/index.ts'
import { minimumPullForceN } from '../tables/index.ts'
import { pullShareOfConductor } from './pullShareOfConductor.ts'

const refused = (parameter: string) => expect.objectContaining({ name: 'DomainError', parameter })
const base = Object.freeze({ forceN: 89, areaMm2: 0.82, material: 'annealed-copper' as const })

describe('pullShareOfConductor', () => {
  test('by hand: 89 N on 0.82 mm2 of copper between 210 and 255 MPa', () => {
    const { low, high } = pullShareOfConductor(base)
    expect(low).toBeCloseTo(89 / (0.82 * 255), 12)
    expect(high).toBeCloseTo(89 / (0.82 * 210), 12)
  })

  test('60 % of the strongest wire is 0.6 at the low end', () => {
    const forceN = 0.6 * 0.82 * (metal('annealed-copper').tensileMPa?.high ?? 0)
    expect(pullShareOfConductor({ ...base, forceN }).low).toBeCloseTo(0.6, 12)
  })

  test('no pull is no share', () => {
    expect(pullShareOfConductor({ ...base, forceN: 0 })).toEqual({ low: 0, high: 0 })
  })

  test('the low end is never above the high end; both go with force over area', () => {
    const some = fc.double({ min: 0.1, max: 1000, noNaN: true })
    fc.assert(
      fc.property(
        some,
        some,
        fc.constantFrom('annealed-copper' as const, 'aluminium-1350' as const, 'low-carbon-steel' as const),
        (forceN, areaMm2, material) => {
          const once = pullShareOfConductor({ forceN, areaMm2, material })
          expect(once.low).toBeLessThanOrEqual(once.high)
          const twice = pullShareOfConductor({ forceN: 2 * forceN, areaMm2: 2 * areaMm2, material })
          expect(twice.low / once.low).toBeCloseTo(1, 12)
        },
      ),
    )
  })

  test('no pull table asks a copper crimp for more than the strongest annealed copper of its gauge gives', () => {
    for (const [standard, thinnest] of [
      ['UL 486A-486B', 28],
      ['SAE AS7928', 26],
    ] as const) {
      for (const gauge of [28, 26, 24, 22, 20, 18, 16, 14, 12, 10].filter((one) => one <= thinnest)) {
        const { low } = pullShareOfConductor({ forceN: minimumPullForceN({ standard, gauge }), areaMm2: awgToAreaMm2(gauge), material: 'annealed-copper' })
        expect(low, `${standard}, AWG ${gauge}`).toBeGreaterThan(0.2)
        expect(low, `${standard}, AWG ${gauge}`).toBeLessThan(1)
      }
    }
  })

  test('copper-clad aluminium has no known strength: refused with the metals that have one', () => {
    expect(() => pullShareOfConductor({ ...base, material: 'copper-clad-aluminium' })).toThrow(
      expect.objectContaining({
        name: 'UnknownEntryError',
        value: 'copper-clad-aluminium',
        known: expect.arrayContaining(['annealed-copper', 'aluminium-1350']),
      }),
    )
    expect(() => pullShareOfConductor({ ...base, material: 'gold' as never })).toThrow(expect.objectContaining({ name: 'UnknownEntryError' }))
  })

  test('each number past its edge is refused by name', () => {
    for (const value of [-1e-9, Number.NaN, Infinity, undefined]) {
      expect(() => pullShareOfConductor({ ...base, forceN: value as number })).toThrow(refused('forceN'))
      expect(() => pullShareOfConductor({ ...base, areaMm2: value as number })).toThrow(refused('areaMm2'))
    }
    expect(() => pullShareOfConductor({ ...base, areaMm2: 0 })).toThrow(refused('areaMm2'))
  })
})
