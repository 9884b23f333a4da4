import { describe, expect, test, vi } from 'vitest'
import { ConvergenceError } from '../../errors/index.ts'
import type { HeatModel, HeatSource, HeatTube } from '../heatModel.ts'
import { constantFilm } from '../streamFilm.ts'
import { solveStep } from './heatingStep.ts'
import { type Lump, newLump } from './lump.ts'
import { firstStage } from './moments.ts'
import { startSlope } from './parabola.ts'
import { rowWithin } from './rowWithin.ts'
import { solveLinear } from './solveLinear.ts'
import { type HeatingStep, newStep } from './stepState.ts'
import { emptyTable, fillTable } from './stepTable.ts'
import type { WireModes } from './wireModes.ts'

vi.mock('./solveLinear.ts', { spy: true })

const none = new Float64Array(2)
const modesOf = (rates: readonly [number, number], coupling: readonly [number, number], drive: readonly [number, number]): WireModes => ({
  count: 2,
  ratesPerS: Float64Array.from(rates),
  coupling: Float64Array.from(coupling),
  drive: Float64Array.from(drive),
  admittanceWPerK: 0,
  drivenW: 0,
  jointStoreJPerK: 0,
  edge: none,
  edgeJoint: 0,
  edgeOffsetK: 0,
  loss: none,
  lossJointWPerK: 0,
  lossOffsetW: 0,
  store: none,
  base: null,
})
/** One tail that nothing but the joint drives; and a wire that runs through, driven by a stream. */
const wires = [modesOf([6, 0.7], [0.5, 0.12], [0, 0]), modesOf([20, 2], [0.7, 0.2], [3, 8])] as const
const tails = [1, 2] as const
const before = [Float64Array.of(3, 20), Float64Array.of(1, 9)]
/** Of all tails together, as the run links them. */
const [admittance, driven, store] = [0.18, 1.3, 0.004]
const C = 0.05
const iron: HeatSource = { kind: 'iron', setRiseK: 300, maximumW: 80, resistanceKPerW: 5 }
const heavy: HeatSource = { kind: 'heavy-iron', setRiseK: 300, maximumW: 80, tipResistanceKPerW: 2, contactResistanceKPerW: 3, capacityJPerK: 0.4 }

const tablesFor = (durationS: number) =>
  wires.map((modes) => {
    const table = emptyTable(2)
    fillTable(modes, durationS, table)
    return table
  })

function solved(source: HeatSource, joint: Lump, body: Lump | null, durationS: number): HeatingStep {
  const model: HeatModel = {
    ambientC: 20,
    source,
    surfaceM2: 1e-4,
    filmWPerM2K: 40,
    emissivity: 0,
    capacityJPerK: C,
    melt: { solidusRiseK: 163, liquidusRiseK: 163, latentJ: 2 },
    wettedRiseK: 200,
    wires: tails.map((count) => ({ tails: count })) as unknown as HeatModel['wires'],
    wireOf: [0, 1],
    toolOffS: 1,
    observeS: 2,
    sampleTimesS: [],
    accuracy: 1,
  }
  const step = newStep(
    model,
    joint,
    body,
    false,
    before.map((values) => Float64Array.from(values)),
  )
  step.modes = wires
  Object.assign(step, { admittanceWPerK: admittance, drivenW: driven, jointStoreJPerK: store })
  solveStep(step, durationS, tablesFor(durationS))
  return step
}

/** Flow into all tails at the share x of a step, from the modes themselves. */
function flowW(durationS: number, x: number, start: number, first: number, last: number, rise: number): number {
  const out = new Float64Array(2)
  return wires.reduce(
    (sum, modes, w) => {
      rowWithin(modes, modes.coupling, before[w] ?? none, durationS, x, start, first, last, out)
      return sum - (tails[w] ?? 0) * (out[0] ?? 0)
    },
    admittance * rise - driven,
  )
}

describe('one step with wires', () => {
  test.each([0.001, 0.05, 0.4, 3])('of %s s keeps the balance of joint, surface and wires at both stages', (durationS) => {
    const step = solved(iron, newLump(C, null, 50), null, durationS)
    const { joint1: t1, joint2: t2 } = step
    const f1 = (300 - t1) / 5 - 4e-3 * t1 - flowW(durationS, firstStage, 50, t1, t2, t1)
    const f2 = (300 - t2) / 5 - 4e-3 * t2 - flowW(durationS, 1, 50, t1, t2, t2)
    expect((C + store) * (t1 - 50)).toBeCloseTo(durationS * ((5 / 12) * f1 - f2 / 12), 9)
    expect((C + store) * (t2 - 50)).toBeCloseTo(durationS * ((3 / 4) * f1 + f2 / 4), 9)
    expect([step.jointMoves1, step.jointMoves2]).toEqual([t1, t2])
  })

  test('a tip with mass: its balance and the joint, at once', () => {
    const step = solved(heavy, newLump(C, null, 50), newLump(0.4, null, 290), 0.1)
    const { joint1: t1, joint2: t2, body1: b1, body2: b2 } = step
    const joint = (t: number, b: number, x: number): number => (b - t) / 3 - 4e-3 * t - flowW(0.1, x, 50, t1, t2, t)
    const tip = (t: number, b: number): number => (300 - b) / 2 - (b - t) / 3
    const [f1, f2] = [joint(t1, b1, firstStage), joint(t2, b2, 1)]
    expect((C + store) * (t1 - 50)).toBeCloseTo(0.1 * ((5 / 12) * f1 - f2 / 12), 9)
    expect((C + store) * (t2 - 50)).toBeCloseTo(0.1 * ((3 / 4) * f1 + f2 / 4), 9)
    expect(0.4 * (b2 - 290)).toBeCloseTo(0.1 * ((3 / 4) * tip(t1, b1) + tip(t2, b2) / 4), 9)
  })

  test('on a plateau the wires draw from the melt', () => {
    const lump = Object.assign(newLump(C, { solidusRiseK: 163, liquidusRiseK: 163, latentJ: 2 }, 163), { phase: 'melting', share: 0.25 })
    const step = solved(iron, lump, null, 0.05)
    const f = (x: number): number => (300 - 163) / 5 - 4e-3 * 163 - flowW(0.05, x, 163, 163, 163, 163)
    expect([step.joint1, step.joint2]).toEqual([163, 163])
    expect(step.jointMoves1).toBeCloseTo(0.25 + (0.05 * ((5 / 12) * f(firstStage) - f(1) / 12)) / 2, 12)
    expect(step.jointMoves2).toBeCloseTo(0.25 + (0.05 * ((3 / 4) * f(firstStage) + f(1) / 4)) / 2, 12)
  })
})

describe('Newton', () => {
  const melt = { solidusRiseK: 163, liquidusRiseK: 163, latentJ: 2 }
  const melting = (store: number): Lump => Object.assign(newLump(store, melt, 163), { phase: 'melting', share: 0.25 })
  const tube: HeatTube = {
    kind: 'tube',
    airRiseK: 330,
    film: constantFilm(140),
    stillFilmWPerM2K: 0,
    emissivity: 0,
    outsideM2: 4e-4,
    capacityJPerK: 0.3,
    recoveryRiseK: 500,
    gripped: true,
    tightWPerK: 0.05,
    gapM: 0.02,
    gapAir: constantFilm(0.03),
    gapM2: 6e-5,
    gapEmissivity: 0.9,
  }
  const solutions = (source: HeatSource, joint: Lump, body: Lump | null, durationS: number): number => {
    vi.mocked(solveLinear).mockClear()
    solved(source, joint, body, durationS)
    return vi.mocked(solveLinear).mock.calls.length
  }

  test.each<[string, HeatSource, Lump, Lump | null]>([
    ['a joint', iron, newLump(C, null, 50), null],
    ['a joint and a tip with mass', heavy, newLump(C, null, 50), newLump(0.4, null, 290)],
    ['a light tip at a joint', heavy, newLump(C, null, 50), newLump(0.02, null, 290)],
    ['a joint in a tube', tube, newLump(C, null, 60), newLump(0.3, null, 118)],
    ['a joint on a plateau and a free tip', heavy, melting(C), newLump(0.4, null, 290)],
    ['a free joint and a ring on a plateau', tube, newLump(C, null, 60), melting(0.3)],
  ])('%s without radiation is solved by one change: the next finds nothing to do', (_name, source, joint, body) => {
    for (const durationS of [0.01, 0.2, 3]) expect(solutions(source, joint, body, durationS)).toBe(2)
  })

  test('on a plateau the joint stands, free as it was a step before, and the tip goes on', () => {
    const joint = newLump(C, melt, 150)
    const step = solved(heavy, joint, newLump(0.4, null, 290), 0.1)
    Object.assign(joint, { phase: 'melting', share: 0.25, riseK: 163 })
    solveStep(step, 0.1, tablesFor(0.1))
    const alone = solved(heavy, melting(C), newLump(0.4, null, 290), 0.1)
    expect([step.joint1, step.joint2, step.body1, step.body2]).toEqual([163, 163, alone.body1, alone.body2])
    const tip = (b: number): number => (300 - b) / 2 - (b - 163) / 3
    expect(0.4 * (step.body2 - 290)).toBeCloseTo(0.1 * ((3 / 4) * tip(step.body1) + tip(step.body2) / 4), 9)
  })

  test('what is no number ends at once, by name', () => {
    expect(() => solutions(iron, newLump(C, null, Number.NaN), null, 0.1)).toThrow(ConvergenceError)
    expect(vi.mocked(solveLinear)).toHaveBeenCalledTimes(1)
  })

  test('with a tube that radiates its digits double: four changes at most', () => {
    for (const durationS of [0.01, 0.2, 3]) {
      expect(solutions({ ...tube, emissivity: 0.8 }, newLump(C, null, 60), newLump(0.3, null, 118), durationS)).toBeLessThanOrEqual(4)
    }
  })
})

describe("the estimate of a step's error", () => {
  /** What the parabola's slope at the start misses, shared out as an implicit step of 4/27 of the length would: C e = s (C miss + J e). */
  const shared = (
    durationS: number,
    stores: readonly [number, number],
    miss: readonly [number, number],
    J: readonly [number, number, number, number],
  ): number => {
    const s = (4 / 27) * durationS
    const [a, b, c, d] = [stores[0] - s * J[0], -s * J[1], -s * J[2], stores[1] - s * J[3]]
    const [p, q] = [s * stores[0] * miss[0], s * stores[1] * miss[1]]
    const det = a * d - b * c
    return Math.max(Math.abs((p * d - q * b) / det), Math.abs((a * q - c * p) / det))
  }

  test.each([0.02, 0.1, 0.5])('with wires, a step of %s s: what is amiss at its start, less what lump, tool and wires give back', (durationS) => {
    const step = solved(iron, newLump(C, null, 50), null, durationS)
    const now = (300 - 50) / 5 - 4e-3 * 50 - flowW(durationS, 0, 50, step.joint1, step.joint2, 50)
    const miss = startSlope(50, step.joint1, step.joint2) / durationS - now / (C + store)
    // What the wires take at once for each kelvin at the end: the flow there against the end's rise alone.
    const own = flowW(durationS, 1, 50, step.joint1, step.joint2 + 1, step.joint2 + 1) - flowW(durationS, 1, 50, step.joint1, step.joint2, step.joint2)
    expect(step.errorK).toBeCloseTo(shared(durationS, [C + store, 1], [miss, 0], [-1 / 5 - 4e-3 - own, 0, 0, 0]), 7)
  })

  test.each([
    [0.02, 290, 0.05],
    [0.1, 290, 0.05],
    [0.1, 100, 0.02],
    [0.4, 100, 0.2],
  ])('with a tip with mass, a step of %s s from %s K', (durationS, tipK, massJPerK) => {
    const step = solved({ ...heavy, capacityJPerK: massJPerK }, newLump(C, null, 50), newLump(massJPerK, null, tipK), durationS)
    const own = flowW(durationS, 1, 50, step.joint1, step.joint2 + 1, step.joint2 + 1) - flowW(durationS, 1, 50, step.joint1, step.joint2, step.joint2)
    const now = (tipK - 50) / 3 - 4e-3 * 50 - flowW(durationS, 0, 50, step.joint1, step.joint2, 50)
    const joint = startSlope(50, step.joint1, step.joint2) / durationS - now / (C + store)
    const tip = startSlope(tipK, step.body1, step.body2) / durationS - ((300 - tipK) / 2 - (tipK - 50) / 3) / massJPerK
    const J = [-1 / 3 - 4e-3 - own, 1 / 3, 1 / 3, -1 / 3 - 1 / 2] as const
    expect(step.errorK).toBeCloseTo(shared(durationS, [C + store, massJPerK], [joint, tip], J), 7)
  })

  test('it is the error at the first stage, or up to a quarter more', () => {
    for (const [durationS, tipK, massJPerK] of [
      [0.02, 290, 0.05],
      [0.1, 290, 0.05],
      [0.05, 100, 0.02],
      [0.2, 290, 0.2],
    ] as const) {
      // Joint and tip by many short steps of the midpoint rule.
      let [t, b] = [50, tipK]
      const n = 4000
      const h = durationS / 3 / n
      const rate = (joint: number, tip: number) => [((tip - joint) / 3 - 4e-3 * joint) / C, ((300 - tip) / 2 - (tip - joint) / 3) / massJPerK] as const
      for (let k = 0; k < n; k++) {
        const [dt, db] = rate(t, b)
        const [mt, mb] = rate(t + (h / 2) * dt, b + (h / 2) * db)
        t += h * mt
        b += h * mb
      }
      const { model } = solved(iron, newLump(C, null, 50), null, 0.1)
      const step = newStep({ ...model, source: heavy, wires: [] }, newLump(C, null, 50), newLump(massJPerK, null, tipK), false, [])
      solveStep(step, durationS, [])
      const error = Math.max(Math.abs(step.joint1 - t), Math.abs(step.body1 - b))
      expect(step.errorK / error).toBeGreaterThan(1)
      expect(step.errorK / error).toBeLessThan(1.25)
    }
  })
})
