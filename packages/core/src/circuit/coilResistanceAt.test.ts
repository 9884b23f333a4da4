import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { coilResistanceAtOhm } from './coilResistanceAt.ts'

const refused = (parameter: string) => expect.objectContaining({ name: 'DomainError', parameter })
const base = Object.freeze({ resistanceOhm: 85, atC: 23, wantedC: 85 })
const celsius = fc.double({ min: -60, max: 300, noNaN: true })

describe('coilResistanceAtOhm', () => {
  test('by hand: copper from 20 to 80 C gains 0.393 % a kelvin', () => {
    expect(coilResistanceAtOhm({ resistanceOhm: 100, atC: 20, wantedC: 80 })).toBeCloseTo(123.58, 10)
  })

  test('the base of the coefficient stays at 20 C: from 80 C back to 20 C is the inverse, not minus 23.58 %', () => {
    expect(coilResistanceAtOhm({ resistanceOhm: 123.58, atC: 80, wantedC: 20 })).toBeCloseTo(100, 10)
  })

  test('copper is the default', () => {
    expect(coilResistanceAtOhm(base)).toBe(coilResistanceAtOhm({ ...base, material: 'annealed-copper' }))
    expect(coilResistanceAtOhm(base)).not.toBe(coilResistanceAtOhm({ ...base, material: 'aluminium-1350' }))
  })

  test('there and back returns the value; two steps are one; hotter is more', () => {
    fc.assert(
      fc.property(celsius, celsius, celsius, (a, b, c) => {
        const step = (resistanceOhm: number, atC: number, wantedC: number) => coilResistanceAtOhm({ resistanceOhm, atC, wantedC })
        expect(step(step(10, a, b), b, a)).toBeCloseTo(10, 11)
        expect(step(step(10, a, b), b, c)).toBeCloseTo(step(10, a, c), 11)
        if (b > a + 1e-9) expect(step(10, a, b)).toBeGreaterThan(10)
      }),
    )
  })

  test('a winding of 0 ohm stays at 0', () => {
    expect(coilResistanceAtOhm({ ...base, resistanceOhm: 0 })).toBe(0)
  })

  test('temperatures hold from -60 to 300 C and below the melting point', () => {
    for (const parameter of ['atC', 'wantedC']) {
      for (const edge of [-60, 300]) expect(coilResistanceAtOhm({ ...base, [parameter]: edge })).toBeGreaterThan(0)
      for (const past of [-60.001, 300.001, Number.NaN, Infinity, undefined])
        expect(() => coilResistanceAtOhm({ ...base, [parameter]: past })).toThrow(refused(parameter))
    }
    expect(() => coilResistanceAtOhm({ ...base, material: 'tin', wantedC: 240 })).toThrow(refused('wantedC'))
  })

  test('a negative or infinite resistance and an unknown metal are refused by name', () => {
    for (const resistanceOhm of [-1, Number.NaN, Infinity]) expect(() => coilResistanceAtOhm({ ...base, resistanceOhm })).toThrow(refused('resistanceOhm'))
    expect(() => coilResistanceAtOhm({ ...base, material: 'mercury' as never })).toThrow(expect.objectContaining({ name: 'UnknownEntryError' }))
  })
})
