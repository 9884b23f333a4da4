import { describe, expect, test } from 'vitest'
import type { HeatJointInput, HeatSide, Tool } from './heatJointTypes.ts'
import { readHeatJoint } from './readHeatJoint.ts'

// A wire whose figures can be varied one at a time: its wall has no heat capacity, and conducts so well that only the film counts.
const side: HeatSide = {
  areaMm2: 1,
  diameterMm: 1.5,
  stubMm: 5,
  stubFilmWPerM2K: 0,
  insulationOutsideMm: 2.5,
  insulationConductivityWPerMK: 1e12,
  insulationFilmWPerM2K: 0,
  insulationDensityKgPerM3: 1000,
  insulationSpecificHeatJPerKgK: 1000,
  insulationShare: 0,
  insulationLimitC: 105,
}
const air: Tool = { kind: 'hot-air', airC: 350, filmWPerM2K: 100, sweptMm: 10, sweptFilmWPerM2K: 1e-3 }
const joint: HeatJointInput = {
  ambientC: 20,
  tool: air,
  joint: { lapMm: 9, diameterMm: 2.6, solderMm3: 7 },
  conductors: [side],
  alloy: 'SAC305',
  toolOffS: 2,
}
/** A wall of so little conductance that the film makes no difference. */
const thick = { diameterMm: 1e-6, insulationOutsideMm: 500, insulationConductivityWPerMK: 1e-9, insulationFilmWPerM2K: 5e6 }
const clip = { distanceMm: 4, resistanceKPerW: 8, temperatureC: 23 }

describe('wires that are alike share one solution', () => {
  const wiresOf = (a: HeatSide, b: HeatSide): number => readHeatJoint({ ...joint, conductors: [a, b] }).wires.length

  test('those that differ in nothing, or in their tails', () => {
    expect(wiresOf(side, { ...side })).toBe(1)
    expect(wiresOf({ ...side, clip }, { ...side, clip: { ...clip } })).toBe(1)
    const { wires, wireOf } = readHeatJoint({ ...joint, conductors: [side, { ...side, tails: 2 }] })
    expect(wires.map(({ tails }) => tails)).toEqual([3])
    expect(wireOf).toEqual([0, 0])
  })

  test('each conductor finds its own wire, wherever an equal one is listed', () => {
    const other = { ...side, stubMm: 7 }
    const { wires, wireOf } = readHeatJoint({ ...joint, conductors: [side, other, side, { ...side, stubMm: 9 }] })
    expect(wireOf).toEqual([0, 1, 0, 2])
    expect(wires.map(({ tails, stubM }) => [tails, stubM])).toEqual([
      [2, 0.005],
      [1, 0.007],
      [1, 0.009],
    ])
  })

  test.each<[string, HeatSide, HeatSide]>([
    ['conductance', side, { ...side, conductivityWPerMK: 300 }],
    ['stub', side, { ...side, stubMm: 6 }],
    // A wall so heavy that the copper's heat capacity vanishes in rounding.
    [
      'store of the bare stub',
      { ...side, insulationDensityKgPerM3: 1e6, insulationSpecificHeatJPerKgK: 1e6, insulationShare: 1, densityKgPerM3: 8890 },
      { ...side, insulationDensityKgPerM3: 1e6, insulationSpecificHeatJPerKgK: 1e6, insulationShare: 1, densityKgPerM3: 8890.00000001 },
    ],
    ['store under insulation', { ...side, insulationShare: 0.4 }, { ...side, insulationShare: 0.5 }],
    ['loss of the bare stub', side, { ...side, stubFilmWPerM2K: 15 }],
    ['loss under insulation', side, { ...side, insulationFilmWPerM2K: 1e-3 }],
    ['limit', side, { ...side, insulationLimitC: 106 }],
    ['what stands across the film', { ...side, ...thick }, { ...side, ...thick, insulationFilmWPerM2K: 1e7 }],
    ['loss of the bare stub in the stream', side, { ...side, diameterMm: 1.6 }],
    ['loss under insulation in the stream', side, { ...side, insulationOutsideMm: 3 }],
    ["a clip's place", { ...side, clip }, { ...side, clip: { ...clip, distanceMm: 4.1 } }],
    ["a clip's resistance", { ...side, clip }, { ...side, clip: { ...clip, resistanceKPerW: 9 } }],
    ["a clip's temperature", { ...side, clip }, { ...side, clip: { ...clip, temperatureC: 24 } }],
    ['a clip', side, { ...side, clip }],
  ])('not those that differ in %s alone', (_name, a, b) => {
    expect(wiresOf(a, b)).toBe(2)
    expect(wiresOf(b, a)).toBe(2)
  })

  test('under a very thick wall the film changes the temperature drop across it, not the loss', () => {
    const { wires } = readHeatJoint({
      ...joint,
      conductors: [
        { ...side, ...thick },
        { ...side, ...thick, insulationFilmWPerM2K: 1e7 },
      ],
    })
    expect(wires[1]).toEqual({ ...wires[0], outerShare: wires[1]?.outerShare })
  })
})

describe('in SI units', () => {
  test('what the lap stores: copper of all conductors over its length, and solder', () => {
    const { capacityJPerK } = readHeatJoint({
      ...joint,
      conductors: [
        { ...side, densityKgPerM3: 8890, specificHeatJPerKgK: 385 },
        { ...side, areaMm2: 2, insulationOutsideMm: 3, tails: 2, densityKgPerM3: 8890, specificHeatJPerKgK: 385 },
      ],
      alloy: { solidusC: 183, liquidusC: 190, densityKgPerM3: 8000, specificHeatJPerKgK: 150, latentHeatJPerKg: 4e4 },
    })
    expect(capacityJPerK).toBeCloseTo(9e-3 * 3e-6 * 8890 * 385 + 7e-9 * 8000 * 150, 12)
  })

  test('four conductors at most', () => {
    expect(readHeatJoint({ ...joint, conductors: [side, side, side, side] }).wires[0]?.tails).toBe(4)
  })
})
