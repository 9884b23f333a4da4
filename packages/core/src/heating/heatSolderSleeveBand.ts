import { frozen } from '../errors/inner.ts'
import type { Provenance } from '../materials/index.ts'
import { heatJointBandDefaults } from './heatJointBand.ts'
import type { HeatJointInput, HotAirTool } from './heatJointTypes.ts'
import { heatLimits, requireWithin } from './heatLimits.ts'
import { type HeatSolderSleeveResult, solderSleeveAt } from './heatSolderSleeve.ts'
import type { Reading } from './readHeatJoint.ts'
import { type SolderSleeveTube, solderSleeveDefaults } from './solderSleeveTube.ts'

/** Default uncertainties of heatSolderSleeveBand. */
export const heatSolderSleeveBandDefaults = /* @__PURE__ */ frozen({
  gripFactor: { value: 3, provenance: { status: 'from memory', source: 'contact of a soft wall, 170 to 1500 W/(m2 K): a guess' } },
  /** Spread of the recovery temperature in K, either way. */
  recoverySpreadK: { value: 10, provenance: { status: 'from memory', source: 'recovery of sleeve materials as their sheets spread' } },
} as const satisfies Readonly<Record<string, { readonly value: number; readonly provenance: Provenance }>>)

/** A sleeve and the uncertainty of each unknown. */
export type SolderSleeveBandInput = HeatJointInput & {
  readonly tool: HotAirTool
  readonly tube: SolderSleeveTube
  readonly streamFactor?: number
  readonly filmFactor?: number
  readonly gripFactor?: number
  readonly recoverySpreadK?: number
}

/** One end of the uncertainties of a sleeve: its tube, and the factors of the rest. */
interface TubeEnd {
  readonly tube: SolderSleeveTube
  readonly reading: Reading
}

/** Best and worst end. */
export function sleeveEnds(i: Omit<SolderSleeveBandInput, 'toolOffS' | 'tool'>): readonly [best: TubeEnd, worst: TubeEnd] {
  const { tube, ambientC } = i
  const stream = requireWithin('streamFactor', i.streamFactor ?? heatJointBandDefaults.streamFactor.value, 'factor')
  const film = requireWithin('filmFactor', i.filmFactor ?? heatJointBandDefaults.filmFactor.value, 'factor')
  const gripFactor = requireWithin('gripFactor', i.gripFactor ?? heatSolderSleeveBandDefaults.gripFactor.value, 'factor')
  const spreadK = requireWithin('recoverySpreadK', i.recoverySpreadK ?? heatSolderSleeveBandDefaults.recoverySpreadK.value, 'superheatK')
  const grip = tube.gripWPerM2K ?? solderSleeveDefaults.gripWPerM2K.value
  // A recovery temperature below the surroundings is moved just above them.
  const lowestC = ambientC + 0.1 * (tube.recoveryC - ambientC)
  const highestC = Math.max(tube.recoveryC, Math.min(tube.recoveryC + spreadK, heatLimits.leverC[1]))
  return [
    {
      tube: { ...tube, gripWPerM2K: Math.min(grip * gripFactor, heatLimits.gripWPerM2K[1]), recoveryC: Math.max(tube.recoveryC - spreadK, lowestC) },
      reading: { streamFactor: stream, filmFactor: 1 / film },
    },
    {
      tube: { ...tube, gripWPerM2K: Math.max(grip / gripFactor, heatLimits.gripWPerM2K[0]), recoveryC: highestC },
      reading: { streamFactor: 1 / stream, filmFactor: film },
    },
  ]
}

/**
 * Gives the heating of a solder sleeve at the best, nominal and worst end of the uncertainties: the stream, the tube's grip and its recovery.
 *
 * Still-air films that are not given vary by filmFactor as well. Grip matters as much as the stream, so a single number would mislead. A tool's filmWPerM2K replaces the film coefficient computed from its airSpeedMPerS.
 *
 * @equation h f, h, h / f; g f_g, g, g / f_g; T_r - d, T_r, T_r + d
 * @symbol h - tool.filmWPerM2K - W/(m2 K) - every film coefficient of the stream, by speed or as given
 * @symbol f - streamFactor - 1 - how far off the stream may be, either way
 * @symbol g - tube.gripWPerM2K - W/(m2 K) - contact of the recovered tube
 * @symbol f_g - gripFactor - 1 - how far off the grip may be, either way
 * @symbol T_r - tube.recoveryC - C - recovery of the tube
 * @symbol d - recoverySpreadK - K - how far off it may be
 * @domain optional streamFactor: from 1 to 1000
 * @domain optional filmFactor: from 1 to 1000
 * @domain optional gripFactor: from 1 to 1000
 * @domain optional recoverySpreadK: from 0 to 1e4
 * @domain as heatSolderSleeve
 * @domain as heatJoint
 * @throws DomainError outside the domain, and as heatSolderSleeve does
 * @throws UnknownEntryError as heatJoint does
 * @throws ConvergenceError where no step is short enough
 * @example
 * heatSolderSleeveBand({
 *   ambientC: 20,
 *   tool: { kind: 'hot-air', airC: 350, airSpeedMPerS: 10, filmWPerM2K: 150, pressurePa: 101325, sweptMm: 8, sweptFilmWPerM2K: 120, sweptDiameterMm: 2 },
 *   joint: { lapMm: 8, diameterMm: 2.4, solderMm3: 6 },
 *   conductors: [{ areaMm2: 0.5, stubMm: 6, insulation: 'PTFE', insulationOutsideMm: 1.6, clip: { distanceMm: 5, resistanceKPerW: 20, temperatureC: 20 } }],
 *   alloy: { solidusC: 138, liquidusC: 138, densityKgPerM3: 8560, specificHeatJPerKgK: 167, latentHeatJPerKg: 45000 },
 *   toolOffS: 60,
 *   sampleTimesS: [5],
 *   tube: { insideMm: 4, recoveredInsideMm: 1.5, wallMm: 0.4, lengthMm: 26, recoveryC: 110 },
 *   streamFactor: 1.5,
 *   gripFactor: 3,
 *   recoverySpreadK: 10,
 * }) // { nominal: { firstToFail: 'conductor' } }
 * @source the project's model of a solder sleeve, at the ends of what is known of it
 */
export function heatSolderSleeveBand(i: SolderSleeveBandInput): {
  readonly best: HeatSolderSleeveResult
  readonly nominal: HeatSolderSleeveResult
  readonly worst: HeatSolderSleeveResult
} {
  const nominal = solderSleeveAt(i, {})
  const at = ({ tube, reading }: TubeEnd): HeatSolderSleeveResult => solderSleeveAt({ ...i, tube }, reading)
  const [best, worst] = sleeveEnds(i)
  return { best: at(best), nominal, worst: at(worst) }
}
