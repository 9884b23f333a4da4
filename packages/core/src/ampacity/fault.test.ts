import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { UnknownEntryError } from '../errors/index.ts'
import { adiabaticFaultCurrentA } from './adiabaticFault.ts'
import { fusingCurrentPreeceA, fusingTimeOnderdonkS } from './fusing.ts'
import { nonAdiabaticFactor } from './nonAdiabaticFactor.ts'
import { temperatureAfterC } from './temperatureAfter.ts'

const positive = fc.double({ min: 0.01, max: 1000, noNaN: true })

describe('adiabaticFaultCurrentA', () => {
  const fault = Object.freeze({ areaMm2: 2.5, timeS: 0.5, material: 'copper', initialC: 70, finalC: 160 } as const)

  test('by hand: 226 x 2.5 x sqrt(ln(394.5/304.5)/0.5) = 406.6', () => {
    expect(adiabaticFaultCurrentA(fault)).toBeCloseTo(226 * 2.5 * Math.sqrt(Math.log(394.5 / 304.5) / 0.5), 9)
  })

  test('no rise, no current; twice the area, twice the current; four times the time, half', () => {
    expect(adiabaticFaultCurrentA({ ...fault, finalC: 70 })).toBe(0)
    fc.assert(
      fc.property(positive, positive, (areaMm2, timeS) => {
        const I = adiabaticFaultCurrentA({ ...fault, areaMm2, timeS })
        expect(adiabaticFaultCurrentA({ ...fault, areaMm2: 2 * areaMm2, timeS }) / I).toBeCloseTo(2, 12)
        expect(adiabaticFaultCurrentA({ ...fault, areaMm2, timeS: 4 * timeS }) / I).toBeCloseTo(0.5, 12)
      }),
    )
  })

  test('the squares of the rises add: 70 to 110 and 110 to 160', () => {
    const I = (initialC: number, finalC: number) => adiabaticFaultCurrentA({ ...fault, initialC, finalC })
    expect(Math.hypot(I(70, 110), I(110, 160))).toBeCloseTo(I(70, 160), 9)
  })

  test('the lumped wire without its insulation agrees for a short time, to the 1.1 % by which 226 squared and its own constants differ', () => {
    const wire = { areaMm2: 2.5, insulationThicknessMm: 0.8, insulationConductivityWPerMK: 0.17, ambientC: 70, insulationShare: 0 }
    const endC = temperatureAfterC({ ...wire, currentA: adiabaticFaultCurrentA({ ...fault, timeS: 0.05 }), timeS: 0.05 })
    expect(Math.abs((endC - 70) / 90 - 1)).toBeLessThan(0.012)
  })

  test('refuses each parameter by name; the metal melts above; for an unknown metal the error lists the known ones', () => {
    for (const [parameter, value] of [
      ['areaMm2', 0],
      ['timeS', 0],
      ['initialC', -61],
      ['finalC', 69],
      ['finalC', 1085],
      ['timeS', Number.NaN],
      ['areaMm2', Infinity],
    ] as const) {
      expect(() => adiabaticFaultCurrentA({ ...fault, [parameter]: value })).toThrow(expect.objectContaining({ name: 'DomainError', parameter }))
    }
    expect(() => adiabaticFaultCurrentA({ ...fault, material: 'lead', finalC: 328 })).toThrow(expect.objectContaining({ parameter: 'finalC' }))
    expect(() => adiabaticFaultCurrentA({ ...fault, material: 'tin' as never })).toThrow(
      expect.objectContaining({ known: ['copper', 'aluminium', 'steel', 'lead'] }),
    )
  })
})

describe('nonAdiabaticFactor', () => {
  test('no time: 1; by hand sqrt(1 + 0.3 x 2 + 0.05 x 4); it grows with time and falls with area', () => {
    expect(nonAdiabaticFactor({ areaMm2: 1, timeS: 0, xMm2PerS: 0.3, yMm2PerS: 0.05 })).toBe(1)
    expect(nonAdiabaticFactor({ areaMm2: 1, timeS: 4, xMm2PerS: 0.3, yMm2PerS: 0.05 })).toBeCloseTo(Math.sqrt(1.8), 12)
    expect(nonAdiabaticFactor({ areaMm2: 1, timeS: 4, xMm2PerS: 0, yMm2PerS: 0 })).toBe(1)
    fc.assert(
      fc.property(positive, positive, (areaMm2, timeS) => {
        const eps = nonAdiabaticFactor({ areaMm2, timeS, xMm2PerS: 0.3, yMm2PerS: 0.05 })
        expect(eps).toBeGreaterThan(1)
        expect(nonAdiabaticFactor({ areaMm2, timeS: timeS * 2, xMm2PerS: 0.3, yMm2PerS: 0.05 })).toBeGreaterThan(eps)
        expect(nonAdiabaticFactor({ areaMm2: areaMm2 * 3, timeS: timeS * 3, xMm2PerS: 0.3, yMm2PerS: 0.05 })).toBeCloseTo(eps, 12)
      }),
    )
  })

  test('refuses each parameter by name', () => {
    const good = { areaMm2: 1, timeS: 1, xMm2PerS: 0.3, yMm2PerS: 0.05 }
    for (const [parameter, value] of [
      ['areaMm2', 0],
      ['timeS', -1],
      ['xMm2PerS', -1],
      ['yMm2PerS', -1],
      ['areaMm2', 1e-320],
      ['yMm2PerS', Number.NaN],
    ] as const) {
      const named = parameter === 'areaMm2' && value > 0 ? 'timeS' : parameter
      expect(() => nonAdiabaticFactor({ ...good, [parameter]: value })).toThrow(expect.objectContaining({ name: 'DomainError', parameter: named }))
    }
  })
})

describe('fusing', () => {
  test('Preece: an inch of copper takes 10244 A, four times the diameter eight times the current', () => {
    expect(fusingCurrentPreeceA({ diameterMm: 25.4, material: 'copper' })).toBeCloseTo(10244, 9)
    fc.assert(
      fc.property(positive, (diameterMm) => {
        const I = (d: number) => fusingCurrentPreeceA({ diameterMm: d, material: 'tin-lead' })
        expect(I(4 * diameterMm) / I(diameterMm)).toBeCloseTo(8, 12)
      }),
    )
  })

  test('Onderdonk: twice the current, a quarter of the time; the hotter the start the sooner; 0 where it starts melting', () => {
    const t = (currentA: number, initialC: number) => fusingTimeOnderdonkS({ areaMm2: 1, currentA, initialC })
    expect(t(200, 25) * 4).toBeCloseTo(t(100, 25), 9)
    expect(t(100, 90)).toBeLessThan(t(100, 25))
    expect(t(100, 1083)).toBe(0)
    expect(fusingTimeOnderdonkS({ areaMm2: 1, currentA: 100, initialC: 25, meltingC: 1083 })).toBe(t(100, 25))
    expect(t(100, -60)).toBeGreaterThan(t(100, -59.9))
    expect(fusingTimeOnderdonkS({ areaMm2: 1, currentA: 100, initialC: 25, meltingC: 183 })).toBeLessThan(t(100, 25) / 3)
  })

  test('it is the adiabatic rule in other units, to the 1 % of its rounded constants', () => {
    const t = fusingTimeOnderdonkS({ areaMm2: 1, currentA: 300, initialC: 25 })
    expect(Math.abs(adiabaticFaultCurrentA({ areaMm2: 1, timeS: t, material: 'copper', initialC: 25, finalC: 1083 }) / 300 - 1)).toBeLessThan(0.01)
  })

  test('refuses each parameter by name', () => {
    for (const d of [0, -1, Number.NaN, Infinity]) {
      expect(() => fusingCurrentPreeceA({ diameterMm: d, material: 'copper' })).toThrow(expect.objectContaining({ parameter: 'diameterMm' }))
    }
    expect(() => fusingCurrentPreeceA({ diameterMm: 1, material: 'gold' as never })).toThrow(UnknownEntryError)
    for (const [parameter, value] of [
      ['areaMm2', 0],
      ['currentA', 0],
      ['initialC', -61],
      ['initialC', 1084],
      ['meltingC', 1101],
      ['currentA', 1e-200],
      ['meltingC', Number.NaN],
    ] as const) {
      expect(() => fusingTimeOnderdonkS({ areaMm2: 1, currentA: 100, initialC: 25, [parameter]: value })).toThrow(
        expect.objectContaining({ name: 'DomainError', parameter }),
      )
    }
  })
})
