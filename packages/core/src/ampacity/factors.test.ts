import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { DomainError, UnknownEntryError } from '../errors/index.ts'
import { altitudeFactor } from './altitudeFactor.ts'
import { ambientFactor } from './ambientFactor.ts'
import { deratedCurrentA } from './deratedCurrent.ts'
import { dutyCurrentA } from './dutyCurrent.ts'
import { groupingFactor } from './groupingFactor.ts'
import { steadyCurrentA } from './steadyCurrent.ts'

const source = { status: 'common practice', source: 'a test' } as const
const positive = fc.double({ min: 0.01, max: 1e4, noNaN: true })

describe('ambientFactor', () => {
  test('1 at the reference, 0 at the limit, above 1 in the cold', () => {
    expect(ambientFactor({ limitC: 90, ambientC: 30, referenceAmbientC: 30 })).toBe(1)
    expect(ambientFactor({ limitC: 90, ambientC: 90, referenceAmbientC: 30 })).toBe(0)
    expect(ambientFactor({ limitC: 90, ambientC: -30, referenceAmbientC: 30 })).toBeCloseTo(Math.SQRT2, 15)
  })

  test('two moves of the reference are one', () => {
    const T = fc.double({ min: -60, max: 89, noNaN: true })
    fc.assert(
      fc.property(T, T, T, (a, b, c) => {
        const F = (ambientC: number, referenceAmbientC: number) => ambientFactor({ limitC: 90, ambientC, referenceAmbientC })
        expect(F(a, b) * F(b, c)).toBeCloseTo(F(a, c), 10)
      }),
    )
  })

  test('it is the law of a constant film: the balance with one agrees', () => {
    const wire = { areaMm2: 2.5, insulationThicknessMm: 0.8, insulationConductivityWPerMK: 0.17, filmWPerM2K: 14, limitC: 90 }
    const ratio = (steadyCurrentA({ ...wire, ambientC: 60 }) as number) / (steadyCurrentA({ ...wire, ambientC: 30 }) as number)
    expect(ratio).toBeCloseTo(ambientFactor({ limitC: 90, ambientC: 60, referenceAmbientC: 30 }), 12)
  })

  test('refuses air above the limit, a reference at it, and no numbers', () => {
    expect(() => ambientFactor({ limitC: 90, ambientC: 90.01, referenceAmbientC: 30 })).toThrow(expect.objectContaining({ parameter: 'ambientC' }))
    expect(() => ambientFactor({ limitC: 90, ambientC: 20, referenceAmbientC: 90 })).toThrow(expect.objectContaining({ parameter: 'referenceAmbientC' }))
    for (const parameter of ['limitC', 'ambientC', 'referenceAmbientC']) {
      for (const value of [Number.NaN, Infinity, -273.15]) {
        expect(() => ambientFactor({ limitC: 90, ambientC: 20, referenceAmbientC: 30, [parameter]: value })).toThrow(
          expect.objectContaining({ name: 'DomainError', parameter }),
        )
      }
    }
  })
})

describe('altitudeFactor', () => {
  test('1 at sea level, falling with height; the density ratio of the standard atmosphere at 11 km is 0.2971', () => {
    expect(altitudeFactor({ altitudeM: 0 })).toBe(1)
    expect(altitudeFactor({ altitudeM: 11000 }) ** 4).toBeCloseTo(0.2971, 3)
    expect(altitudeFactor({ altitudeM: 5000 })).toBeLessThan(altitudeFactor({ altitudeM: 4999 }))
  })

  test('the balance with the pressure of the height derates less, because radiation stays', () => {
    const wire = { areaMm2: 2, insulationThicknessMm: 0.4, insulationConductivityWPerMK: 0.25, ambientC: 20, limitC: 150 }
    const kept = (steadyCurrentA({ ...wire, pressurePa: 46600 }) as number) / (steadyCurrentA(wire) as number)
    expect(kept).toBeGreaterThan(altitudeFactor({ altitudeM: 6096 }))
    expect(kept).toBeLessThan(1)
  })

  test('refuses what lies outside the troposphere', () => {
    for (const altitudeM of [-1, 11000.1, Number.NaN, Infinity]) {
      expect(() => altitudeFactor({ altitudeM })).toThrow(expect.objectContaining({ name: 'DomainError', parameter: 'altitudeM' }))
    }
  })
})

describe('dutyCurrentA', () => {
  test('never off: the steady current; long on-times: the same; short cycles: the square mean', () => {
    expect(dutyCurrentA({ onS: 10, offS: 0, timeConstantS: 60, steadyA: 12 })).toBe(12)
    expect(dutyCurrentA({ onS: 6000, offS: 600, timeConstantS: 60, steadyA: 12 })).toBeCloseTo(12, 12)
    expect(dutyCurrentA({ onS: 1e-6, offS: 3e-6, timeConstantS: 60, steadyA: 12 })).toBeCloseTo(24, 6)
  })

  test('more off-time allows more, never more than the square mean, never less than steady', () => {
    fc.assert(
      fc.property(positive, positive, positive, positive, (onS, offS, timeConstantS, steadyA) => {
        const I = dutyCurrentA({ onS, offS, timeConstantS, steadyA })
        expect(I).toBeGreaterThanOrEqual(steadyA * (1 - 1e-12))
        expect(I).toBeLessThanOrEqual(steadyA * Math.sqrt((onS + offS) / onS) * (1 + 1e-12))
        expect(dutyCurrentA({ onS, offS: offS * 2, timeConstantS, steadyA })).toBeGreaterThanOrEqual(I)
      }),
    )
  })

  test('refuses each parameter by name', () => {
    const good = { onS: 10, offS: 10, timeConstantS: 60, steadyA: 12 }
    for (const [parameter, value] of [
      ['onS', 0],
      ['offS', -1],
      ['timeConstantS', 0],
      ['steadyA', -1],
      ['onS', 1e-320],
      ['steadyA', Infinity],
      ['offS', Number.NaN],
    ] as const) {
      expect(() => dutyCurrentA({ ...good, [parameter]: value })).toThrow(expect.objectContaining({ name: 'DomainError', parameter }))
    }
  })
})

describe('deratedCurrentA', () => {
  test('each link tells what stands after it; no link leaves the base', () => {
    const links = Object.freeze([
      { name: 'ambient', factor: 0.8, source },
      { name: 'bundle', factor: 0.5, source },
    ])
    const chain = deratedCurrentA(Object.freeze({ baseA: 20, links }))
    expect(chain.currentA).toBe(8)
    expect(chain.links).toEqual([
      { name: 'ambient', factor: 0.8, currentA: 16, source },
      { name: 'bundle', factor: 0.5, currentA: 8, source },
    ])
    expect(deratedCurrentA({ baseA: 20, links: [] })).toEqual({ currentA: 20, links: [] })
    expect(deratedCurrentA({ baseA: 20, links: [{ name: 'limit', factor: 0, source }] }).currentA).toBe(0)
  })

  test('the order does not change the end', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: 0, max: 1.5, noNaN: true }), { maxLength: 6 }), (factors) => {
        const links = factors.map((factor, index) => ({ name: `${index}`, factor, source }))
        expect(deratedCurrentA({ baseA: 10, links: [...links].reverse() }).currentA).toBeCloseTo(deratedCurrentA({ baseA: 10, links }).currentA, 12)
      }),
    )
  })

  test('refuses each by its path', () => {
    const refused = (i: unknown, parameter: string, more: object = {}) =>
      expect(() => deratedCurrentA(i as never)).toThrow(expect.objectContaining({ name: 'DomainError', parameter, ...more }))
    refused({ baseA: -1, links: [] }, 'baseA')
    refused({ baseA: 1 }, 'links', { code: 'missing' })
    refused({ baseA: 1, links: 0.8 }, 'links', { code: 'wrong-choice' })
    refused({ baseA: 1, links: [undefined] }, 'links.0.factor', { code: 'missing' })
    refused(
      {
        baseA: 1,
        links: [
          { name: 'a', factor: 1, source },
          { name: 'b', factor: -0.1, source },
        ],
      },
      'links.1.factor',
    )
    refused({ baseA: 1, links: [{ name: 'a', factor: Number.NaN, source }] }, 'links.0.factor')
    refused({ baseA: 1e300, links: [{ name: 'a', factor: 1e300, source }] }, 'links.0.factor')
  })
})

describe('groupingFactor', () => {
  test('few conductors keep all: 1 to 3 in the US wiring code, 1 and 2 on boats', () => {
    for (const loadedConductors of [1, 2, 3]) expect(groupingFactor({ loadedConductors, table: 'nec' })).toBe(1)
    for (const loadedConductors of [1, 2]) expect(groupingFactor({ loadedConductors, table: '33-cfr-183.425' })).toBe(1)
  })

  test('a range holds at both its ends, and past the last without end', () => {
    expect(groupingFactor({ loadedConductors: 20, table: 'nec' })).toBe(groupingFactor({ loadedConductors: 10, table: 'nec' }))
    expect(groupingFactor({ loadedConductors: 21, table: 'nec' })).toBeLessThan(groupingFactor({ loadedConductors: 20, table: 'nec' }))
    expect(groupingFactor({ loadedConductors: 1e6, table: 'nec' })).toBe(groupingFactor({ loadedConductors: 41, table: 'nec' }))
  })

  test('more never keep more', () => {
    for (const table of ['nec', '33-cfr-183.425'] as const) {
      for (let n = 1; n < 60; n += 1) {
        expect(groupingFactor({ loadedConductors: n + 1, table })).toBeLessThanOrEqual(groupingFactor({ loadedConductors: n, table }))
      }
    }
  })

  test('a gap and an unknown table are refused with the known entries listed; a fraction of a conductor is refused', () => {
    const gap = expect.objectContaining({ name: 'UnknownEntryError', parameter: 'loadedConductors', known: expect.arrayContaining(['9', '12']) })
    expect(() => groupingFactor({ loadedConductors: 10, table: 'iec-bunched' })).toThrow(gap)
    expect(() => groupingFactor({ loadedConductors: 6, table: 'as50881' })).toThrow(UnknownEntryError)
    expect(() => groupingFactor({ loadedConductors: 2, table: 'toString' as never })).toThrow(UnknownEntryError)
    for (const n of [0, 1.5, Number.NaN, Infinity]) expect(() => groupingFactor({ loadedConductors: n, table: 'nec' })).toThrow(DomainError)
  })
})
