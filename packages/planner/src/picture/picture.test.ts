import { describe, expect, test } from 'vitest'
import { bilgePumpFeed, gardenRailwayFeeder, trailerTailLamp } from '../demo/index.ts'
import { planWithPictures } from './index.ts'

const near = (a: number, b: number) => Math.abs(a - b) < 1e-9 * Math.abs(b)

describe('heating curves', () => {
  const { pictures } = planWithPictures(bilgePumpFeed)
  const curve = pictures?.heating?.curves[0]

  test('start at the air’s temperature, rise, and stay in their band', () => {
    expect(curve?.jointC[0]).toBeCloseTo(18, 6)
    for (const [index, joint] of (curve?.jointC ?? []).entries()) {
      if (index > 0) expect(joint).toBeGreaterThanOrEqual((curve?.jointC[index - 1] ?? 0) - 0.3)
      expect(joint).toBeGreaterThanOrEqual((curve?.jointLowC[index] ?? 0) - 0.6)
      expect(joint).toBeLessThanOrEqual((curve?.jointHighC[index] ?? 0) + 0.6)
    }
  })

  test('the weak tool stays under the liquidus that the plan names', () => {
    expect(pictures?.heating?.liquidusC).toBe(138)
    expect(Math.max(...(curve?.jointC ?? []))).toBeLessThan(138)
  })

  test('a crimp has none', () => {
    expect(planWithPictures(trailerTailLamp).pictures?.heating).toBeNull()
  })
})

describe('the current curve', () => {
  const { plan, pictures } = planWithPictures(bilgePumpFeed)

  test('begins at the hottest air, rises, and reaches the limit at the current that the plan names', () => {
    const currents = pictures?.currents
    expect(currents?.lowC[0]).toBeCloseTo(45, 6)
    for (let index = 1; index < (currents?.currentA.length ?? 0); index++) expect(currents?.highC[index]).toBeGreaterThan(currents?.highC[index - 1] ?? 0)
    const planned = plan.sections[1]?.values.find((value) => value.name.startsWith('wire at steady state'))
    expect(near(currents?.limitA ?? 0, planned?.value ?? 1)).toBe(true)
  })
})

describe('the joint’s picture is the decided one', () => {
  test('strands do not overlap and lie inside the wire', () => {
    const joint = planWithPictures(bilgePumpFeed).pictures?.joint
    expect(joint?.form).toBe('terminal')
    expect(joint?.strands.length).toBe(19)
    for (const [index, a] of (joint?.strands ?? []).entries()) {
      expect(Math.hypot(a.xMm, a.yMm) + (joint?.strandMm ?? 0) / 2).toBeLessThanOrEqual((joint?.conductorMm ?? 0) / 2 + 1e-9)
      for (const b of (joint?.strands ?? []).slice(index + 1))
        expect(Math.hypot(a.xMm - b.xMm, a.yMm - b.yMm)).toBeGreaterThanOrEqual((joint?.strandMm ?? 0) - 1e-9)
    }
  })

  test('agrees with the plan on overlap, cut length and outside', () => {
    const { plan, pictures } = planWithPictures(gardenRailwayFeeder)
    const values = plan.sections.flatMap((section) => section.values)
    expect(pictures?.joint?.jointMm).toBe(values.find((value) => value.name === 'overlap')?.value)
    const [layer] = pictures?.joint?.layers ?? []
    expect(layer?.cutMm).toBe(plan.decision.lengths.find(({ name }) => name === 'sleeve')?.value)
    expect(near(layer?.outsideMm ?? 0, values.find((value) => value.name === 'outside after shrinking')?.value ?? 1)).toBe(true)
  })

  test('nothing is drawn where nothing is joined', () => {
    const unseen = { ...trailerTailLamp, damage: { kind: 'unknown', fromTerminationMm: 600 } as const, readings: [] }
    expect(planWithPictures(unseen).pictures?.joint).toBeNull()
  })
})
