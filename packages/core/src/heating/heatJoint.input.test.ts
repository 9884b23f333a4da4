import { describe, expect, test } from 'vitest'
import { DomainError, UnknownEntryError } from '../errors/index.ts'
import { heatJoint } from './heatJoint.ts'
import type { HeatJointInput } from './heatJointTypes.ts'

const iron = { kind: 'iron', setC: 360, maximumW: 60, tipResistanceKPerW: 1.5, contactResistanceKPerW: 3 } as const
const air = { kind: 'hot-air', airC: 350, airSpeedMPerS: 10 } as const
const side = { areaMm2: 1, stubMm: 5, insulation: 'PVC', insulationOutsideMm: 2.48 } as const
const joint = {
  ambientC: 23,
  tool: iron,
  joint: { lapMm: 9, diameterMm: 2.6, solderMm3: 7 },
  conductors: [side],
  alloy: 'SAC305',
  toolOffS: 2,
} satisfies HeatJointInput
const values = { solidusC: 217, liquidusC: 220, densityKgPerM3: 7380, specificHeatJPerKgK: 219, latentHeatJPerKg: 60_000 }

/** Parameter and code of the DomainError, or the name of another error. */
function refusal(input: unknown): string {
  try {
    heatJoint(input as HeatJointInput)
    return 'accepted'
  } catch (error) {
    if (error instanceof DomainError) return `${error.parameter} ${error.code}`
    if (error instanceof UnknownEntryError) return `unknown ${error.parameter} ${String(error.value)}`
    return String(error)
  }
}

describe('what is refused, and by which name', () => {
  test.each([
    [{ ...joint, ambientC: undefined }, 'ambientC missing'],
    [{ ...joint, ambientC: Number.NaN }, 'ambientC not-a-number'],
    [{ ...joint, ambientC: Infinity }, 'ambientC not-finite'],
    [{ ...joint, tool: undefined }, 'tool.kind missing'],
    [{ ...joint, tool: { ...iron, kind: 'torch' } }, 'tool.kind wrong-choice'],
    [{ ...joint, tool: { ...iron, setC: '360' } }, 'tool.setC not-a-number'],
    [{ ...joint, tool: { ...iron, maximumW: 0 } }, 'tool.maximumW out-of-range'],
    [{ ...joint, tool: { ...iron, contactResistanceKPerW: 0 } }, 'tool.contactResistanceKPerW out-of-range'],
    [{ ...joint, tool: { ...iron, tipResistanceKPerW: -1 } }, 'tool.tipResistanceKPerW out-of-range'],
    [{ ...joint, tool: { ...iron, tipResistanceKPerW: 0, tipHeatCapacityJPerK: 1 } }, 'tool.tipResistanceKPerW contradiction'],
    [{ ...joint, tool: { kind: 'hot-air', airC: 350 } }, 'tool.airSpeedMPerS missing'],
    [{ ...joint, tool: { ...air, sweptMm: 5 } }, 'tool.sweptFilmWPerM2K missing'],
    [{ ...joint, tool: { ...air, sweptMm: -1 } }, 'tool.sweptMm out-of-range'],
    [{ ...joint, tool: { ...air, sweptFilmWPerM2K: -1 } }, 'tool.sweptFilmWPerM2K out-of-range'],
    [{ ...joint, tool: { ...air, airC: 1700 } }, 'tool.airC contradiction'],
    [{ ...joint, ambientC: -180, tool: air }, 'ambientC contradiction'],
    [{ ...joint, joint: undefined }, 'joint.lapMm missing'],
    [{ ...joint, joint: { ...joint.joint, lapMm: 0 } }, 'joint.lapMm out-of-range'],
    [{ ...joint, joint: { ...joint.joint, emissivity: 1.1 } }, 'joint.emissivity out-of-range'],
    [{ ...joint, conductors: undefined }, 'conductors missing'],
    [{ ...joint, conductors: [] }, 'conductors out-of-range'],
    [{ ...joint, conductors: [side, side, side, side, side] }, 'conductors out-of-range'],
    [{ ...joint, conductors: [side, null] }, 'conductors.1 wrong-choice'],
    [{ ...joint, conductors: ['wire'] }, 'conductors.0 wrong-choice'],
    [{ ...joint, conductors: null }, 'conductors out-of-range'],
    [{ ...joint, conductors: [side, { ...side, stubMm: -1 }] }, 'conductors.1.stubMm out-of-range'],
    [{ ...joint, conductors: [{ ...side, tails: 3 }] }, 'conductors.0.tails wrong-choice'],
    [{ ...joint, conductors: [{ ...side, insulationOutsideMm: 1.1 }] }, 'conductors.0.insulationOutsideMm contradiction'],
    [{ ...joint, conductors: [{ ...side, diameterMm: 2.5 }] }, 'conductors.0.insulationOutsideMm contradiction'],
    [{ ...joint, conductors: [{ ...side, clip: { distanceMm: 0, resistanceKPerW: 1, temperatureC: 20 } }] }, 'conductors.0.clip.distanceMm out-of-range'],
    [{ ...joint, conductors: [{ ...side, clip: { distanceMm: 3, resistanceKPerW: -1, temperatureC: 20 } }] }, 'conductors.0.clip.resistanceKPerW out-of-range'],
    [{ ...joint, conductors: [{ ...side, clip: { distanceMm: 3, resistanceKPerW: 1 } }] }, 'conductors.0.clip.temperatureC missing'],
    [{ ...joint, alloy: undefined }, 'alloy missing'],
    [{ ...joint, alloy: 7 }, 'alloy wrong-choice'],
    [{ ...joint, alloy: null }, 'alloy wrong-choice'],
    [{ ...joint, alloy: { solidusC: 183 } }, 'alloy.liquidusC missing'],
    [{ ...joint, alloy: { ...values, solidusC: Number.NaN } }, 'alloy.solidusC not-a-number'],
    [{ ...joint, alloy: { ...values, liquidusC: 3001 } }, 'alloy.liquidusC out-of-range'],
    [{ ...joint, alloy: { ...values, densityKgPerM3: 0 } }, 'alloy.densityKgPerM3 out-of-range'],
    [{ ...joint, alloy: { ...values, specificHeatJPerKgK: -1 } }, 'alloy.specificHeatJPerKgK out-of-range'],
    [{ ...joint, alloy: { ...values, latentHeatJPerKg: -1 } }, 'alloy.latentHeatJPerKg out-of-range'],
    [{ ...joint, ambientC: 217 }, 'alloy.solidusC contradiction'],
    [{ ...joint, alloy: { ...values, solidusC: 200, liquidusC: 190 } }, 'alloy.liquidusC contradiction'],
    [{ ...joint, toolOffS: 0 }, 'toolOffS out-of-range'],
    [{ ...joint, observeS: 1.9 }, 'observeS contradiction'],
    [{ ...joint, sampleTimesS: [1, 40] }, 'sampleTimesS.1 contradiction'],
    [{ ...joint, sampleTimesS: [-1] }, 'sampleTimesS.0 out-of-range'],
    [{ ...joint, wettingSuperheatK: -1 }, 'wettingSuperheatK out-of-range'],
    [{ ...joint, accuracy: 0 }, 'accuracy out-of-range'],
    [{ ...joint, alloy: 'Sn1' }, 'unknown alloy Sn1'],
    [{ ...joint, conductors: [{ ...side, insulation: 'paper' }] }, 'unknown insulation paper'],
    [{ ...joint, conductors: [{ ...side, material: 'gold' }] }, 'unknown conductors.0.material gold'],
    [{ ...joint, conductors: [{ ...side, insulation: 'TPE' }] }, 'unknown specificHeatJPerKgK TPE'],
  ] as const)('%#: %j', (input, wanted) => {
    expect(refusal(input)).toBe(wanted)
  })

  test.each(['insulationConductivityWPerMK', 'insulationDensityKgPerM3', 'insulationSpecificHeatJPerKgK', 'insulationLimitC'])(
    'without the name of an insulation, %s is asked for',
    (name) => {
      const { insulation: _name, ...bare } = side
      const values = { insulationConductivityWPerMK: 0.17, insulationDensityKgPerM3: 1350, insulationSpecificHeatJPerKgK: 1050, insulationLimitC: 140 }
      expect(heatJoint({ ...joint, conductors: [{ ...bare, ...values }] })).toEqual(heatJoint(joint))
      expect(refusal({ ...joint, conductors: [{ ...bare, ...values, [name]: undefined }] })).toBe(`conductors.0.${name} missing`)
    },
  )

  test('a property that is not known may be given', () => {
    expect(refusal({ ...joint, conductors: [{ ...side, insulation: 'TPE', insulationSpecificHeatJPerKgK: 1500 }] })).toBe('accepted')
  })

  test('a bare wire is as wide as its metal', () => {
    expect(refusal({ ...joint, conductors: [{ ...side, diameterMm: 1.3, insulationOutsideMm: 1.3 }] })).toBe('accepted')
    expect(refusal({ ...joint, conductors: [{ ...side, insulationOutsideMm: 1.1283791671 }] })).toBe('accepted')
  })

  test('a named alloy is its nominal values, a named metal too', () => {
    const named = heatJoint(joint)
    const given = heatJoint({ ...joint, alloy: values })
    expect(given.steadyC).toBeCloseTo(named.steadyC, 9)
    expect(given.solidusAtS).toBeCloseTo(named.solidusAtS ?? 0, 1)
    expect(heatJoint({ ...joint, conductors: [{ ...side, material: 'annealed-copper' }] })).toEqual(named)
    expect(heatJoint({ ...joint, conductors: [{ ...side, material: 'aluminium-1350' }] }).steadyC).not.toBe(named.steadyC)
  })

  test('the limit is the low end of the short exposure', () => {
    expect(heatJoint({ ...joint, conductors: [{ ...side, insulationLimitC: 140 }] })).toEqual(heatJoint(joint))
  })

  test('an iron may sit at the surroundings, and then nothing happens', () => {
    const cold = heatJoint({ ...joint, tool: { ...iron, setC: 23 }, sampleTimesS: [1] })
    expect([cold.steadyC, cold.jointPeakC, cold.jointC[0], cold.energyResidual]).toEqual([23, 23, 23, 0])
    expect(cold.solidusAtS).toBeNull()
  })

  test('samples in any order, one twice, at both ends', () => {
    const { jointC } = heatJoint({ ...joint, observeS: 10, sampleTimesS: [10, 0, 2, 2, 1] })
    const sorted = heatJoint({ ...joint, observeS: 10, sampleTimesS: [0, 1, 2, 10] })
    expect(jointC).toEqual([sorted.jointC[3], 23, sorted.jointC[2], sorted.jointC[2], sorted.jointC[1]])
  })

  test('a run may end with the tool', () => {
    const { jointPeakC, jointAtToolOffC, resolidifiedAtS, insulationPeakC, edgeC } = heatJoint({ ...joint, observeS: 2, sampleTimesS: [2] })
    expect(jointPeakC).toBe(jointAtToolOffC)
    expect(resolidifiedAtS).toBeNull()
    expect(insulationPeakC[0]).toBeCloseTo(edgeC[0]?.[0] ?? 0, 9)
  })
})
