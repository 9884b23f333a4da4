import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { fuseBands } from '../tables/index.ts'
import { fuseBandOf } from './fuseBandOf.ts'
import { fuseForWire } from './fuseForWire.ts'
import { fuseOpeningS } from './fuseOpening.ts'

const { ratingsA } = fuseBands['ISO 8820-3']
const refused = (parameter: string) => expect.objectContaining({ name: 'DomainError', parameter })
const base = Object.freeze({ loadA: 4.2, wireA: 16, ambientC: 23, series: 'ISO 8820-3' as const })
const candidate = (input: Parameters<typeof fuseForWire>[0], ratedA: number) => {
  const found = fuseForWire(input).candidates.find((fuse) => fuse.ratedA === ratedA)
  if (found === undefined) throw new Error(`no ${ratedA} A in the series`)
  return found
}
const codes = (input: Parameters<typeof fuseForWire>[0], ratedA: number) => candidate(input, ratedA).reasons.map(({ code }) => code)

describe('fuseForWire', () => {
  test('by hand: 4.2 A over 0.75 asks for 5.6 A, so 7.5 A; the wire carries 1.35 times that', () => {
    expect(fuseForWire(base).ratedA).toBe(7.5)
    expect(codes(base, 5)).toEqual(['load-over-share'])
    expect(codes(base, 7.5)).toEqual([])
    expect(codes(base, 15)).toEqual(['wire-in-overload-zone'])
  })

  test('every rating of the series is judged, in order', () => {
    expect(fuseForWire(base).candidates.map(({ ratedA }) => ratedA)).toEqual([...ratingsA])
  })

  test('at 65 C the rating falls to 0.9496 of its value; in the cold it rises', () => {
    expect(candidate({ ...base, ambientC: 65 }, 10).atAmbientA).toBeCloseTo(9.496, 12)
    expect(candidate({ ...base, ambientC: 23 }, 10).atAmbientA).toBe(10)
    expect(candidate({ ...base, ambientC: -27 }, 10).atAmbientA).toBeCloseTo(10.6, 12)
    expect(candidate({ ...base, ambientC: 65, ambientLossPerK: 0.002 }, 10).atAmbientA).toBeCloseTo(9.16, 12)
  })

  test('the edges count: a load of just three quarters, a wire of just 1.35 times, for every rating', () => {
    for (const ratedA of ratingsA) {
      const edge = { ...base, loadA: 0.75 * ratedA, wireA: 1.35 * ratedA }
      expect(candidate(edge, ratedA)).toMatchObject({ carriesLoad: true, protectsWire: true, carriesInrush: null, reasons: [] })
      expect(candidate({ ...edge, loadA: 0.7501 * ratedA }, ratedA).carriesLoad).toBe(false)
      expect(candidate({ ...edge, wireA: 1.3499 * ratedA }, ratedA).protectsWire).toBe(false)
    }
  })

  test('a reason tells value and limit', () => {
    expect(candidate({ ...base, loadA: 8 }, 10).reasons).toEqual([{ code: 'load-over-share', parameter: 'loadA', value: 8, limit: 7.5 }])
    expect(candidate({ ...base, wireA: 13 }, 10).reasons).toEqual([{ code: 'wire-in-overload-zone', parameter: 'wireA', value: 13, limit: 13.5 }])
    expect(candidate({ ...base, inrush: { currentA: 20, timeS: 0.2 } }, 10).reasons).toEqual([
      { code: 'inrush-may-open', parameter: 'inrush.timeS', value: 0.2, limit: 0.15 },
    ])
    expect(candidate({ ...base, stallA: 12 }, 10).reasons).toEqual([{ code: 'stall-may-not-open', parameter: 'stallA', value: 12, limit: 13.5 }])
  })

  test('an inrush is carried up to the soonest opening time, and for ever below the first point of the band', () => {
    expect(candidate({ ...base, inrush: { currentA: 20, timeS: 0.15 } }, 10).carriesInrush).toBe(true)
    expect(candidate({ ...base, inrush: { currentA: 20, timeS: 0.1501 } }, 10).carriesInrush).toBe(false)
    expect(candidate({ ...base, inrush: { currentA: 10.9, timeS: 1e6 } }, 10).carriesInrush).toBe(true)
  })

  test('inrush raises the fuse, stall and wire hold it down: where they cross there is none', () => {
    expect(fuseForWire({ ...base, wireA: 30, inrush: { currentA: 40, timeS: 0.1 } }).ratedA).toBe(20)
    expect(fuseForWire({ ...base, wireA: 30, inrush: { currentA: 40, timeS: 0.1 }, stallA: 20 }).ratedA).toBeNull()
    expect(fuseForWire({ ...base, wireA: 12, inrush: { currentA: 40, timeS: 0.1 } }).ratedA).toBeNull()
    expect(codes({ ...base, wireA: 12, inrush: { currentA: 40, timeS: 0.1 }, stallA: 12 }, 10)).toEqual([
      'inrush-may-open',
      'stall-may-not-open',
      'wire-in-overload-zone',
    ])
  })

  test('a stall is opened from 1.35 times the rating', () => {
    expect(codes({ ...base, stallA: 13.5 }, 10)).toEqual([])
    expect(codes({ ...base, stallA: 13.49 }, 10)).toEqual(['stall-may-not-open'])
  })

  test('a wire that may carry nothing has no fuse; a load of 0 takes the smallest', () => {
    expect(fuseForWire({ ...base, wireA: 0 }).ratedA).toBeNull()
    expect(fuseForWire({ ...base, loadA: 0 }).ratedA).toBe(1)
    expect(fuseForWire({ ...base, loadA: 100, wireA: 1000 }).ratedA).toBeNull()
  })

  test('the chosen fuse is the smallest without a reason, and its flags agree with the band', () => {
    const amps = fc.double({ min: 0, max: 60, noNaN: true })
    const inrush = fc.record({ currentA: amps, timeS: fc.double({ min: 0, max: 2, noNaN: true }) })
    fc.assert(
      fc.property(amps, amps, inrush, amps, fc.double({ min: -60, max: 150, noNaN: true }), (loadA, wireA, rush, stallA, ambientC) => {
        const { ratedA, candidates } = fuseForWire({ loadA, wireA, inrush: rush, stallA, ambientC, series: 'ISO 8820-3' })
        expect(ratedA).toBe(candidates.find(({ reasons }) => reasons.length === 0)?.ratedA ?? null)
        for (const fuse of candidates) {
          const given = { ratedA: fuse.atAmbientA, band: fuseBandOf({ series: 'ISO 8820-3', ratedA: fuse.ratedA }) }
          const shortestS = fuseOpeningS({ ...given, currentA: rush.currentA }).shortestS
          expect(fuse.carriesInrush).toBe(shortestS === null || rush.timeS <= shortestS * (1 + 1e-12))
          const opensStall = fuseOpeningS({ ...given, currentA: stallA }).longestS !== null
          expect(fuse.reasons.length === 0).toBe(fuse.carriesLoad && fuse.carriesInrush === true && fuse.protectsWire && opensStall)
        }
      }),
    )
  })

  test('35 and 40 A have their own row: they carry their rating, and are sure to open within 0.15 s at six times', () => {
    expect(candidate({ ...base, wireA: 60, inrush: { currentA: 43, timeS: 1e6 } }, 40).carriesInrush).toBe(false)
    expect(candidate({ ...base, wireA: 60, inrush: { currentA: 32, timeS: 1e6 } }, 30).carriesInrush).toBe(true)
    expect(fuseOpeningS({ ratedA: 40, band: fuseBandOf({ series: 'ISO 8820-3', ratedA: 40 }), currentA: 240 }).longestS).toBe(0.15)
  })

  test('the other series: a large blade for 50 A, a glass tube that is sure to open from 2.1 times only', () => {
    expect(fuseForWire({ loadA: 50, wireA: 120, ambientC: 23, series: 'ISO 8820-3 type E' }).ratedA).toBe(70)
    expect(fuseForWire({ loadA: 3, wireA: 10, ambientC: 23, series: 'IEC 60127-2 F' }).ratedA).toBe(4)
    expect(fuseForWire({ loadA: 3, wireA: 8.3, ambientC: 23, series: 'IEC 60127-2 F' }).ratedA).toBeNull()
  })

  test('an unknown series is refused with the known ones', () => {
    for (const series of ['ISO 8820-4', '__proto__', undefined]) {
      expect(() => fuseForWire({ ...base, series } as never)).toThrow(expect.objectContaining({ name: 'UnknownEntryError', known: Object.keys(fuseBands) }))
    }
  })

  test('each number past its edge is refused by path', () => {
    for (const value of [-1e-9, Number.NaN, Infinity]) {
      for (const parameter of ['loadA', 'wireA', 'stallA']) expect(() => fuseForWire({ ...base, [parameter]: value })).toThrow(refused(parameter))
      expect(() => fuseForWire({ ...base, inrush: { currentA: value, timeS: 1 } })).toThrow(refused('inrush.currentA'))
      expect(() => fuseForWire({ ...base, inrush: { currentA: 1, timeS: value } })).toThrow(refused('inrush.timeS'))
    }
    for (const ambientC of [-60.1, 150.1, Number.NaN, undefined])
      expect(() => fuseForWire({ ...base, ambientC: ambientC as number })).toThrow(refused('ambientC'))
    for (const loadFraction of [0, 1.01, Number.NaN]) expect(() => fuseForWire({ ...base, loadFraction })).toThrow(refused('loadFraction'))
    for (const ambientLossPerK of [-0.001, 0.006, Number.NaN]) expect(() => fuseForWire({ ...base, ambientLossPerK })).toThrow(refused('ambientLossPerK'))
    expect(() => fuseForWire({ loadA: 1, wireA: 1, ambientC: 23, series: 'ISO 8820-3', inrush: null } as never)).toThrow(refused('inrush.currentA'))
  })
})
