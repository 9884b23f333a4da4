import { describe, expect, test } from 'vitest'
import { DomainError } from '../errors/index.ts'
import { heatJoint } from './heatJoint.ts'
import { heatSolderSleeve } from './heatSolderSleeve.ts'

type Input = Parameters<typeof heatSolderSleeve>[0]

const tool = { kind: 'hot-air', airC: 350, filmWPerM2K: 140 } as const
const tube = { insideMm: 4, wallMm: 0.4, lengthMm: 26, recoveryC: 110 }
const side = { areaMm2: 0.5, stubMm: 4, insulation: 'PTFE', insulationOutsideMm: 1.6, stubFilmWPerM2K: 0, insulationLimitC: 260 } as const
const sleeve: Input = {
  ambientC: 20,
  tool,
  joint: { lapMm: 8, diameterMm: 2.4, solderMm3: 6, filmWPerM2K: 15, emissivity: 0.3 },
  conductors: [side, side],
  alloy: 'Sn42Bi58',
  toolOffS: 40,
  observeS: 80,
  sampleTimesS: [1, 5, 15, 40, 60],
  tube,
}
const outside = Math.PI * 4.8 * 26

describe('limits of the sleeve', () => {
  test('a tube that stores nothing and grips without resistance is a joint as large as its outside', () => {
    const perfect = { ...tube, gripWPerM2K: 1e11, conductivityWPerMK: 1e11, densityKgPerM3: 1e-6, recoveryC: 20.0001 }
    const got = heatSolderSleeve({ ...sleeve, tube: perfect, accuracy: 0.1 })
    const open = heatJoint({ ...sleeve, joint: { ...sleeve.joint, surfaceMm2: outside }, accuracy: 0.1 })
    expect(got.steadyC).toBeCloseTo(open.steadyC, 5)
    expect(got.steadyEdgeC[0]).toBeCloseTo(open.steadyEdgeC[0] ?? 0, 5)
    got.jointC.forEach((c, k) => {
      expect(Math.abs(c - (open.jointC[k] ?? 0))).toBeLessThan(0.03)
    })
    expect(got.wettedAtS).toBeCloseTo(open.wettedAtS ?? 0, 3)
    expect(got.energyResidual).toBeLessThan(1e-4)
  })

  test('a tube that stores nothing and never recovers is a resistance before the joint', () => {
    const idle = { ...tube, densityKgPerM3: 1e-6, recoveryC: 900 }
    const { steadyC, tubeRecoversAtS, ringMeltsAtS, firstToFail } = heatSolderSleeve({
      ...sleeve,
      joint: { ...sleeve.joint, emissivity: 0 },
      tube: idle,
    })
    expect(tubeRecoversAtS).toBeNull()
    expect(ringMeltsAtS).not.toBeNull()
    expect(firstToFail).toBe('tube')
    // Heat through the stream, then air and radiation across the gap, then the wires: one unknown tube.
    const wires = heatJoint({
      ...sleeve,
      tool: { kind: 'iron', setC: steadyC, tipResistanceKPerW: 0, contactResistanceKPerW: 1e-6 },
      joint: { ...sleeve.joint, emissivity: 0, filmWPerM2K: 0 },
    })
    const Y = 2 * slopeOfWires()
    const through = Y * (steadyC - 20)
    const tubeC = 350 - through / (140 * outside * 1e-6)
    const K = 273.15
    const mean = (tubeC + steadyC) / 2 + K
    const air = (2.64638e-3 * mean ** 1.5) / (mean + 245.4 * 10 ** (-12 / mean))
    const radiation = 0.9 * 5.670374419e-8 * Math.PI * 2.4e-3 * 8e-3 * ((tubeC + K) ** 4 - (steadyC + K) ** 4)
    const across = ((2 * Math.PI * air * 8e-3) / Math.log(4 / 2.4)) * (tubeC - steadyC) + radiation
    expect(across / through).toBeCloseTo(1, 6)
    expect(wires.steadyC).toBeCloseTo(steadyC, 2)
  })

  test('without a stream everything stays at the surroundings', () => {
    const still = heatSolderSleeve({ ...sleeve, tool: { ...tool, filmWPerM2K: 0 } })
    expect([still.steadyC, still.jointPeakC, still.insulationPeakC[0], still.energyResidual]).toEqual([20, 20, 20, 0])
    expect([still.tubeRecoversAtS, still.ringMeltsAtS, still.firstToFail]).toEqual([null, null, 'tube'])
  })

  test('gripping: contact and wall in series', () => {
    const { steadyC } = heatSolderSleeve({ ...sleeve, joint: { ...sleeve.joint, emissivity: 0 }, tube: { ...tube, gripWPerM2K: 400, conductivityWPerMK: 0.2 } })
    const through = 2 * slopeOfWires() * (steadyC - 20)
    const tubeC = 350 - through / (140 * outside * 1e-6)
    const contact = 1 / (400 * Math.PI * 2.4e-3 * 8e-3)
    const wall = Math.log(3.2 / 2.4) / (2 * Math.PI * 0.2 * 8e-3)
    expect((tubeC - steadyC) / (contact + wall) / through).toBeCloseTo(1, 6)
  })
})

/** Admittance of one of the wires: no air on the stub, the insulated stretch endless. */
function slopeOfWires(): number {
  const kA = 391 * 0.5e-6
  const d = Math.sqrt((4 * 0.5) / Math.PI)
  const G = 1 / (Math.log(1.6 / d) / (2 * Math.PI * 0.245) + 1 / (Math.PI * 1.6e-3 * 14))
  return 1 / (4e-3 / kA + 1 / Math.sqrt(kA * G))
}

describe('the sleeve as it goes', () => {
  let kept: ReturnType<typeof heatSolderSleeve> | undefined
  /** Worked out once, within a test. */
  const plain = () => {
    kept ??= heatSolderSleeve(sleeve)
    return kept
  }

  test('tube, ring, solder and wetting come in that order, and the ring looks molten long before', () => {
    const { tubeRecoversAtS, ringMeltsAtS, liquidusAtS, wettedAtS, firstToFail } = plain()
    expect(tubeRecoversAtS).toBeGreaterThan(0)
    expect(ringMeltsAtS).toBeGreaterThan(tubeRecoversAtS ?? 0)
    expect(liquidusAtS).toBeGreaterThan(2 * (ringMeltsAtS ?? 0))
    expect(wettedAtS).toBeGreaterThan(liquidusAtS ?? 0)
    expect(firstToFail).toBeNull()
    expect(plain().energyResidual).toBeLessThan(1e-3)
  })

  test('finer runs agree', () => {
    const fine = heatSolderSleeve({ ...sleeve, accuracy: 0.01 })
    for (const key of ['tubeRecoversAtS', 'ringMeltsAtS', 'solidusAtS', 'liquidusAtS', 'wettedAtS', 'resolidifiedAtS'] as const) {
      expect((plain()[key] ?? 0) / (fine[key] ?? 1)).toBeCloseTo(1, 3)
    }
    expect(fine.energyResidual).toBeLessThan(1e-6)
  })

  test('a ring that melts before the tube recovers draws its heat from the tube', () => {
    const late = heatSolderSleeve({ ...sleeve, tube: { ...tube, recoveryC: 200 }, accuracy: 0.1 })
    expect(late.ringMeltsAtS).toBeLessThan(late.tubeRecoversAtS ?? 0)
    const none = heatSolderSleeve({ ...sleeve, joint: { ...sleeve.joint, solderMm3: 0 }, tube: { ...tube, recoveryC: 200 }, accuracy: 0.1 })
    const latent = 6e-9 * 8560 * 45_000
    expect(late.ringMeltsAtS).toBeGreaterThan(none.ringMeltsAtS ?? 0)
    expect((late.ringMeltsAtS ?? 0) - (none.ringMeltsAtS ?? 0)).toBeLessThan((2 * latent) / (140 * outside * 1e-6 * 200))
    expect(late.energyResidual).toBeLessThan(1e-4)
  })

  test('which part fails first', () => {
    expect(heatSolderSleeve({ ...sleeve, tool: { ...tool, airC: 100 } }).firstToFail).toBe('tube')
    expect(heatSolderSleeve({ ...sleeve, tool: { ...tool, airC: 130 } }).firstToFail).toBe('ring')
    expect(heatSolderSleeve({ ...sleeve, toolOffS: 3 }).firstToFail).toBe('conductor')
    const soft = { ...side, insulationLimitC: 100 }
    expect(heatSolderSleeve({ ...sleeve, conductors: [side, soft] }).firstToFail).toBe('insulation')
    // Past its limit only after the joint is wetted: nothing failed before.
    const edgeAtWetting = heatSolderSleeve({ ...sleeve, sampleTimesS: [plain().wettedAtS ?? 0] }).edgeC[0]?.[0] ?? 0
    expect(heatSolderSleeve({ ...sleeve, conductors: [side, { ...side, insulationLimitC: edgeAtWetting + 1 }] }).firstToFail).toBeNull()
    expect(heatSolderSleeve({ ...sleeve, conductors: [side, { ...side, insulationLimitC: edgeAtWetting - 1 }] }).firstToFail).toBe('insulation')
  })

  test('a stub under the tube meets no air', () => {
    expect(heatSolderSleeve({ ...sleeve, conductors: [{ ...side, stubFilmWPerM2K: 500 }, side] }).steadyC).toBe(plain().steadyC)
  })

  test.each([
    ['tool.kind', { tool: { kind: 'iron', setC: 300, tipResistanceKPerW: 1, contactResistanceKPerW: 1 } }],
    ['tube.insideMm', { tube: { ...tube, insideMm: 2.4 } }],
    ['tube.insideMm', { tube: undefined }],
    ['tube.recoveryC', { tube: { ...tube, recoveryC: 20 } }],
    ['tube.wallMm', { tube: { ...tube, wallMm: 0 } }],
    ['tube.lengthMm', { tube: { ...tube, lengthMm: Number.NaN } }],
    ['tool.airC', { tool: { ...tool, airC: 2000 } }],
    ['ambientC', { ambientC: -180 }],
    ['tube.gripWPerM2K', { tube: { ...tube, gripWPerM2K: 0 } }],
  ])('%s is refused by its name', (parameter, change) => {
    let error: unknown
    try {
      heatSolderSleeve({ ...sleeve, ...change } as Input)
    } catch (thrown) {
      error = thrown
    }
    expect(error).toBeInstanceOf(DomainError)
    expect((error as DomainError).parameter).toBe(parameter)
  })
})
