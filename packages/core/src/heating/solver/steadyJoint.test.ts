import { describe, expect, test, vi } from 'vitest'
import { jointModel as model, tube as shrinking, stream, wire } from '../heatModel.sample.ts'
import type { HeatModel, HeatSource, HeatTube } from '../heatModel.ts'
import { constantFilm } from '../streamFilm.ts'
import { finAdmittance } from './finAdmittance.ts'
import type { Wire } from './finZones.ts'
import { exchange, X } from './heatExchange.ts'
import { steadyJoint } from './steadyJoint.ts'

vi.mock('./heatExchange.ts', { spy: true })

const swept: Wire = { ...wire, tails: 2, swept: stream }
const cooled: Wire = { ...wire, clip: { atM: 0.004, resistanceKPerW: 8, riseK: -30 } }
const warmed: Wire = { ...wire, clip: { atM: 0.004, resistanceKPerW: 0, riseK: 400 } }
/** It never comes to its recovery. */
const tube: HeatTube = { ...shrinking, recoveryRiseK: 900 }
const iron: HeatSource = { kind: 'iron', setRiseK: 340, maximumW: 500, resistanceKPerW: 5 }
const heavy = { kind: 'heavy-iron', setRiseK: 340, maximumW: 500, tipResistanceKPerW: 2, contactResistanceKPerW: 3, capacityJPerK: 1 } as const

/** What the joint gains and its wires take, which must be the same. */
function missW(one: HeatModel, source: HeatSource, limited: boolean, rise: number, body: number): number {
  const out = new Float64Array(8)
  exchange(one, source, limited, rise, body, out)
  return one.wires.reduce((sum, each) => {
    const { admittanceWPerK, offsetW } = finAdmittance(each, true)
    return sum - each.tails * (admittanceWPerK * rise - offsetW)
  }, out[X.joint] ?? Number.NaN)
}

describe('the steady joint', () => {
  test.each<[string, HeatSource, readonly Wire[], boolean]>([
    ['an iron', iron, [wire, cooled], false],
    ['an iron at its limit', { ...iron, maximumW: 3 }, [wire, { ...wire, stubM: 0.02, tails: 2 }], true],
    ['a stream on joint and wires', { kind: 'air', airRiseK: 330, film: constantFilm(150) }, [swept, wire], false],
    ['nothing but a clip colder than the surroundings', { kind: 'none' }, [cooled], false],
    ['a clip hotter than the iron', { ...iron, setRiseK: 100 }, [warmed, wire], false],
    ['an iron colder than the surroundings', { ...iron, setRiseK: -40 }, [wire], false],
  ])('%s: what comes in goes out by surface and wires', (_name, source, wires, limited) => {
    const one = model(source, wires)
    const { riseK, edgeRiseK } = steadyJoint(one)
    expect(Math.abs(missW(one, source, limited, riseK, 0))).toBeLessThan(1e-9)
    wires.forEach((each, w) => {
      const { edgeOffsetK, edgeSlope } = finAdmittance(each, true)
      expect(edgeRiseK[w]).toBeCloseTo(edgeOffsetK + edgeSlope * riseK, 9)
    })
  })

  test('a tip with mass ends where one without does, free or at its limit', () => {
    for (const maximumW of [500, 3]) {
      expect(steadyJoint(model({ ...heavy, maximumW }, [wire])).riseK).toBeCloseTo(steadyJoint(model({ ...iron, maximumW }, [wire])).riseK, 9)
    }
  })

  /** The tube's own balance, between stream and joint. */
  const tubeFor = (one: HeatModel, source: HeatTube, rise: number): number => {
    const out = new Float64Array(8)
    let [low, high] = [0, 330]
    for (let k = 0; k < 200; k++) {
      const body = (low + high) / 2
      exchange(one, source, false, rise, body, out)
      if ((out[X.body] ?? 0) > 0) low = body
      else high = body
    }
    return low
  }

  test.each([
    ['that hangs loose', tube, false],
    ['that recovers on the way', { ...tube, recoveryRiseK: 60 }, true],
  ] as const)('a tube %s: stream, tube, joint and wires in a row', (_name, source, gripped) => {
    const one = model(source, [wire, wire])
    const { riseK } = steadyJoint(one)
    const ends = { ...source, gripped }
    expect(Math.abs(missW(one, ends, false, riseK, tubeFor(one, ends, riseK)))).toBeLessThan(1e-8)
  })

  test('a tube recovers where it comes to its temperature, not short of it', () => {
    const loose = model(tube, [wire])
    const at = tubeFor(loose, tube, steadyJoint(loose).riseK)
    const rise = (recoveryRiseK: number): number => steadyJoint(model({ ...tube, recoveryRiseK }, [wire])).riseK
    expect(rise(at + 1e-6)).toBeCloseTo(steadyJoint(loose).riseK, 9)
    expect(rise(at - 1e-6)).toBeCloseTo(steadyJoint(model({ ...tube, gripped: true }, [wire])).riseK, 9)
    expect(Math.abs(rise(at - 1e-6) - rise(at + 1e-6))).toBeGreaterThan(1)
  })

  /** Balances that are looked at before the joint is found. */
  const balances = (one: HeatModel): number => {
    vi.mocked(exchange).mockClear()
    steadyJoint(one)
    return vi.mocked(exchange).mock.calls.length
  }

  test.each<[string, HeatSource]>([
    ['an iron', iron],
    ['a tip with mass', heavy],
    ['a stream', { kind: 'air', airRiseK: 330, film: constantFilm(150) }],
    ['nothing', { kind: 'none' }],
  ])('%s without radiation: the first slope leads there, the second balance is even', (_name, source) => {
    expect(balances({ ...model(source, [wire, cooled]), emissivity: 0 })).toBe(2)
    expect(balances(model(source, [wire, cooled]))).toBeLessThanOrEqual(4)
  })

  test('a tube without radiation: so it is for tube and joint, each in turn', () => {
    const rests = { gapEmissivity: 0, emissivity: 0 } as const
    // Two rises of the tube, each with two balances of the joint and one of its own; then the joint's two.
    expect(balances({ ...model({ ...tube, ...rests, gripped: true }, [wire, cooled]), emissivity: 0 })).toBe(8)
    expect(balances({ ...model({ ...tube, ...rests }, [wire, cooled]), emissivity: 0 })).toBe(8)
    expect(balances(model({ ...tube, gripped: true }, [wire, cooled]))).toBeLessThanOrEqual(17)
  })
})
