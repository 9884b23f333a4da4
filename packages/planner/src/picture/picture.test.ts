import { describe, expect, test } from 'vitest'
import { bilgePumpFeed, trailerTailLamp } from '../demo/index.ts'
import { planRepair } from '../plan/planRepair.ts'
import { currentCurve } from './currentCurve.ts'
import { heatingCurves } from './heatingCurves.ts'
import { jointPicture } from './jointPicture.ts'

const near = (a: number, b: number) => Math.abs(a - b) < 1e-9 * Math.abs(b)

describe('heating curves', () => {
  const picture = heatingCurves(bilgePumpFeed)
  const curve = picture?.curves[0]

  test('start at the air’s temperature, rise, and stay in their band', () => {
    expect(curve?.jointC[0]).toBeCloseTo(18, 6)
    for (const [index, joint] of (curve?.jointC ?? []).entries()) {
      if (index > 0) expect(joint).toBeGreaterThanOrEqual((curve?.jointC[index - 1] ?? 0) - 0.3)
      expect(joint).toBeGreaterThanOrEqual((curve?.jointLowC[index] ?? 0) - 0.6)
      expect(joint).toBeLessThanOrEqual((curve?.jointHighC[index] ?? 0) + 0.6)
    }
  })

  test('the weak tool stays under the liquidus that the plan names', () => {
    expect(picture?.liquidusC).toBe(138)
    expect(Math.max(...(curve?.jointC ?? []))).toBeLessThan(138)
  })

  test('a crimp has none', () => {
    expect(heatingCurves(trailerTailLamp)).toBeNull()
  })
})

describe('the current curve', () => {
  const picture = currentCurve(bilgePumpFeed)

  test('begins at the hottest air, rises, and reaches the limit at the current that the plan names', () => {
    expect(picture.lowC[0]).toBeCloseTo(45, 6)
    for (let index = 1; index < picture.currentA.length; index++) expect(picture.highC[index]).toBeGreaterThan(picture.highC[index - 1] ?? 0)
    const planned = planRepair(bilgePumpFeed).sections[1]?.values.find((value) => value.name.startsWith('wire, for ever'))
    expect(near(picture.limitA ?? 0, planned?.value ?? 1)).toBe(true)
  })

  test('ends where no steady temperature is left', () => {
    const hot = currentCurve({ ...trailerTailLamp, load: { currentA: 400 } })
    expect(hot.currentA.length).toBeLessThan(25)
    expect(hot.highC.every(Number.isFinite)).toBe(true)
  })
})

describe('the joint’s picture', () => {
  test('strands do not overlap, lie inside the wire, and the sleeve shrinks onto the joint', () => {
    const picture = jointPicture(bilgePumpFeed)
    expect(picture.strands.length).toBe(19)
    for (const [index, a] of picture.strands.entries()) {
      expect(Math.hypot(a.xMm, a.yMm) + picture.strandMm / 2).toBeLessThanOrEqual(picture.conductorMm / 2 + 1e-9)
      for (const b of picture.strands.slice(index + 1)) expect(Math.hypot(a.xMm - b.xMm, a.yMm - b.yMm)).toBeGreaterThanOrEqual(picture.strandMm - 1e-9)
    }
    const [layer] = picture.layers
    expect(layer?.suppliedInsideMm).toBeGreaterThan(layer?.insideMm ?? 0)
    expect(layer?.outsideMm).toBeGreaterThan(layer?.insideMm ?? 0)
  })

  test('agrees with the plan on overlap and outside', () => {
    const values = planRepair(bilgePumpFeed).sections.flatMap((section) => section.values)
    const picture = jointPicture(bilgePumpFeed)
    expect(picture.jointMm).toBe(values.find((value) => value.name === 'overlap')?.value)
    expect(near(picture.layers[0]?.outsideMm ?? 0, values.find((value) => value.name === 'outside after shrinking')?.value ?? 1)).toBe(true)
  })
})
