import { describe, expect, test } from 'vitest'
import { DomainError } from '../errors/index.ts'
import { heatJoint } from './heatJoint.ts'
import { heatSolderSleeve } from './heatSolderSleeve.ts'
import { heatSolderSleeveBand } from './heatSolderSleeveBand.ts'

type Input = Parameters<typeof heatSolderSleeveBand>[0]

const tool = { kind: 'hot-air', airC: 350, filmWPerM2K: 140 } as const
const tube = { insideMm: 4, recoveredInsideMm: 1.5, wallMm: 0.3, lengthMm: 26, recoveryC: 110, continuousC: 135, shortLimitC: 230 }
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

describe('limits of the sleeve', () => {
  /** An ideal tube: thin, light, recovered at once, gripping without contact resistance, not radiating. */
  const ideal = {
    insideMm: 2.41,
    recoveredInsideMm: 0.5,
    wallMm: 0.001,
    lengthMm: 24,
    recoveryC: 20.001,
    gripWPerM2K: 1e7,
    conductivityWPerMK: 1e3,
    densityKgPerM3: 1,
    specificHeatJPerKgK: 1,
    emissivity: 0,
  }

  test('an ideal tube is a bare joint in hot air, swept to the end of the tube', () => {
    const got = heatSolderSleeve({ ...sleeve, tube: ideal })
    const open = heatJoint({
      ...sleeve,
      tool: { ...tool, sweptMm: 8, sweptFilmWPerM2K: 140 },
      joint: { ...sleeve.joint, surfaceMm2: Math.PI * 2.4 * 8, emissivity: 0 },
      // The tube covers stub and insulation: their film is the stream's on its outside.
    })
    expect(Math.abs(got.steadyC - open.steadyC)).toBeLessThan(0.2)
    got.jointC.slice(0, 4).forEach((c, k) => {
      expect(Math.abs(c - (open.jointC[k] ?? 0))).toBeLessThan(0.5)
    })
    expect((got.wettedAtS ?? 0) / (open.wettedAtS ?? 1)).toBeCloseTo(1, 2)
    expect(got.energyResidual).toBeLessThan(1e-6)
  })

  test('without a stream everything stays at the surroundings', () => {
    const still = heatSolderSleeve({ ...sleeve, tool: { ...tool, filmWPerM2K: 0 } })
    expect([still.steadyC, still.jointPeakC, still.insulationPeakC[0], still.tubeOuterPeakC, still.energyResidual]).toEqual([20, 20, 20, 20, 0])
    expect([still.tubeRecoversAtS, still.ringMeltsAtS, still.tubeShortLimitAtS, still.firstToFail]).toEqual([null, null, null, 'tube'])
  })

  test('a tube no longer than lap and stubs has no insulated stretch under it: how it holds heat there does not tell', () => {
    const short = { ...tube, lengthMm: 16 }
    const one = heatSolderSleeve({ ...sleeve, tube: short })
    const shorter = heatSolderSleeve({ ...sleeve, tube: { ...short, lengthMm: 10 } })
    expect(shorter.steadyC).toBe(one.steadyC)
    expect(shorter.wettedAtS).toBe(one.wettedAtS)
    expect(one.insulationOuterPeakC[0]).toBeLessThan(one.insulationPeakC[0] ?? 0)
  })

  test('a long run ends at the steady state', () => {
    const { steadyC, steadyEdgeC, jointC, edgeC } = heatSolderSleeve({ ...sleeve, toolOffS: 2000, observeS: 2000, sampleTimesS: [2000] })
    expect(jointC[0]).toBeCloseTo(steadyC, 2)
    expect(edgeC[0]?.[0]).toBeCloseTo(steadyEdgeC[0] ?? 0, 2)
  })

  test('a tube that cannot reach the joint hangs loose, and heats it less', () => {
    const loose = heatSolderSleeve({ ...sleeve, tube: { ...tube, recoveredInsideMm: 2.6 } })
    expect(loose.steadyC).toBeLessThan(plain().steadyC - 5)
    expect(loose.jointAtToolOffC).toBeLessThan(plain().jointAtToolOffC)
  })
})

let kept: ReturnType<typeof heatSolderSleeve> | undefined
/** Computed on first use, then kept. */
function plain(): ReturnType<typeof heatSolderSleeve> {
  kept ??= heatSolderSleeve(sleeve)
  return kept
}

describe('the sleeve as it goes', () => {
  test('tube, ring, solder and wetting: the ring looks molten long before the joint is', () => {
    const { tubeRecoversAtS, ringMeltsAtS, liquidusAtS, wettedAtS } = plain()
    expect(tubeRecoversAtS).toBeGreaterThan(0)
    expect(ringMeltsAtS).toBeGreaterThan(0)
    expect(liquidusAtS).toBeGreaterThan(2 * (ringMeltsAtS ?? 0))
    expect(wettedAtS).toBeGreaterThan(liquidusAtS ?? 0)
    expect(plain().energyResidual).toBeLessThan(1e-6)
  })

  test('finer runs agree', () => {
    const fine = heatSolderSleeve({ ...sleeve, accuracy: 0.01 })
    for (const key of ['tubeRecoversAtS', 'ringMeltsAtS', 'solidusAtS', 'liquidusAtS', 'wettedAtS', 'resolidifiedAtS', 'tubeShortLimitAtS'] as const) {
      expect(Math.abs((plain()[key] ?? 0) / (fine[key] ?? 1) - 1), key).toBeLessThan(1e-3)
    }
    for (const key of ['jointPeakC', 'tubeOuterPeakC'] as const) expect(Math.abs(plain()[key] - fine[key]), key).toBeLessThan(0.1)
  })

  test("the tube's limits: how long above each, and first when; null where a limit is not given", () => {
    const { tubeOuterPeakC, tubeShortLimitAtS, tubeAboveContinuousS, tubeAboveShortS } = plain()
    expect(tubeOuterPeakC).toBeGreaterThan(200)
    expect(tubeShortLimitAtS).toBeGreaterThan(0)
    expect(tubeAboveContinuousS).toBeGreaterThan(tubeAboveShortS ?? 0)
    expect(tubeAboveShortS).toBeLessThan(80 - (tubeShortLimitAtS ?? 0))
    const { continuousC: _c, shortLimitC: _s, ...silent } = tube
    const none = heatSolderSleeve({ ...sleeve, tube: silent })
    expect([none.tubeAboveContinuousS, none.tubeAboveShortS, none.tubeShortLimitAtS]).toEqual([null, null, null])
    const high = heatSolderSleeve({ ...sleeve, tube: { ...tube, shortLimitC: tubeOuterPeakC + 1 } })
    expect([high.tubeAboveShortS, high.tubeShortLimitAtS]).toEqual([0, null])
  })

  test('which part fails first', () => {
    expect(heatSolderSleeve({ ...sleeve, tool: { ...tool, airC: 100 } }).firstToFail).toBe('tube')
    expect(heatSolderSleeve({ ...sleeve, tool: { ...tool, airC: 136 } }).firstToFail).toBe('ring')
    expect(heatSolderSleeve({ ...sleeve, toolOffS: 8 }).firstToFail).toBe('conductor')
    const soft = { ...side, insulationLimitC: 100 }
    expect(heatSolderSleeve({ ...sleeve, conductors: [side, soft] }).firstToFail).toBe('insulation')
    // The limit is passed only after wetting, so nothing failed before.
    const edgeAtWetting = heatSolderSleeve({ ...sleeve, sampleTimesS: [plain().wettedAtS ?? 0] }).edgeC[0]?.[0] ?? 0
    expect(heatSolderSleeve({ ...sleeve, conductors: [side, { ...side, insulationLimitC: edgeAtWetting + 1 }] }).firstToFail).toBeNull()
    expect(heatSolderSleeve({ ...sleeve, conductors: [side, { ...side, insulationLimitC: edgeAtWetting - 1 }] }).firstToFail).toBe('insulation')
  })

  test('the band: stream, grip and recovery move together', () => {
    const { best, nominal, worst } = heatSolderSleeveBand(sleeve)
    expect(nominal).toEqual(plain())
    expect(best.wettedAtS).toBeLessThan(nominal.wettedAtS ?? 0)
    expect(worst.wettedAtS ?? Infinity).toBeGreaterThan(nominal.wettedAtS ?? 0)
    expect(heatSolderSleeveBand({ ...sleeve, streamFactor: 1, gripFactor: 1, filmFactor: 1, recoverySpreadK: 0 }).best).toEqual(nominal)
  })

  test.each([
    ['tool.kind', { tool: { kind: 'iron', setC: 300, tipResistanceKPerW: 1, contactResistanceKPerW: 1 } }],
    ['tube.insideMm', { tube: { ...tube, insideMm: 2.4 } }],
    ['tube.insideMm', { tube: undefined }],
    ['tube.recoveryC', { tube: { ...tube, recoveryC: 20 } }],
    ['tube.recoveredInsideMm', { tube: { ...tube, recoveredInsideMm: 4.1 } }],
    ['tube.shortLimitC', { tube: { ...tube, shortLimitC: -300 } }],
    ['tube.emissivity', { tube: { ...tube, emissivity: 1.1 } }],
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
