import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { resistanceOhm } from '../conductor/index.ts'
import { areaForDropMm2 } from './areaForDrop.ts'
import { dropBudget } from './dropBudget.ts'
import { voltageDropV } from './voltageDrop.ts'

const refused = (parameter: string) => expect.objectContaining({ name: 'DomainError', parameter })
const notFinite = [Number.NaN, Infinity, -Infinity, undefined]
const run = Object.freeze({ currentA: 4.2, outResistanceOhm: 0.05, returnResistanceOhm: 0.03 })
const sizing = Object.freeze({ currentA: 4.2, outLengthM: 3, returnLengthM: 2, allowedDropV: 0.36, material: 'annealed-copper' as const, temperatureC: 60 })
const ohm = fc.double({ min: 0, max: 10, noNaN: true })

describe('voltageDropV', () => {
  test('by hand: 4.2 A through 80 milliohm of wire and 5 of joints', () => {
    expect(voltageDropV(run)).toBeCloseTo(0.336, 12)
    expect(voltageDropV({ ...run, jointsOhm: Object.freeze([0.002, 0.003]) })).toBeCloseTo(0.357, 12)
  })

  test('nothing is lost without current, nor without resistance', () => {
    expect(voltageDropV({ ...run, currentA: 0 })).toBe(0)
    expect(voltageDropV({ currentA: 5, outResistanceOhm: 0, returnResistanceOhm: 0, jointsOhm: [] })).toBe(0)
  })

  test('is proportional to the current and the sum of its parts, in any order', () => {
    fc.assert(
      fc.property(ohm, ohm, fc.array(ohm), fc.double({ min: 0, max: 100, noNaN: true }), (outResistanceOhm, returnResistanceOhm, jointsOhm, currentA) => {
        const drop = voltageDropV({ currentA, outResistanceOhm, returnResistanceOhm, jointsOhm })
        expect(voltageDropV({ currentA: 2 * currentA, outResistanceOhm, returnResistanceOhm, jointsOhm })).toBeCloseTo(2 * drop, 8)
        expect(
          voltageDropV({ currentA, outResistanceOhm: returnResistanceOhm, returnResistanceOhm: outResistanceOhm, jointsOhm: jointsOhm.toReversed() }),
        ).toBeCloseTo(drop, 8)
      }),
    )
  })

  test('each value is refused by name where negative, missing or not finite', () => {
    for (const value of [-1e-9, ...notFinite]) {
      for (const parameter of ['currentA', 'outResistanceOhm', 'returnResistanceOhm']) {
        expect(() => voltageDropV({ ...run, [parameter]: value })).toThrow(refused(parameter))
      }
      expect(() => voltageDropV({ ...run, jointsOhm: [0.1, value as number] })).toThrow(refused('jointsOhm.1'))
    }
    expect(() => voltageDropV({ ...run, jointsOhm: 0.1 } as never)).toThrow(refused('jointsOhm'))
  })
})

describe('dropBudget', () => {
  const elements = Object.freeze([
    { name: 'feed', resistanceOhm: 0.03 },
    { name: 'joint', resistanceOhm: 0.01 },
  ])

  test('by hand: 40 milliohm at 5 A, three quarters in the feed', () => {
    const { dropV, shares } = dropBudget({ currentA: 5, elements })
    expect(dropV).toBeCloseTo(0.2, 12)
    expect(shares.map(({ name, share }) => [name, share])).toEqual([
      ['feed', 0.75],
      ['joint', 0.25],
    ])
    expect(shares[1]?.dropV).toBeCloseTo(0.05, 12)
  })

  test('a circuit that carries nothing keeps its shares; one without resistance has none', () => {
    expect(dropBudget({ currentA: 0, elements }).shares.map(({ share, dropV }) => [share, dropV])).toEqual([
      [0.75, 0],
      [0.25, 0],
    ])
    expect(dropBudget({ currentA: 5, elements: [{ name: 'ideal', resistanceOhm: 0 }] })).toEqual({ dropV: 0, shares: [{ name: 'ideal', dropV: 0, share: 0 }] })
  })

  test('drops add to the whole, shares to 1, and the whole is voltageDropV', () => {
    fc.assert(
      fc.property(fc.array(ohm, { minLength: 1 }), fc.double({ min: 0, max: 100, noNaN: true }), (list, currentA) => {
        const { dropV, shares } = dropBudget({ currentA, elements: list.map((resistanceOhm, k) => ({ name: `${k}`, resistanceOhm })) })
        expect(dropV).toBeCloseTo(voltageDropV({ currentA, outResistanceOhm: 0, returnResistanceOhm: 0, jointsOhm: list }), 8)
        expect(shares.reduce((sum, part) => sum + part.dropV, 0)).toBeCloseTo(dropV, 8)
        const whole = shares.reduce((sum, part) => sum + part.share, 0)
        expect(whole).toBeCloseTo(list.some((resistanceOhm) => resistanceOhm > 0) ? 1 : 0, 9)
      }),
    )
  })

  test('an empty or missing list and a bad element are refused by path', () => {
    for (const list of [[], undefined, 'feed']) expect(() => dropBudget({ currentA: 1, elements: list } as never)).toThrow(refused('elements'))
    for (const value of [-1, ...notFinite]) {
      expect(() => dropBudget({ currentA: 1, elements: [...elements, { name: 'x', resistanceOhm: value as number }] })).toThrow(
        refused('elements.2.resistanceOhm'),
      )
      expect(() => dropBudget({ currentA: value as number, elements })).toThrow(refused('currentA'))
    }
  })
})

describe('areaForDropMm2', () => {
  test('by hand: 4.2 A over 6 m of copper at 20 C within 0.36 V', () => {
    const got = areaForDropMm2({ ...sizing, returnLengthM: 3, temperatureC: 20 })
    expect(got).toBeCloseTo((1.7241e-2 * 4.2 * 6) / 0.36, 12)
  })

  test('returns the drop it was asked for: inverse of resistance and drop', () => {
    const metre = fc.double({ min: 0.1, max: 50, noNaN: true })
    fc.assert(
      fc.property(
        metre,
        metre,
        fc.double({ min: 0.01, max: 5, noNaN: true }),
        fc.double({ min: -60, max: 150, noNaN: true }),
        (outLengthM, returnLengthM, allowedDropV, temperatureC) => {
          const areaMm2 = areaForDropMm2({ ...sizing, outLengthM, returnLengthM, allowedDropV, temperatureC })
          const wire = { areaMm2, material: sizing.material, temperatureC }
          const drop = voltageDropV({
            currentA: sizing.currentA,
            outResistanceOhm: resistanceOhm({ ...wire, lengthM: outLengthM }),
            returnResistanceOhm: resistanceOhm({ ...wire, lengthM: returnLengthM }),
          })
          expect(Math.abs(drop / allowedDropV - 1)).toBeLessThan(1e-12)
        },
      ),
    )
  })

  test('a chassis return and a current of 0 are sizes too', () => {
    expect(areaForDropMm2({ ...sizing, returnLengthM: 0 })).toBeCloseTo((areaForDropMm2(sizing) * 3) / 5, 12)
    expect(areaForDropMm2({ ...sizing, currentA: 0 })).toBe(0)
  })

  test('each value past its edge is refused by name, an unknown metal with the known ones', () => {
    for (const value of [-1e-9, ...notFinite]) {
      for (const parameter of ['currentA', 'outLengthM', 'returnLengthM', 'allowedDropV']) {
        expect(() => areaForDropMm2({ ...sizing, [parameter]: value })).toThrow(refused(parameter))
      }
    }
    expect(() => areaForDropMm2({ ...sizing, allowedDropV: 0 })).toThrow(refused('allowedDropV'))
    for (const temperatureC of [-60.1, 300.1, Number.NaN]) expect(() => areaForDropMm2({ ...sizing, temperatureC })).toThrow(refused('temperatureC'))
    expect(() => areaForDropMm2({ ...sizing, material: 'gold' as never })).toThrow(expect.objectContaining({ name: 'UnknownEntryError', value: 'gold' }))
  })
})
