import { describe, expect, test } from 'vitest'
import { heatJoint } from './heatJoint.ts'
import type { HeatJointInput, HeatSide } from './heatJointTypes.ts'

/** Stores heat in the lap but conducts almost none away: a lump without wires. */
const noWires: HeatSide = {
  areaMm2: 0.01,
  densityKgPerM3: 8890,
  specificHeatJPerKgK: 385,
  conductivityWPerMK: 1e-9,
  stubMm: 1,
  stubFilmWPerM2K: 0,
  insulation: 'PVC',
  insulationOutsideMm: 0.2,
  insulationFilmWPerM2K: 0,
}
const solid = { solidusC: 2500, liquidusC: 2500, densityKgPerM3: 8000, specificHeatJPerKgK: 0, latentHeatJPerKg: 0 }
const lump: HeatJointInput = {
  ambientC: 20,
  tool: { kind: 'iron', setC: 360, tipResistanceKPerW: 2, contactResistanceKPerW: 6 },
  joint: { lapMm: 1000, diameterMm: 2, surfaceMm2: 80, solderMm3: 0, filmWPerM2K: 30, emissivity: 0 },
  conductors: [noWires],
  alloy: solid,
  toolOffS: 2,
  observeS: 2,
  sampleTimesS: [0.1, 0.3, 1, 2],
}
const store = 1e-8 * 8890 * 385

describe('thermal limit 1.7a: no wires, one exponential', () => {
  const G = 1 / 8 + 30 * 80e-6
  const ends = (360 / 8 + 30 * 80e-6 * 20) / G
  test.each([1, 0.01])('joint at accuracy %s', (accuracy) => {
    const { jointC, steadyC, energyResidual } = heatJoint({ ...lump, accuracy })
    lump.sampleTimesS?.forEach((t, k) => {
      const wanted = ends + (20 - ends) * Math.exp((-t * G) / store)
      expect(Math.abs((jointC[k] ?? 0) - wanted)).toBeLessThan(0.03 * accuracy)
    })
    expect(steadyC).toBeCloseTo(ends, 3)
    expect(energyResidual).toBeLessThan(1e-3 * accuracy)
  })

  test('hot air of a given film is the same law', () => {
    const air = heatJoint({ ...lump, tool: { kind: 'hot-air', airC: 360, filmWPerM2K: 200 }, accuracy: 0.01, sampleTimesS: [1] })
    const g = 200 * 80e-6
    expect(air.jointC[0]).toBeCloseTo(360 + (20 - 360) * Math.exp(-g / store), 3)
    expect(air.steadyC).toBeCloseTo(360, 3)
  })

  test('without any loss it ends at the tool: able to melt what melts below, not what melts there', () => {
    const ever = (liquidusC: number) => {
      const input = { ...lump, joint: { ...lump.joint, filmWPerM2K: 0 }, alloy: { ...solid, solidusC: 300, liquidusC } }
      const { steadyC, everReachesLiquidus } = heatJoint(input)
      expect(steadyC).toBe(360)
      return everReachesLiquidus
    }
    expect([359.999, 360, 360.001].map(ever)).toEqual([true, false, false])
  })

  test('after the tool it cools by its own film', () => {
    const { jointC, jointAtToolOffC, jointPeakC } = heatJoint({ ...lump, observeS: 20, sampleTimesS: [2, 12], accuracy: 0.01 })
    expect(jointPeakC).toBe(jointAtToolOffC)
    const wanted = 20 + (jointAtToolOffC - 20) * Math.exp((-10 * 30 * 80e-6) / store)
    expect(jointC[1]).toBeCloseTo(wanted, 3)
  })

  test('a tip with mass against two coupled exponentials', () => {
    const Ct = 0.05
    const { jointC } = heatJoint({
      ...lump,
      tool: { kind: 'iron', setC: 360, tipResistanceKPerW: 2, contactResistanceKPerW: 6, tipHeatCapacityJPerK: Ct },
      joint: { ...(lump.joint as HeatJointInput['joint']), filmWPerM2K: 0 },
      accuracy: 0.01,
    })
    // x = T - setC of tip and joint: x' = M x, starting at (0, 20 - 360).
    const [a, b, c, d] = [-(1 / 2 + 1 / 6) / Ct, 1 / 6 / Ct, 1 / 6 / store, -1 / 6 / store]
    const root = Math.sqrt((a - d) ** 2 / 4 + b * c)
    const [l1, l2] = [(a + d) / 2 + root, (a + d) / 2 - root]
    lump.sampleTimesS?.forEach((t, k) => {
      const joint = (-340 * ((l1 - a) * Math.exp(l1 * t) - (l2 - a) * Math.exp(l2 * t))) / (l1 - l2)
      expect(jointC[k]).toBeCloseTo(360 + joint, 3)
    })
  })
})

describe('thermal limit 1.7e: plateau and mushy range at constant power, no wires', () => {
  const melt = (liquidusC: number, latentHeatJPerKg = 50_000): HeatJointInput => ({
    ...lump,
    tool: { kind: 'iron', setC: 1500, maximumW: 10, tipResistanceKPerW: 0, contactResistanceKPerW: 1 },
    joint: { lapMm: 1000, diameterMm: 2, surfaceMm2: 80, solderMm3: 5, filmWPerM2K: 0, emissivity: 0 },
    alloy: { solidusC: 183, liquidusC, densityKgPerM3: 8000, specificHeatJPerKgK: 150, latentHeatJPerKg },
    observeS: 4,
    toolOffS: 4,
    sampleTimesS: [0.75],
  })
  const mass = 5e-9 * 8000
  const C = store + mass * 150

  test.each([
    ['one temperature', 183],
    ['a range', 215],
    ['a range of a thousandth of a kelvin', 183.001],
  ] as const)('%s', (_name, liquidusC) => {
    const { solidusAtS, liquidusAtS } = heatJoint(melt(liquidusC))
    const solidus = (C * (183 - 20)) / 10
    expect((solidusAtS ?? 0) / solidus).toBeCloseTo(1, 6)
    const latent = (C * (liquidusC - 183) + mass * 50_000) / 10
    expect(((liquidusAtS ?? 0) - (solidusAtS ?? 0)) / latent).toBeCloseTo(1, 6)
  })

  test('on the plateau the joint’s temperature is constant', () => {
    const result = heatJoint(melt(183))
    expect(result.solidusAtS).toBeLessThan(0.75)
    expect(result.liquidusAtS).toBeGreaterThan(0.75)
    expect(result.jointC[0]).toBe(183)
  })

  test('without latent heat the plateau takes no time, the range its own', () => {
    const flat = heatJoint(melt(183, 0))
    expect(flat.liquidusAtS).toBe(flat.solidusAtS)
    const range = heatJoint(melt(215, 0))
    expect((range.liquidusAtS ?? 0) - (range.solidusAtS ?? 0)).toBeCloseTo((C * 32) / 10, 6)
  })

  test('it freezes along the same curve: the heat taken up until the tool is removed leaves again', () => {
    // Tool removed with the solder half molten: it solidifies again by heat loss alone.
    const input = { ...melt(183), toolOffS: 0.75, observeS: 60, joint: { ...melt(183).joint, filmWPerM2K: 100 } }
    const { resolidifiedAtS, solidusAtS, liquidusAtS, energyResidual } = heatJoint({ ...input, accuracy: 0.01 })
    expect(liquidusAtS).toBeNull()
    const g = 100 * 80e-6
    const toSolidus = -Math.log(1 - (g * 163) / 10) * (C / g)
    expect(solidusAtS).toBeCloseTo(toSolidus, 5)
    const taken = (10 - g * 163) * (0.75 - toSolidus)
    expect(resolidifiedAtS).toBeCloseTo(0.75 + taken / (g * 163), 5)
    expect(energyResidual).toBeLessThan(1e-6)
  })
})
