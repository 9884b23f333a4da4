import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { HeatModel, HeatSource } from '../heatModel.ts'
import { solveStep } from './heatingStep.ts'
import { newLump } from './lump.ts'
import { parabolaAt } from './parabola.ts'
import { solveLinear } from './solveLinear.ts'
import { newStep } from './stepState.ts'

const C = 0.05
const model = (source: HeatSource, filmWPerM2K = 0, emissivity = 0): HeatModel => ({
  ambientC: 20,
  source,
  surfaceM2: 100e-6,
  filmWPerM2K,
  emissivity,
  capacityJPerK: C,
  melt: { solidusRiseK: 163, liquidusRiseK: 163, latentJ: 2 },
  wettedRiseK: 200,
  wires: [],
  wireOf: [],
  toolOffS: 1,
  observeS: 2,
  sampleTimesS: [],
  accuracy: 1,
})
const iron: HeatSource = { kind: 'iron', setRiseK: 300, maximumW: 80, resistanceKPerW: 5 }

describe('one step without wires', () => {
  test("is Radau's rational function of the exponential", () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-4, max: 5, noNaN: true }), fc.double({ min: 0, max: 290, noNaN: true }), (durationS, startK) => {
        const step = newStep(model(iron), newLump(C, null, startK), null, false, [])
        solveStep(step, durationS, [])
        const z = -durationS / (5 * C)
        const left = (1 + z / 3) / (1 - (2 * z) / 3 + (z * z) / 6)
        expect(step.joint2).toBeCloseTo(300 + (startK - 300) * left, 8)
        // The first stage keeps its own balance: with the end it makes the slope there.
        const slopeAtThird = (step.joint2 - startK) * 0.5 + (step.joint1 - startK) * 1.5
        expect((slopeAtThird * C) / durationS).toBeCloseTo((300 - step.joint1) / 5, 6)
        expect(step.heatInJ).toBeCloseTo(C * (step.joint2 - startK), 8)
      }),
    )
  })

  test('the estimate of its error is the error at the first stage', () => {
    for (const durationS of [0.005, 0.02, 0.05]) {
      const step = newStep(model(iron), newLump(C, null, 0), null, false, [])
      solveStep(step, durationS, [])
      const exact = (share: number): number => 300 - 300 * Math.exp((-share * durationS) / (5 * C))
      const error = Math.abs(step.joint1 - exact(1 / 3))
      expect(step.errorK / error).toBeGreaterThan(0.7)
      expect(step.errorK / error).toBeLessThan(1.5)
      // Nowhere within the step is it much larger.
      for (let x = 0; x <= 1; x += 0.05) expect(Math.abs(parabolaAt(0, step.joint1, step.joint2, x) - exact(x))).toBeLessThan(1.2 * error)
    }
  })

  test("at the heater's limit it rises evenly, with no error", () => {
    const step = newStep(model(iron), newLump(C, null, 10), null, true, [])
    solveStep(step, 0.03, [])
    expect(step.joint2).toBeCloseTo(10 + (80 * 0.03) / C, 10)
    expect(step.joint1).toBeCloseTo(10 + (80 * 0.01) / C, 10)
    expect(step.errorK).toBeLessThan(1e-9)
  })

  test('on a plateau the share moves, the rise stands, and what the surface loses counts', () => {
    const lump = newLump(C, { solidusRiseK: 163, liquidusRiseK: 163, latentJ: 2 }, 163)
    lump.phase = 'melting'
    lump.share = 0.25
    const step = newStep(model(iron, 50), lump, null, false, [])
    solveStep(step, 0.02, [])
    const power = (300 - 163) / 5 - 50 * 100e-6 * 163
    expect([step.joint1, step.joint2]).toEqual([163, 163])
    expect(step.jointMoves2).toBeCloseTo(0.25 + (power * 0.02) / 2, 12)
    expect(step.jointMoves1).toBeCloseTo(0.25 + (power * 0.02) / 6, 12)
    expect(step.surfaceJ).toBeCloseTo(50 * 100e-6 * 163 * 0.02, 12)
  })

  test('radiation is solved to the last digit', () => {
    const step = newStep(model({ kind: 'none' }, 0, 1), newLump(C, null, 1500), null, false, [])
    solveStep(step, 0.5, [])
    const balance = (rise: number): number => -5.670374419e-8 * 100e-6 * ((rise + 293.15) ** 4 - 293.15 ** 4)
    expect(C * (step.joint1 - 1500)).toBeCloseTo(0.5 * ((5 / 12) * balance(step.joint1) - balance(step.joint2) / 12), 9)
    expect(C * (step.joint2 - 1500)).toBeCloseTo(0.5 * ((3 / 4) * balance(step.joint1) + balance(step.joint2) / 4), 9)
    expect(step.surfaceJ).toBeCloseTo(C * (1500 - step.joint2), 9)
  })

  test.each([false, true])('a tip with mass, limited: %s, keeps both balances at both stages', (limited) => {
    const heavy: HeatSource = { kind: 'heavy-iron', setRiseK: 300, maximumW: 20, tipResistanceKPerW: 2, contactResistanceKPerW: 3, capacityJPerK: 0.4 }
    const step = newStep(model(heavy, 40), newLump(C, null, 50), newLump(0.4, null, 290), limited, [])
    solveStep(step, 0.1, [])
    const joint = (t: number, b: number): number => (b - t) / 3 - 40 * 100e-6 * t
    const tip = (t: number, b: number): number => (limited ? 20 : (300 - b) / 2) - (b - t) / 3
    const { joint1: t1, joint2: t2, body1: b1, body2: b2 } = step
    expect(C * (t1 - 50)).toBeCloseTo(0.1 * ((5 / 12) * joint(t1, b1) - joint(t2, b2) / 12), 9)
    expect(C * (t2 - 50)).toBeCloseTo(0.1 * ((3 / 4) * joint(t1, b1) + joint(t2, b2) / 4), 9)
    expect(0.4 * (b1 - 290)).toBeCloseTo(0.1 * ((5 / 12) * tip(t1, b1) - tip(t2, b2) / 12), 9)
    expect(0.4 * (b2 - 290)).toBeCloseTo(0.1 * ((3 / 4) * tip(t1, b1) + tip(t2, b2) / 4), 9)
    expect([step.bodyMoves1, step.bodyMoves2]).toEqual([b1, b2])
    expect(step.heatInJ).toBeCloseTo(0.1 * ((3 / 4) * ((b1 - t1) / 3) + (b2 - t2) / 12), 9)
  })

  test('a tube whose ring melts: its share moves, the joint goes on', () => {
    const gap = { coefficientsWPerM2K: Float64Array.of(0), lowRiseK: 0, highRiseK: 1 }
    const tube: HeatSource = {
      kind: 'tube',
      airRiseK: 330,
      film: { ...gap, coefficientsWPerM2K: Float64Array.of(140) },
      stillFilmWPerM2K: 0,
      emissivity: 0,
      outsideM2: 400e-6,
      capacityJPerK: 0.3,
      recoveryRiseK: 500,
      gripped: true,
      tightWPerK: 0.05,
      gapM: 0,
      gapAir: gap,
      gapM2: 0,
      gapEmissivity: 0,
    }
    const body = newLump(0.3, { solidusRiseK: 118, liquidusRiseK: 118, latentJ: 2 }, 118)
    body.phase = 'melting'
    const step = newStep(model(tube), newLump(C, null, 60), body, false, [])
    solveStep(step, 0.2, [])
    const flow = (t: number): number => 140 * 400e-6 * 212 - 0.05 * (118 - t)
    expect([step.body1, step.body2]).toEqual([118, 118])
    expect(step.bodyMoves1).toBeCloseTo((0.2 * ((5 / 12) * flow(step.joint1) - flow(step.joint2) / 12)) / 2, 9)
    expect(step.bodyMoves2).toBeCloseTo((0.2 * ((3 / 4) * flow(step.joint1) + flow(step.joint2) / 4)) / 2, 9)
    const z = (-0.2 * 0.05) / C
    expect(step.joint2).toBeCloseTo(118 - 58 * ((1 + z / 3) / (1 - (2 * z) / 3 + (z * z) / 6)), 8)
  })
})

test('the linear solver leaves nothing over', () => {
  const entry = fc.integer({ min: -9, max: 9 })
  fc.assert(
    fc.property(
      fc.constantFrom(2, 3, 4),
      fc.array(entry, { minLength: 16, maxLength: 16 }),
      fc.array(entry, { minLength: 4, maxLength: 4 }),
      (n, list, right) => {
        const matrix = Float64Array.from(list, (value, k) => value + (k % 5 === 0 ? 0.5 : 0))
        const answer = Float64Array.from(right)
        solveLinear(n, Float64Array.from(matrix), answer)
        fc.pre(answer.slice(0, n).every((value) => Math.abs(value) < 1e6))
        for (let i = 0; i < n; i++) {
          let sum = 0
          for (let j = 0; j < n; j++) sum += (matrix[i * 4 + j] ?? 0) * (answer[j] ?? 0)
          expect(Math.abs(sum - (right[i] ?? 0))).toBeLessThan(1e-6)
        }
      },
    ),
  )
})
