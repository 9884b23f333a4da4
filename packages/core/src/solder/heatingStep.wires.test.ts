import { describe, expect, test } from 'vitest'
import { solveStep } from './heatingStep.ts'
import type { HeatModel, HeatSource } from './heatModel.ts'
import { type Lump, newLump } from './lump.ts'
import { firstStage } from './moments.ts'
import { rowWithin } from './rowWithin.ts'
import { type HeatingStep, newStep } from './stepState.ts'
import { emptyTable, fillTable } from './stepTable.ts'
import type { WireModes } from './wireModes.ts'

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
  solveStep(
    step,
    durationS,
    wires.map((modes) => {
      const table = emptyTable(2)
      fillTable(modes, durationS, table)
      return table
    }),
  )
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

describe('the estimate of a step’s error', () => {
  /** Ends of many short steps are the truth that one long step is held against. */
  test('with a tip with mass it is near the error at the first stage', () => {
    for (const [durationS, tipStart] of [
      [0.02, 290],
      [0.05, 290],
      [0.02, 100],
    ] as const) {
      const exact = (share: number): readonly [number, number] => {
        // x = T - setC of tip and joint under their links alone, by many small steps of the midpoint rule.
        let [t, b] = [50, tipStart]
        const n = 4000
        const h = (share * durationS) / n
        const rate = (joint: number, tip: number): readonly [number, number] => [
          ((tip - joint) / 3 - 4e-3 * joint) / C,
          ((300 - tip) / 2 - (tip - joint) / 3) / 0.05,
        ]
        for (let k = 0; k < n; k++) {
          const [dt, db] = rate(t, b)
          const [mt, mb] = rate(t + (h / 2) * dt, b + (h / 2) * db)
          t += h * mt
          b += h * mb
        }
        return [t, b]
      }
      const source: HeatSource = { ...heavy, capacityJPerK: 0.05 }
      const model = { ...solved(iron, newLump(C, null, 50), null, 0.1).model, source, wires: [] }
      const step = newStep(model, newLump(C, null, 50), newLump(0.05, null, tipStart), false, [])
      solveStep(step, durationS, [])
      const [t, b] = exact(firstStage)
      const error = Math.max(Math.abs(step.joint1 - t), Math.abs(step.body1 - b))
      expect(step.errorK / error).toBeGreaterThan(0.6)
      expect(step.errorK / error).toBeLessThan(1.7)
    }
  })
})
