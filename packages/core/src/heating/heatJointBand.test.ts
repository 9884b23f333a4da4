import { describe, expect, test } from 'vitest'
import { DomainError } from '../errors/index.ts'
import { heatJoint } from './heatJoint.ts'
import { heatJointBand } from './heatJointBand.ts'
import type { HeatJointInput } from './heatJointTypes.ts'

const iron = { kind: 'iron', setC: 360, maximumW: 60, tipResistanceKPerW: 1.5, contactResistanceKPerW: 3 } as const
const air = { kind: 'hot-air', airC: 350, airSpeedMPerS: 10, sweptMm: 10, sweptFilmWPerM2K: 150 } as const
const input: HeatJointInput = {
  ambientC: 23,
  tool: iron,
  joint: { lapMm: 9, diameterMm: 2.6, solderMm3: 7, filmWPerM2K: 20 },
  conductors: [{ areaMm2: 1, stubMm: 5, stubFilmWPerM2K: 30, insulation: 'PVC', insulationOutsideMm: 2.48, insulationFilmWPerM2K: 28 }],
  alloy: 'Sn60Pb40',
  toolOffS: 3,
}

describe('heatJointBand', () => {
  test('an iron: its contact a factor 3 either way', () => {
    const { best, nominal, worst } = heatJointBand(input)
    expect(nominal).toEqual(heatJoint(input))
    expect(best).toEqual(heatJoint({ ...input, tool: { ...iron, contactResistanceKPerW: 1 } }))
    expect(worst).toEqual(heatJoint({ ...input, tool: { ...iron, contactResistanceKPerW: 9 } }))
    expect(best.wettedAtS).toBeLessThan(nominal.wettedAtS ?? 0)
    expect(worst.wettedAtS).toBeGreaterThan(nominal.wettedAtS ?? 0)
    expect(heatJointBand({ ...input, contactFactor: 3, streamFactor: 9 })).toEqual({ best, nominal, worst })
    expect(heatJointBand({ ...input, contactFactor: 1 }).worst).toEqual(nominal)
  })

  test('a given film: every coefficient of the stream times and over 1.5', () => {
    const tool = { ...air, filmWPerM2K: 120 }
    const { best, nominal, worst } = heatJointBand({ ...input, tool })
    expect(nominal).toEqual(heatJoint({ ...input, tool }))
    expect(best).toEqual(heatJoint({ ...input, tool: { ...tool, filmWPerM2K: 180, sweptFilmWPerM2K: 225 } }))
    expect(worst.steadyC).toBeCloseTo(heatJoint({ ...input, tool: { ...tool, filmWPerM2K: 80, sweptFilmWPerM2K: 100 } }).steadyC, 9)
  })

  test('a stream by its speed: between slower and faster ones', () => {
    const { best, nominal, worst } = heatJointBand({ ...input, tool: air, toolOffS: 20, streamFactor: 1.2, contactFactor: 50 })
    expect(best.steadyC).toBeGreaterThan(nominal.steadyC)
    expect(worst.steadyC).toBeLessThan(nominal.steadyC)
    // The film coefficient grows about with the square root of the speed: a factor of 1.2 corresponds to 1.44 in speed.
    const at = (airSpeedMPerS: number): number => heatJoint({ ...input, tool: { ...air, airSpeedMPerS, sweptFilmWPerM2K: 180 }, toolOffS: 20 }).steadyC
    expect(best.steadyC).toBeGreaterThan(at(13.5))
    expect(best.steadyC).toBeLessThan(at(15.5))
  })

  test('films of still air that are not given move by 1.3; given ones stand', () => {
    const side = { areaMm2: 1, stubMm: 5, insulation: 'PVC', insulationOutsideMm: 2.48 } as const
    const open = { ...input, joint: { lapMm: 9, diameterMm: 2.6, solderMm3: 7 }, conductors: [side], tool: { ...iron, contactResistanceKPerW: 60 } }
    const still = heatJointBand({ ...open, contactFactor: 1 })
    expect(still.best.steadyC).toBeGreaterThan(still.nominal.steadyC + 2)
    expect(still.worst.steadyC).toBeLessThan(still.nominal.steadyC - 2)
    expect(heatJointBand({ ...open, contactFactor: 1, filmFactor: 1 }).best).toEqual(still.nominal)
    expect(heatJointBand({ ...input, contactFactor: 1 }).best).toEqual(heatJoint(input))
  })

  test('the emissivity of the joint goes with its film, 0.05 to 0.3, unless either is given', () => {
    const open = { ...input, joint: { lapMm: 9, diameterMm: 2.6, solderMm3: 7 }, contactFactor: 1 }
    const having = (emissivity: number) => heatJointBand({ ...open, joint: { ...open.joint, emissivity } })
    expect(heatJointBand(open)).toEqual({ best: having(0.05).best, nominal: having(0.15).nominal, worst: having(0.3).worst })
    expect(having(0.15).best.steadyC).toBeLessThan(heatJointBand(open).best.steadyC)
    expect(heatJointBand({ ...open, filmFactor: 1 }).worst).toEqual(heatJoint(open))
  })

  test.each([0.9, Number.NaN, Infinity, '3'])('a factor of %s is refused by its name', (factor) => {
    for (const name of ['contactFactor', 'streamFactor', 'filmFactor']) {
      let error: unknown
      try {
        heatJointBand({ ...input, [name]: factor } as never)
      } catch (thrown) {
        error = thrown
      }
      expect(error).toBeInstanceOf(DomainError)
      expect((error as DomainError).parameter).toBe(name)
    }
  })
})
