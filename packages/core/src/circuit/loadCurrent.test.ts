import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { loadCurrentA } from './loadCurrent.ts'

const refused = (parameter: string) => expect.objectContaining({ name: 'DomainError', parameter })
const source = Object.freeze({ supplyV: 12, seriesOhm: 0.2 })
const volts = fc.double({ min: 1, max: 60, noNaN: true })
const ohms = fc.double({ min: 1e-4, max: 5, noNaN: true })

describe('loadCurrentA, constant power', () => {
  test('by hand: 12 V, 0.2 ohm, 100 W has the operating points 10 A at 10 V and 50 A at 2 V; the first is the answer', () => {
    expect(loadCurrentA({ ...source, load: Object.freeze({ kind: 'power', powerW: 100 }) })).toBeCloseTo(10, 12)
  })

  test('an ideal run gives P/V; no power takes no current', () => {
    expect(loadCurrentA({ supplyV: 12, seriesOhm: 0, load: { kind: 'power', powerW: 60 } })).toBe(5)
    expect(loadCurrentA({ ...source, load: { kind: 'power', powerW: 0 } })).toBe(0)
  })

  test('at the largest power the load takes half the voltage', () => {
    expect(loadCurrentA({ ...source, load: { kind: 'power', powerW: 180 } })).toBeCloseTo(30, 9)
  })

  test('just past it there is no answer, and the error tells the largest power', () => {
    expect(() => loadCurrentA({ ...source, load: { kind: 'power', powerW: 180.001 } })).toThrow(
      expect.objectContaining({ name: 'DomainError', parameter: 'load.powerW', value: 180.001, allowed: expect.stringContaining('180 W') }),
    )
  })

  test('the load voltage times the current is the power, and the load keeps at least half the supply', () => {
    fc.assert(
      fc.property(volts, ohms, fc.double({ min: 0, max: 1, noNaN: true }), (supplyV, seriesOhm, share) => {
        const powerW = (share * (supplyV * supplyV)) / (4 * seriesOhm)
        const currentA = loadCurrentA({ supplyV, seriesOhm, load: { kind: 'power', powerW } })
        const loadV = supplyV - currentA * seriesOhm
        expect(Math.abs(loadV * currentA - powerW)).toBeLessThanOrEqual(1e-9 * (powerW + 1e-9))
        expect(loadV).toBeGreaterThanOrEqual((supplyV / 2) * (1 - 1e-7))
      }),
    )
  })

  test('more power takes more current', () => {
    fc.assert(
      fc.property(volts, ohms, fc.double({ min: 0, max: 0.9, noNaN: true }), (supplyV, seriesOhm, share) => {
        const largestW = (supplyV * supplyV) / (4 * seriesOhm)
        const at = (part: number) => loadCurrentA({ supplyV, seriesOhm, load: { kind: 'power', powerW: part * largestW } })
        expect(at(share + 0.1)).toBeGreaterThan(at(share))
      }),
    )
  })
})

describe('loadCurrentA, resistance and constant current', () => {
  test('by hand: 12 V over 0.2 and 2.2 ohm is 5 A', () => {
    expect(loadCurrentA({ ...source, load: { kind: 'resistance', resistanceOhm: 2.2 } })).toBeCloseTo(5, 12)
  })

  test('a shorted load draws what the run lets through; without a run nothing limits it', () => {
    expect(loadCurrentA({ ...source, load: { kind: 'resistance', resistanceOhm: 0 } })).toBeCloseTo(60, 12)
    expect(() => loadCurrentA({ supplyV: 12, seriesOhm: 0, load: { kind: 'resistance', resistanceOhm: 0 } })).toThrow(refused('load.resistanceOhm'))
  })

  test('a constant-current load draws its current up to the one that drops the whole supply', () => {
    expect(loadCurrentA({ ...source, load: { kind: 'current', currentA: 4.2 } })).toBe(4.2)
    expect(loadCurrentA({ ...source, load: { kind: 'current', currentA: 60 } })).toBe(60)
    expect(() => loadCurrentA({ ...source, load: { kind: 'current', currentA: 60.01 } })).toThrow(
      expect.objectContaining({ name: 'DomainError', parameter: 'load.currentA', allowed: expect.stringContaining('60 A') }),
    )
  })

  test('a resistance and the power it takes draw the same current', () => {
    fc.assert(
      fc.property(volts, ohms, fc.double({ min: 6, max: 500, noNaN: true }), (supplyV, seriesOhm, resistanceOhm) => {
        const currentA = loadCurrentA({ supplyV, seriesOhm, load: { kind: 'resistance', resistanceOhm } })
        const powerW = currentA * currentA * resistanceOhm
        expect(loadCurrentA({ supplyV, seriesOhm, load: { kind: 'power', powerW } }) / currentA).toBeCloseTo(1, 9)
      }),
    )
  })
})

describe('loadCurrentA, bad input', () => {
  test.each([Number.NaN, Infinity, -Infinity, undefined, '5'])('%s is refused by name everywhere', (value) => {
    const bad = value as number
    expect(() => loadCurrentA({ supplyV: bad, seriesOhm: 0.2, load: { kind: 'current', currentA: 1 } })).toThrow(refused('supplyV'))
    expect(() => loadCurrentA({ supplyV: 12, seriesOhm: bad, load: { kind: 'current', currentA: 1 } })).toThrow(refused('seriesOhm'))
    expect(() => loadCurrentA({ ...source, load: { kind: 'current', currentA: bad } })).toThrow(refused('load.currentA'))
    expect(() => loadCurrentA({ ...source, load: { kind: 'resistance', resistanceOhm: bad } })).toThrow(refused('load.resistanceOhm'))
    expect(() => loadCurrentA({ ...source, load: { kind: 'power', powerW: bad } })).toThrow(refused('load.powerW'))
  })

  test('negative values, a supply of 0, an unknown kind and a missing load are refused by name', () => {
    for (const quantity of ['currentA', 'resistanceOhm', 'powerW'] as const) {
      const load = { kind: quantity === 'currentA' ? 'current' : quantity === 'powerW' ? 'power' : 'resistance', [quantity]: -1e-9 }
      expect(() => loadCurrentA({ ...source, load } as never)).toThrow(refused(`load.${quantity}`))
    }
    expect(() => loadCurrentA({ supplyV: 0, seriesOhm: 0.2, load: { kind: 'current', currentA: 0 } })).toThrow(refused('supplyV'))
    expect(() => loadCurrentA({ ...source, load: { kind: 'lamp', currentA: 1 } } as never)).toThrow(refused('load.kind'))
    expect(() => loadCurrentA(source as never)).toThrow(refused('load.kind'))
  })
})
