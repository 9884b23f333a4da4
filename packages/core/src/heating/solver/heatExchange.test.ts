import { describe, expect, test } from 'vitest'
import { jointModel, tube as loose } from '../heatModel.sample.ts'
import type { HeatSource } from '../heatModel.ts'
import { constantFilm, tabled } from '../streamFilm.ts'
import { exchange, isLimited, limitedBelowK, X } from './heatExchange.ts'

const sigma = 5.670374419e-8
const model = jointModel({ kind: 'none' })
const iron: HeatSource = { kind: 'iron', setRiseK: 340, maximumW: 50, resistanceKPerW: 5 }
const heavy: HeatSource = { kind: 'heavy-iron', setRiseK: 340, maximumW: 50, tipResistanceKPerW: 2, contactResistanceKPerW: 3, capacityJPerK: 1 }
const air: HeatSource = { kind: 'air', airRiseK: 330, film: constantFilm(150) }
const tube: HeatSource = { ...loose, recoveryRiseK: 90, gapAir: tabled(20, 0, 400, (c) => 0.025 + 6e-5 * c) }
const off: HeatSource = { ...tube, film: null }
const at = (source: HeatSource, limited: boolean, rise: number, body: number): number[] => {
  const out = new Float64Array(8)
  exchange(model, source, limited, rise, body, out)
  return [...out]
}
const lost = (rise: number): number => 0.3 * sigma * 80e-6 * ((rise + 293.15) ** 4 - 293.15 ** 4)

describe('flows into the joint and the tool', () => {
  test('an iron, free and at its limit', () => {
    expect(at(iron, false, 120, 0)[X.joint]).toBeCloseTo(220 / 5 - lost(120) - 15 * 80e-6 * 120, 12)
    expect(at(iron, true, 120, 0)[X.joint]).toBeCloseTo(50 - lost(120) - 15 * 80e-6 * 120, 12)
    expect(at(iron, false, 120, 0)[X.heatIn]).toBeCloseTo(44, 12)
    expect(at(iron, true, 120, 0)[X.heatIn]).toBe(50)
  })

  test('a tip with mass hands over by its contact and is fed by its heater', () => {
    const free = at(heavy, false, 120, 300)
    expect(free[X.heatIn]).toBeCloseTo(60, 12)
    expect(free[X.body]).toBeCloseTo(40 / 2 - 60, 12)
    expect(at(heavy, true, 120, 300)[X.body]).toBeCloseTo(50 - 60, 12)
  })

  test('a stream replaces the still air and leaves radiation', () => {
    expect(at(air, false, 120, 0)[X.joint]).toBeCloseTo(150 * 80e-6 * 210 - lost(120), 12)
    expect(at({ kind: 'none' }, false, 120, 0)[X.joint]).toBeCloseTo(-lost(120) - 15 * 80e-6 * 120, 12)
    expect(at(air, false, 120, 0)[X.surface]).toBeCloseTo(lost(120), 12)
  })

  test('a tube alone meets the air', () => {
    const loose = at(tube, false, 60, 150)
    const link = (0.1 * (0.025 + 6e-5 * 125) + 0.9 * sigma * 60e-6 * ((443.15 ** 4 - 353.15 ** 4) / 90)) * 90
    expect(loose[X.joint]).toBeCloseTo(link, 9)
    const radiated = 0.8 * sigma * 390e-6 * (443.15 ** 4 - 293.15 ** 4)
    expect(loose[X.surface]).toBeCloseTo(radiated, 12)
    expect(loose[X.body]).toBeCloseTo(140 * 390e-6 * 180 - radiated - link, 9)
    expect(at({ ...tube, gripped: true }, false, 60, 150)[X.joint]).toBeCloseTo(0.04 * 90, 12)
    const still = at(off, false, 60, 150)
    expect(still[X.heatIn]).toBe(0)
    expect(still[X.surface]).toBeCloseTo(radiated + 12 * 390e-6 * 150, 12)
  })

  test.each([
    ['iron', iron, false, 120, 0],
    ['limited iron', iron, true, 120, 0],
    ['tip with mass', heavy, false, 120, 280],
    ['limited tip with mass', heavy, true, 120, 280],
    ['hot air', air, false, 120, 0],
    ['gripping tube', { ...tube, gripped: true }, false, 60, 150],
    ['gripping tube in still air', { ...off, gripped: true }, false, 60, 150],
    ['nothing', { kind: 'none' }, false, 120, 0],
  ] as const)('%s: each slope is the change of its flow', (_name, source, limited, rise, body) => {
    const h = 1e-3
    const here = at(source, limited, rise, body)
    const change = (which: number, dr: number, db: number): number =>
      ((at(source, limited, rise + dr, body + db)[which] ?? 0) - (at(source, limited, rise - dr, body - db)[which] ?? 0)) / (2 * h)
    expect(here[X.jointByJoint]).toBeCloseTo(change(X.joint, h, 0), 8)
    expect(here[X.jointByBody]).toBeCloseTo(change(X.joint, 0, h), 8)
    expect(here[X.bodyByJoint]).toBeCloseTo(change(X.body, h, 0), 8)
    expect(here[X.bodyByBody]).toBeCloseTo(change(X.body, 0, h), 8)
  })

  test('a loose tube: the slope leaves aside how the gap itself changes', () => {
    const here = at(tube, false, 60, 150)
    expect(here[X.jointByBody]).toBeCloseTo((here[X.joint] ?? 0) / 90, 12)
    expect(here[X.jointByJoint]).toBe(-(here[X.jointByBody] ?? 0))
    expect(here[X.bodyByJoint]).toBe(here[X.jointByBody])
  })
})

describe("the heater's limit", () => {
  test('acts below a rise of the joint, or of a tip with mass', () => {
    expect(limitedBelowK(iron)).toBe(340 - 250)
    expect(limitedBelowK(heavy)).toBe(340 - 100)
    expect(limitedBelowK(air)).toBe(-Infinity)
    expect(limitedBelowK({ ...iron, maximumW: Infinity })).toBe(-Infinity)
    expect([isLimited(iron, 89, 0), isLimited(iron, 91, 0)]).toEqual([true, false])
    expect([isLimited(heavy, 0, 239), isLimited(heavy, 0, 241)]).toEqual([true, false])
    expect(isLimited(air, 0, 0)).toBe(false)
  })
})
