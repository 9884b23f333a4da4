import { describe, expect, test } from 'vitest'
import { heatFlowWPerM } from '../heat/index.ts'
import { heatJoint } from './heatJoint.ts'
import type { HeatJointInput, HeatSide } from './heatJointTypes.ts'

const copper = { densityKgPerM3: 8890, specificHeatJPerKgK: 385, conductivityWPerMK: 391 }
const pvc = { insulationConductivityWPerMK: 0.17, insulationDensityKgPerM3: 1350, insulationSpecificHeatJPerKgK: 1050, insulationLimitC: 105 }
const films = { stubFilmWPerM2K: 15, insulationFilmWPerM2K: 14 }
const side: HeatSide = { areaMm2: 1, diameterMm: 1.28, stubMm: 5, insulationOutsideMm: 2.48, ...copper, ...pvc, ...films }
const joint: HeatJointInput = {
  ambientC: 23,
  tool: { kind: 'iron', setC: 360, maximumW: 60, tipResistanceKPerW: 1.5, contactResistanceKPerW: 3 },
  joint: { lapMm: 9, diameterMm: 2.6, solderMm3: 7 },
  conductors: [side, side],
  alloy: { solidusC: 217, liquidusC: 220, densityKgPerM3: 7380, specificHeatJPerKgK: 232, latentHeatJPerKg: 60_000 },
  toolOffS: 2,
  observeS: 30,
  sampleTimesS: [0.3, 1, 2, 4, 10],
}

describe('the steady state', () => {
  test('thermal limit 1.7b: one bare zone', () => {
    const bare = { ...side, insulationOutsideMm: 1.28, stubMm: 0, insulationFilmWPerM2K: 18 }
    const { steadyC } = heatJoint({ ...joint, conductors: [bare, bare], joint: { ...joint.joint, surfaceMm2: 70, emissivity: 0, filmWPerM2K: 12 } })
    const Y = Math.sqrt(391e-6 * Math.PI * 1.28e-3 * 18)
    const rise = (360 - 23) / 4.5 / (1 / 4.5 + 12 * 70e-6 + 2 * Y)
    expect(steadyC).toBeCloseTo(23 + rise, 9)
  })

  test('a long run ends there, at joint and edges', () => {
    const { steadyC, steadyEdgeC, jointAtToolOffC, edgeC } = heatJoint({ ...joint, toolOffS: 2000, observeS: 2000, sampleTimesS: [2000] })
    expect(jointAtToolOffC).toBeCloseTo(steadyC, 2)
    expect(edgeC[0]?.[0]).toBeCloseTo(steadyEdgeC[0] ?? 0, 2)
  })

  test('radiation balances what comes in', () => {
    const { steadyC } = heatJoint({
      ...joint,
      joint: { ...joint.joint, surfaceMm2: 4000, emissivity: 0.9, filmWPerM2K: 0 },
      conductors: [{ ...side, stubFilmWPerM2K: 0, insulationFilmWPerM2K: 0 }],
    })
    const T = steadyC + 273.15
    const lost = 0.9 * 5.670374419e-8 * 4e-3 * (T ** 4 - 296.15 ** 4)
    expect((360 - steadyC) / 4.5 / lost).toBeCloseTo(1, 9)
  })

  test('the power limit holds it lower', () => {
    const { steadyC } = heatJoint({ ...joint, tool: { kind: 'iron', setC: 360, maximumW: 3, tipResistanceKPerW: 1.5, contactResistanceKPerW: 3 } })
    const free = heatJoint(joint)
    expect(steadyC).toBeLessThan(free.steadyC)
    const twice = heatJoint({ ...joint, tool: { kind: 'iron', setC: 500, maximumW: 3, tipResistanceKPerW: 1.5, contactResistanceKPerW: 3 } })
    expect(twice.steadyC).toBeCloseTo(steadyC, 9)
  })
})

describe('what is the same said otherwise', () => {
  const figures = (input: HeatJointInput) => {
    const { insulationPeakC, insulationExposureS, edgeC, jointC, steadyC, wettedAtS, resolidifiedAtS } = heatJoint(input)
    return [insulationPeakC[0], insulationExposureS[0], ...(edgeC[0] ?? []), ...jointC, steadyC, wettedAtS, resolidifiedAtS]
  }

  test('two wires that end are one that runs through, of twice its lap', () => {
    const through = { ...joint, conductors: [{ ...side, tails: 2 as const }], joint: { ...joint.joint, lapMm: 18, surfaceMm2: 60 } }
    expect(figures(through)).toEqual(figures({ ...joint, joint: { ...joint.joint, surfaceMm2: 60 } }))
  })

  test('a stub without length is its limit', () => {
    const none = figures({ ...joint, conductors: [{ ...side, stubMm: 0 }] }) as number[]
    const short = figures({ ...joint, conductors: [{ ...side, stubMm: 1e-4 }] }) as number[]
    none.forEach((figure, k) => {
      expect(short[k]).toBeCloseTo(figure, 0)
    })
    const { edgeC, jointC, insulationPeakC, jointPeakC } = heatJoint({ ...joint, conductors: [{ ...side, stubMm: 0 }] })
    expect(edgeC[0]).toEqual(jointC)
    expect(insulationPeakC[0]).toBeCloseTo(jointPeakC, 9)
  })

  test.each([3, 5, 8])('a clip without resistance at %s mm is the limit of one with very little', (distanceMm) => {
    const clip = (resistanceKPerW: number) => ({ ...side, clip: { distanceMm, resistanceKPerW, temperatureC: 30 } })
    const held = figures({ ...joint, conductors: [clip(0), side] }) as (number | null)[]
    const close = figures({ ...joint, conductors: [clip(1e-5), side] }) as (number | null)[]
    held.forEach((figure, k) => {
      if (figure === null) expect(close[k]).toBeNull()
      else expect(Math.abs((close[k] ?? Number.NaN) - figure)).toBeLessThan(0.05)
    })
  })

  test('an edge beneath a holding clip stays at its temperature', () => {
    const held = heatJoint({ ...joint, conductors: [{ ...side, clip: { distanceMm: 5, resistanceKPerW: 0, temperatureC: 30 } }] })
    // A clip without resistance counts as 1e-6 K/W.
    for (const c of [...held.insulationPeakC, ...held.steadyEdgeC, ...(held.edgeC[0] ?? [])]) expect(c).toBeCloseTo(30, 4)
  })

  test('the order of the conductors changes only the order of the lists', () => {
    const thick = { ...side, areaMm2: 2.5, diameterMm: 2.05, insulationOutsideMm: 3.65 }
    const one = heatJoint({ ...joint, conductors: [side, thick] })
    const other = heatJoint({ ...joint, conductors: [thick, side] })
    expect(other.insulationPeakC[0]).toBeCloseTo(one.insulationPeakC[1] ?? 0, 9)
    expect(other.steadyEdgeC[1]).toBeCloseTo(one.steadyEdgeC[0] ?? 0, 9)
    expect(one.insulationPeakC[0]).not.toBeCloseTo(one.insulationPeakC[1] ?? 0, 0)
  })

  test.each([
    { tails: 2 },
    { areaMm2: 1.1 },
    { diameterMm: 1.3 },
    { stubMm: 7 },
    { stubFilmWPerM2K: 30 },
    { insulationOutsideMm: 2.6 },
    { insulationConductivityWPerMK: 0.3 },
    { insulationFilmWPerM2K: 25 },
    { insulationDensityKgPerM3: 2000 },
    { insulationShare: 0.8 },
    { conductivityWPerMK: 300 },
    { densityKgPerM3: 8000 },
    { clip: { distanceMm: 4, resistanceKPerW: 8, temperatureC: 23 } },
  ] as const)('conductors that differ in %j are not taken as one', (change) => {
    const other = { ...side, ...change }
    const mixed = heatJoint({ ...joint, conductors: [side, other], joint: { ...joint.joint, surfaceMm2: 60 } })
    const alike = heatJoint({ ...joint, conductors: [side, side], joint: { ...joint.joint, surfaceMm2: 60 } })
    expect(mixed.steadyC === alike.steadyC && mixed.wettedAtS === alike.wettedAtS).toBe(false)
  })

  test('equal wires with different limits are judged each by its own', () => {
    const { insulationExposureS } = heatJoint({ ...joint, conductors: [side, { ...side, insulationLimitC: 200 }] })
    expect(insulationExposureS[0]).toBeGreaterThan(insulationExposureS[1] ?? 0)
  })

  test('defaults are what they say: each film taken once, half way to the wetting temperature, on its own diameter', () => {
    const { stubFilmWPerM2K: _stub, insulationFilmWPerM2K: _insulation, ...open } = side
    const reference = 23 + (220 + 30 - 23) / 2
    const film = (diameterMm: number, emissivity: number): number => {
      const { convectionWPerM, radiationWPerM } = heatFlowWPerM({ surfaceC: reference, ambientC: 23, diameterMm, emissivity })
      return (convectionWPerM + radiationWPerM) / (Math.PI * diameterMm * 1e-3 * (reference - 23))
    }
    const spelt = { ...joint.joint, surfaceMm2: Math.PI * 2.6 * 9, filmWPerM2K: film(2.6, 0), emissivity: 0.15 }
    const stub = { stubFilmWPerM2K: film(1.28, 0.1), insulationFilmWPerM2K: film(2.48, 0.9) }
    const full = { ...open, ...stub, tails: 1 as const, insulationShare: 0.5, clip: null }
    const given = heatJoint({ ...joint, joint: spelt, conductors: [full, full], wettingSuperheatK: 30, accuracy: 1 })
    const silent = heatJoint({ ...joint, conductors: [open, open] })
    expect(given.wettedAtS).toBeCloseTo(silent.wettedAtS ?? 0, 9)
    expect(given.steadyC).toBeCloseTo(silent.steadyC, 9)
    expect(given.insulationPeakC[0]).toBeCloseTo(silent.insulationPeakC[0] ?? 0, 9)
    const { observeS: _o, ...short } = joint
    expect(heatJoint(short)).toEqual(heatJoint({ ...joint, observeS: 32 }))
  })

  test('a stub shorter than a thousandth of the first element is not merged with the joint', () => {
    // 5 um of stub of a poor conductor: the edge is well below the joint's temperature from the start.
    const poor = { ...side, areaMm2: 0.01, diameterMm: 0.113, insulationOutsideMm: 0.4, conductivityWPerMK: 0.5, stubMm: 0.005 }
    const { edgeC, jointC } = heatJoint({ ...joint, conductors: [poor], sampleTimesS: [0.5] })
    const coarse = heatJoint({ ...joint, conductors: [poor], sampleTimesS: [0.5], accuracy: 0.1 })
    expect(Math.abs((edgeC[0]?.[0] ?? 0) - (coarse.edgeC[0]?.[0] ?? 0))).toBeLessThan(0.1)
    expect(edgeC[0]?.[0]).toBeLessThan(jointC[0] ?? 0)
  })
})

describe('the outer face of the insulation', () => {
  const wall = Math.log(2.48 / 1.28) / (2 * Math.PI * 0.17)
  const share = (film: number): number => 1 / (1 + Math.PI * 2.48e-3 * film * wall)

  test('is cooler than the copper in still air', () => {
    const { insulationOuterPeakC, insulationPeakC } = heatJoint(joint)
    expect(insulationOuterPeakC[0]).toBeCloseTo(23 + ((insulationPeakC[0] ?? 0) - 23) * share(14), 9)
  })

  const air = { kind: 'hot-air', airC: 350, filmWPerM2K: 150, sweptFilmWPerM2K: 180 } as const
  test('is hotter than the copper in the stream', () => {
    const { insulationOuterPeakC, insulationPeakC, edgeC } = heatJoint({ ...joint, tool: { ...air, sweptMm: 12 }, toolOffS: 4, sampleTimesS: [4] })
    expect(insulationOuterPeakC[0]).toBeCloseTo(350 + ((edgeC[0]?.[0] ?? 0) - 350) * share(180), 1)
    expect(insulationOuterPeakC[0]).toBeGreaterThan(insulationPeakC[0] ?? 0)
  })

  test.each([4, 5])('a stream that ends at %s mm of a 5 mm stub does not meet it', (sweptMm) => {
    const { insulationOuterPeakC, insulationPeakC } = heatJoint({ ...joint, tool: { ...air, sweptMm }, toolOffS: 4 })
    expect(insulationOuterPeakC[0]).toBeCloseTo(23 + ((insulationPeakC[0] ?? 0) - 23) * share(14), 9)
  })
})
