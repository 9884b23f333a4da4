import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { DomainError, UnknownEntryError } from '../errors/index.ts'
import { type MetalName, metals } from '../materials/index.ts'
import { resistanceOhm, resistanceOhmPerM } from './resistance.ts'
import { resistivityOhmM } from './resistivity.ts'

const names = Object.keys(metals) as MetalName[]
const solidAt300 = names.filter((name) => metals[name].meltingC.nominal > 300)
const area = fc.double({ min: 0.005, max: 300, noNaN: true })
const temperature = fc.double({ min: -60, max: 230, noNaN: true })
const anyMetal = fc.constantFrom(...names)

describe('resistivity', () => {
  test.each(names)('%s at 20 °C is its nominal resistivity', (name) => {
    expect(resistivityOhmM(name, 20)).toBe(metals[name].resistivity20OhmM.nominal)
  })

  test('annealed copper by hand: 1/58 ohm mm2/m at 20 °C, twice that 254.45 K higher', () => {
    expect(resistivityOhmM('annealed-copper', 20) * 1e6 * 58).toBeCloseTo(1, 4)
    expect(resistivityOhmM('annealed-copper', 20 + 1 / 0.00393) / resistivityOhmM('annealed-copper', 20)).toBeCloseTo(2, 12)
  })

  test('it is a straight line, rising, for every metal', () => {
    fc.assert(
      fc.property(anyMetal, temperature, temperature, (name, a, b) => {
        const middle = resistivityOhmM(name, (a + b) / 2)
        expect((resistivityOhmM(name, a) + resistivityOhmM(name, b)) / 2 / middle).toBeCloseTo(1, 12)
        if (Math.abs(a - b) > 1e-9) expect(Math.sign(resistivityOhmM(name, a) - resistivityOhmM(name, b))).toBe(Math.sign(a - b))
      }),
    )
  })

  test.each(solidAt300)('%s: -60 and 300 °C are in, past them is not', (name) => {
    expect(resistivityOhmM(name, -60)).toBeGreaterThan(0)
    expect(resistivityOhmM(name, 300)).toBeGreaterThan(resistivityOhmM(name, -60))
    for (const t of [-60.001, 300.001, -300, Number.NaN, Number.POSITIVE_INFINITY]) expect(() => resistivityOhmM(name, t)).toThrow('"temperatureC"')
  })

  test('tin melts at 231.93 °C: above it the line of the solid is refused', () => {
    expect(resistivityOhmM('tin', 231.93)).toBeGreaterThan(resistivityOhmM('tin', 20))
    expect(() => resistivityOhmM('tin', 232)).toThrow('melts')
  })

  test('an unknown metal is refused with the known ones', () => {
    expect(() => resistivityOhmM('unobtainium' as MetalName, 20)).toThrow(UnknownEntryError)
    expect(() => resistivityOhmM('toString' as MetalName, 20)).toThrow(expect.objectContaining({ known: names }))
  })
})

describe('resistance', () => {
  test('58 m of 1 mm2 annealed copper at 20 °C is an ohm', () => {
    expect(resistanceOhm({ areaMm2: 1, lengthM: 58, material: 'annealed-copper', temperatureC: 20 })).toBeCloseTo(1, 4)
  })

  test('it is ohm per metre times metres; twice the area halves it; a lay 5 % longer adds 5 %', () => {
    fc.assert(
      fc.property(area, fc.double({ min: 0, max: 1e4, noNaN: true }), anyMetal, temperature, (areaMm2, lengthM, material, temperatureC) => {
        const wire = Object.freeze({ areaMm2, material, temperatureC })
        const perMetre = resistanceOhmPerM(wire)
        expect(resistanceOhm({ ...wire, lengthM })).toBeCloseTo(perMetre * lengthM, 9)
        expect(resistanceOhmPerM({ ...wire, areaMm2: 2 * areaMm2 }) / perMetre).toBeCloseTo(0.5, 12)
        expect(resistanceOhmPerM({ ...wire, layFactor: 1.05 }) / perMetre).toBeCloseTo(1.05, 12)
      }),
    )
  })

  test('no length, no resistance', () => {
    expect(resistanceOhm({ areaMm2: 1, lengthM: 0, material: 'silver', temperatureC: 20 })).toBe(0)
  })

  const wire = { areaMm2: 1, lengthM: 1, material: 'annealed-copper', temperatureC: 20, layFactor: 1 } as const
  test.each([
    ['areaMm2', [0, -1, Number.NaN, Number.POSITIVE_INFINITY, undefined]],
    ['lengthM', [-1e-9, Number.NaN, Number.POSITIVE_INFINITY, undefined]],
    ['temperatureC', [-60.1, 300.1, Number.NaN, Number.NEGATIVE_INFINITY, undefined]],
    ['layFactor', [0.999, 0, Number.NaN, Number.POSITIVE_INFINITY]],
  ] as const)('%s is refused by name at and past its edge', (parameter, values) => {
    for (const value of values) {
      const refused = expect.objectContaining({ name: 'DomainError', parameter })
      expect(() => resistanceOhm({ ...wire, [parameter]: value })).toThrow(refused)
      if (parameter !== 'lengthM') expect(() => resistanceOhmPerM({ ...wire, [parameter]: value })).toThrow(refused)
    }
  })

  test('a result beyond all numbers is refused', () => {
    expect(() => resistanceOhm({ ...wire, areaMm2: 1e-300, lengthM: 1e300 })).toThrow(DomainError)
    expect(() => resistanceOhmPerM({ ...wire, areaMm2: Number.MIN_VALUE })).toThrow(DomainError)
  })
})
