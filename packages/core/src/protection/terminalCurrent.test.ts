import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { ambientFactor } from '../ampacity/index.ts'
import { prospectiveCurrentA } from './prospectiveCurrent.ts'
import { terminalCurrentA } from './terminalCurrent.ts'

const refused = (parameter: string) => expect.objectContaining({ name: 'DomainError', parameter })
const base = Object.freeze({ ratedCurrentA: 10, ratedAmbientC: 25, limitC: 105, ambientC: 65 })
const notFinite = [Number.NaN, Infinity, -Infinity, undefined]

describe('terminalCurrentA', () => {
  test('by hand: half the rise left is the root of a half of the current', () => {
    expect(terminalCurrentA(base)).toBeCloseTo(10 * Math.SQRT1_2, 12)
    expect(terminalCurrentA({ ...base, reserveFactor: 0.8 })).toBeCloseTo(8 * Math.SQRT1_2, 12)
  })

  test('a quarter of the rise left is half the current', () => {
    expect(terminalCurrentA({ ...base, ambientC: 85 })).toBeCloseTo(5, 12)
  })

  test('its rated ambient gives the rating, its limit nothing, a colder place more', () => {
    expect(terminalCurrentA({ ...base, ambientC: 25 })).toBe(10)
    expect(terminalCurrentA({ ...base, ambientC: 105 })).toBe(0)
    expect(terminalCurrentA({ ...base, ambientC: -40 })).toBeGreaterThan(10)
  })

  test('moving the rating to another ambient and back returns it; hotter is less', () => {
    const celsius = fc.double({ min: -60, max: 100, noNaN: true })
    fc.assert(
      fc.property(celsius, celsius, (ratedAmbientC, ambientC) => {
        const there = terminalCurrentA({ ...base, ratedAmbientC, ambientC })
        expect(terminalCurrentA({ ...base, ratedCurrentA: there, ratedAmbientC: ambientC, ambientC: ratedAmbientC })).toBeCloseTo(10, 10)
        expect(terminalCurrentA({ ...base, ratedAmbientC, ambientC: ambientC + 1 })).toBeLessThan(there)
      }),
    )
  })

  test('follows the ambient factor of conductors: the same law', () => {
    fc.assert(
      fc.property(fc.double({ min: -60, max: 100, noNaN: true }), (ambientC) => {
        const factor = ambientFactor({ limitC: base.limitC, ambientC, referenceAmbientC: base.ratedAmbientC })
        expect(terminalCurrentA({ ...base, ambientC })).toBeCloseTo(10 * factor, 10)
      }),
    )
  })

  test('the rise that the answer makes is the rise that is left', () => {
    const got = terminalCurrentA(base)
    expect((got / base.ratedCurrentA) ** 2 * (base.limitC - base.ratedAmbientC)).toBeCloseTo(base.limitC - base.ambientC, 10)
  })

  test('an ambient above the limit and a rated ambient at it are refused by name', () => {
    expect(() => terminalCurrentA({ ...base, ambientC: 105.001 })).toThrow(refused('ambientC'))
    expect(() => terminalCurrentA({ ...base, ratedAmbientC: 105 })).toThrow(refused('ratedAmbientC'))
  })

  test('each number is refused where missing, not finite, or past its edge', () => {
    for (const value of notFinite) {
      for (const parameter of ['ratedCurrentA', 'ratedAmbientC', 'limitC', 'ambientC']) {
        expect(() => terminalCurrentA({ ...base, [parameter]: value })).toThrow(refused(parameter))
      }
    }
    expect(() => terminalCurrentA({ ...base, ratedCurrentA: -1 })).toThrow(refused('ratedCurrentA'))
    for (const parameter of ['ratedAmbientC', 'limitC', 'ambientC'])
      expect(() => terminalCurrentA({ ...base, [parameter]: -273.15 })).toThrow(refused(parameter))
    for (const reserveFactor of [0, -1, 1.001, Number.NaN]) expect(() => terminalCurrentA({ ...base, reserveFactor })).toThrow(refused('reserveFactor'))
  })
})

describe('prospectiveCurrentA', () => {
  test('by hand: 12 V over 10 and 110 milliohm is 100 A', () => {
    expect(prospectiveCurrentA(Object.freeze({ supplyV: 12, sourceOhm: 0.01, loopOhm: 0.11 }))).toBeCloseTo(100, 12)
  })

  test('an ideal source or an ideal loop leaves the other; without both nothing limits it', () => {
    expect(prospectiveCurrentA({ supplyV: 12, sourceOhm: 0, loopOhm: 0.12 })).toBeCloseTo(100, 12)
    expect(prospectiveCurrentA({ supplyV: 12, sourceOhm: 0.12, loopOhm: 0 })).toBeCloseTo(100, 12)
    expect(() => prospectiveCurrentA({ supplyV: 12, sourceOhm: 0, loopOhm: 0 })).toThrow(refused('loopOhm'))
  })

  test('the current through the loop drops the whole supply', () => {
    const ohm = fc.double({ min: 1e-4, max: 10, noNaN: true })
    fc.assert(
      fc.property(ohm, ohm, fc.double({ min: 1, max: 60, noNaN: true }), (sourceOhm, loopOhm, supplyV) => {
        expect(prospectiveCurrentA({ supplyV, sourceOhm, loopOhm }) * (sourceOhm + loopOhm)).toBeCloseTo(supplyV, 9)
      }),
    )
  })

  test('each number is refused where missing, not finite or negative, and a supply of 0', () => {
    const good = { supplyV: 12, sourceOhm: 0.01, loopOhm: 0.11 }
    for (const value of [-1e-9, ...notFinite]) {
      for (const parameter of ['supplyV', 'sourceOhm', 'loopOhm'])
        expect(() => prospectiveCurrentA({ ...good, [parameter]: value })).toThrow(refused(parameter))
    }
    expect(() => prospectiveCurrentA({ ...good, supplyV: 0 })).toThrow(refused('supplyV'))
  })
})
