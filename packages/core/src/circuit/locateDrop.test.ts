import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { locateDrop } from './locateDrop.ts'

const refused = (parameter: string) => expect.objectContaining({ name: 'DomainError', parameter })
const points = Object.freeze([
  { name: 'fuse', voltageV: 12.2, uncertaintyV: 0.01, expectedOhmToNext: 0.04 },
  { name: 'joint', voltageV: 12.1, uncertaintyV: 0.02, expectedOhmToNext: 0.05 },
  { name: 'pump', voltageV: 10.9, uncertaintyV: 0.01 },
])
const base = Object.freeze({ currentA: 4, currentUncertaintyA: 0.2, points })
/** Two points with a drop between them, both of this half width. */
const pair = (dropV: number, uncertaintyV: number, expectedOhmToNext?: number) => [
  { name: 'a', voltageV: dropV, uncertaintyV, ...(expectedOhmToNext === undefined ? {} : { expectedOhmToNext }) },
  { name: 'b', voltageV: 0, uncertaintyV },
]

describe('locateDrop', () => {
  test('by hand: 0.1 +/- 0.03 V and 1.2 +/- 0.03 V at 4 +/- 0.2 A', () => {
    const { stretches, worst } = locateDrop(base)
    const [first, second] = stretches
    expect([first?.from, first?.to, second?.from, second?.to]).toEqual(['fuse', 'joint', 'joint', 'pump'])
    expect(first?.dropV).toBeCloseTo(0.1, 12)
    expect(first?.lowV).toBeCloseTo(0.07, 12)
    expect(first?.highV).toBeCloseTo(0.13, 12)
    expect(first?.resistanceOhm).toBeCloseTo(0.025, 12)
    expect(first?.lowOhm).toBeCloseTo(0.07 / 4.2, 12)
    expect(first?.highOhm).toBeCloseTo(0.13 / 3.8, 12)
    expect(first?.share).toBeCloseTo(0.1 / 1.3, 12)
    expect([first?.excess, second?.excess]).toEqual(['no', 'yes'])
    expect(worst).toEqual({ from: 'joint', to: 'pump' })
  })

  test('a drop that may be negative takes the extremes of the quotient over both currents', () => {
    const [only] = locateDrop({ currentA: 4, currentUncertaintyA: 1, points: pair(0.01, 0.02) }).stretches
    expect(only?.lowOhm).toBeCloseTo(-0.03 / 3, 12)
    expect(only?.highOhm).toBeCloseTo(0.05 / 3, 12)
    const [backwards] = locateDrop({ currentA: 4, currentUncertaintyA: 1, points: pair(-1, 0.05) }).stretches
    expect(backwards?.lowOhm).toBeCloseTo(-1.1 / 3, 12)
    expect(backwards?.highOhm).toBeCloseTo(-0.9 / 5, 12)
  })

  test.each([
    ['yes: the low end lies above what is expected', 0.2, 'yes'],
    ['cannot tell: the low end is just what is expected', 0.25, 'cannot tell'],
    ['cannot tell: between the ends', 0.4, 'cannot tell'],
    ['no: the high end is just what is expected', 0.75, 'no'],
    ['cannot tell: nothing is expected', undefined, 'cannot tell'],
  ])('excess, %s', (_title, expected, verdict) => {
    expect(locateDrop({ currentA: 2, points: pair(1, 0.25, expected) }).stretches[0]?.excess).toBe(verdict)
  })

  test('a single stretch is the worst, however uncertain', () => {
    expect(locateDrop({ currentA: 1, points: pair(0.01, 5) }).worst).toEqual({ from: 'a', to: 'b' })
  })

  test('worst is null where the two largest drops overlap or touch', () => {
    const three = (uncertaintyV: number) => [
      { name: 'a', voltageV: 3, uncertaintyV },
      { name: 'b', voltageV: 2, uncertaintyV },
      { name: 'c', voltageV: 0, uncertaintyV },
    ]
    expect(locateDrop({ currentA: 1, points: three(0.2) }).worst).toEqual({ from: 'b', to: 'c' })
    expect(locateDrop({ currentA: 1, points: three(0.25) }).worst).toBeNull()
    expect(locateDrop({ currentA: 1, points: three(0.3) }).worst).toBeNull()
  })

  test('equal exact drops have no worst; a far smaller third one does not blur the first', () => {
    const at = (...voltages: number[]) => voltages.map((voltageV, k) => ({ name: `${k}`, voltageV }))
    expect(locateDrop({ currentA: 1, points: at(4, 2, 0) }).worst).toBeNull()
    expect(locateDrop({ currentA: 1, points: at(4, 3, 0.5, 0) }).worst).toEqual({ from: '1', to: '2' })
  })

  test('a rise of voltage along the current is kept with its sign and is never the worst', () => {
    const { stretches, worst } = locateDrop({
      currentA: 1,
      points: [
        { name: 'a', voltageV: 1 },
        { name: 'b', voltageV: 3 },
        { name: 'c', voltageV: 2 },
      ],
    })
    expect(stretches.map((stretch) => stretch.dropV)).toEqual([-2, 1])
    expect(worst).toEqual({ from: 'b', to: 'c' })
  })

  test('first and last voltage alike: shares are 0, not infinite', () => {
    const shares = locateDrop({ currentA: 1, points: [1, 0, 1].map((voltageV, k) => ({ name: `${k}`, voltageV })) }).stretches.map(({ share }) => share)
    expect(shares).toEqual([0, 0])
  })

  test('drops add to first minus last and shares to 1; every interval holds its value; the reference does not matter', () => {
    const voltage = fc.integer({ min: -2000, max: 60_000 }).map((millivolts) => millivolts / 1000)
    const half = fc.double({ min: 0, max: 0.5, noNaN: true })
    const list = fc.array(fc.record({ voltageV: voltage, uncertaintyV: half }), { minLength: 2, maxLength: 8 })
    fc.assert(
      fc.property(
        list,
        fc.double({ min: 1, max: 50, noNaN: true }),
        fc.double({ min: 0, max: 0.9, noNaN: true }),
        voltage,
        (readings, currentA, currentUncertaintyA, shift) => {
          const named = readings.map((reading, k) => ({ name: `${k}`, ...reading }))
          const { stretches } = locateDrop({ currentA, currentUncertaintyA, points: named })
          const total = (named[0]?.voltageV ?? 0) - (named.at(-1)?.voltageV ?? 0)
          expect(stretches.reduce((sum, stretch) => sum + stretch.dropV, 0)).toBeCloseTo(total, 9)
          if (total !== 0) expect(stretches.reduce((sum, stretch) => sum + stretch.share, 0)).toBeCloseTo(1, 6)
          for (const { lowV, dropV, highV, lowOhm, resistanceOhm, highOhm } of stretches) {
            expect(lowV <= dropV && dropV <= highV).toBe(true)
            expect(lowOhm <= resistanceOhm && resistanceOhm <= highOhm).toBe(true)
          }
          const moved = locateDrop({ currentA, currentUncertaintyA, points: named.map((point) => ({ ...point, voltageV: point.voltageV + shift })) })
          for (const [k, { dropV }] of moved.stretches.entries()) expect(dropV).toBeCloseTo(stretches[k]?.dropV ?? Number.NaN, 9)
        },
      ),
    )
  })
})

describe('locateDrop, bad input', () => {
  test('fewer than two points, or none, are refused', () => {
    for (const list of [[], points.slice(0, 1), undefined]) expect(() => locateDrop({ currentA: 1, points: list } as never)).toThrow(refused('points'))
  })

  test('a current of 0 and one lost in its uncertainty are refused', () => {
    expect(() => locateDrop({ currentA: 0, points })).toThrow(refused('currentA'))
    for (const currentUncertaintyA of [-1e-9, 4, 5, Number.NaN, Infinity])
      expect(() => locateDrop({ ...base, currentUncertaintyA })).toThrow(refused('currentUncertaintyA'))
  })

  test('each number of a point is refused by its path', () => {
    for (const value of [Number.NaN, Infinity, -Infinity]) {
      for (const field of ['voltageV', 'uncertaintyV', 'expectedOhmToNext']) {
        expect(() => locateDrop({ currentA: 1, points: [points[0], { ...points[1], [field]: value }] } as never)).toThrow(refused(`points.1.${field}`))
      }
    }
    for (const field of ['uncertaintyV', 'expectedOhmToNext']) {
      expect(() => locateDrop({ currentA: 1, points: [{ ...points[0], [field]: -1e-9 }, points[1]] } as never)).toThrow(refused(`points.0.${field}`))
    }
    expect(() => locateDrop({ currentA: 1, points: [points[0], undefined] } as never)).toThrow(refused('points.1.voltageV'))
  })
})
