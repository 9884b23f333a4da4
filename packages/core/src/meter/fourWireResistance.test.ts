import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { fourWireResistanceOhm } from './fourWireResistance.ts'

const refused = (parameter: string) => expect.objectContaining({ name: 'DomainError', parameter })

describe('fourWireResistanceOhm', () => {
  test('by hand: 1 mV at 5 A is 0.2 milliohm', () => {
    expect(fourWireResistanceOhm(Object.freeze({ forwardV: 0.001, currentA: 5 }))).toBeCloseTo(0.0002, 15)
  })

  test('a thermal voltage cancels, whatever its size', () => {
    const ohm = fc.double({ min: 1e-5, max: 1, noNaN: true })
    fc.assert(
      fc.property(
        ohm,
        fc.double({ min: 0.1, max: 50, noNaN: true }),
        fc.double({ min: -1e-3, max: 1e-3, noNaN: true }),
        (resistanceOhm, currentA, thermalV) => {
          const forwardV = resistanceOhm * currentA + thermalV
          const reversedV = -resistanceOhm * currentA + thermalV
          expect(fourWireResistanceOhm({ forwardV, reversedV, currentA })).toBeCloseTo(resistanceOhm, 12)
        },
      ),
    )
  })

  test('an exact mirror as the reversed reading changes nothing', () => {
    expect(fourWireResistanceOhm({ forwardV: 0.75, reversedV: -0.75, currentA: 3 })).toBe(fourWireResistanceOhm({ forwardV: 0.75, currentA: 3 }))
  })

  test('reversedV is signed: the same sign twice is all thermal voltage', () => {
    expect(fourWireResistanceOhm({ forwardV: 0.002, reversedV: 0.002, currentA: 3 })).toBe(0)
  })

  test('swapped sense tips give a negative result, which is not hidden', () => {
    expect(fourWireResistanceOhm({ forwardV: -0.002, currentA: 2 })).toBe(-0.001)
  })

  test('a current of 0 or less, and each value that is not finite, is refused by name', () => {
    for (const currentA of [0, -1, Number.NaN, Infinity]) expect(() => fourWireResistanceOhm({ forwardV: 1, currentA })).toThrow(refused('currentA'))
    for (const value of [Number.NaN, Infinity, -Infinity]) {
      expect(() => fourWireResistanceOhm({ forwardV: value, currentA: 1 })).toThrow(refused('forwardV'))
      expect(() => fourWireResistanceOhm({ forwardV: 1, reversedV: value, currentA: 1 })).toThrow(refused('reversedV'))
    }
  })

  test('a quotient past the largest number is refused', () => {
    expect(() => fourWireResistanceOhm({ forwardV: 1e300, currentA: 1e-300 })).toThrow(refused('forwardV'))
  })
})
