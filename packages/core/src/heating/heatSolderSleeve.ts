import type { HeatJointInput, HeatJointResult, HotAirTool } from './heatJointTypes.ts'
import { requireWithin } from './heatLimits.ts'
import { runHeatModel } from './heatResult.ts'
import { type Reading, readHeatJoint } from './readHeatJoint.ts'
import type { SolderSleeveTube } from './solderSleeveTube.ts'

/** Results of a sleeve, and which part failed first. */
export interface HeatSolderSleeveResult extends HeatJointResult {
  readonly tubeRecoversAtS: number | null
  readonly ringMeltsAtS: number | null
  /** Peak temperature of the tube's outer face. */
  readonly tubeOuterPeakC: number
  /** First time the outer face is above the tube's short-time limit. */
  readonly tubeShortLimitAtS: number | null
  /** Time above the tube's continuous limit; null if that is not given. */
  readonly tubeAboveContinuousS: number | null
  readonly tubeAboveShortS: number | null
  readonly firstToFail: 'tube' | 'ring' | 'conductor' | 'insulation' | null
}

/**
 * Tells when a solder sleeve in hot air shrinks, when its ring melts, whether the wires wet, and whether the tube survives.
 *
 * Over the lap the tube has one temperature, in the middle of its wall; beside the lap the temperature varies along it without axial conduction. The whole tube shrinks when it first reaches recoveryC over the lap: it grips what is wider than its recovered inside and hangs loose on what is thinner. A ring looks melted long before the wires are hot enough to wet. The stream is that at the tube, not the gun's setting. Left out: the change of length, heat capacity of ring and seals by themselves, air flow inside the loose tube. A tool's filmWPerM2K replaces the film coefficient computed from its airSpeedMPerS.
 *
 * @equation C_t dT_t/dt = (T_air - T_t)/(1/(h A_o) + R_w/2) - eps sigma A_o (T_t^4 - T_a^4) - (T_t - T_j)/(R_w/2 + 1/G_in); beside the lap C_t' dU/dt = G_o (T_air - U) - G_r (U - T_a) - G_i (U - T)
 * @symbol T_t - result - C - temperature of the tube over the lap, mid-wall
 * @symbol T_j - result - C - temperature of the joint
 * @symbol T_air - tool.airC - C - temperature of the stream; the surroundings' after the tool
 * @symbol C_t - tube.wallMm - J/K - heat of the tube over the lap for each kelvin
 * @symbol h - tool.airSpeedMPerS - W/(m2 K) - film coefficient of the stream on the tube's outside
 * @symbol A_o - tube.insideMm - m2 - outside of the tube over the lap
 * @symbol R_w - tube.conductivityWPerMK - K/W - its wall, half on either side of its temperature
 * @symbol eps - tube.emissivity - 1 - emissivity of its outside
 * @symbol G_in - tube.gripWPerM2K - W/K - grip, or air and radiation across the gap of a loose tube
 * @symbol U - result.tubeOuterPeakC - C - temperature of the tube beside the lap
 * @symbol T - result.insulationPeakC.0 - C - temperature of the copper under it
 * @symbol G_o - result - W/(m K) - stream and half the wall
 * @symbol G_r - result - W/(m K) - radiation of the tube
 * @symbol G_i - tube.recoveredInsideMm - W/(m K) - half the wall, grip or gap, and the insulation
 * @domain tube.insideMm: from 1e-4 to 1e3
 * @domain tube.recoveredInsideMm: from 1e-4 to 1e3
 * @domain tube.wallMm: from 1e-4 to 1e3
 * @domain tube.lengthMm: from 1e-3 to 1e4
 * @domain tube.recoveryC: above -273.15 up to 3000
 * @domain optional tube.continuousC: above -273.15 up to 3000
 * @domain optional tube.shortLimitC: above -273.15 up to 3000
 * @domain optional tube.emissivity: from 0 to 1
 * @domain optional tube.conductivityWPerMK: from 1e-9 to 1e12
 * @domain optional tube.densityKgPerM3: from 1e-9 to 1e6
 * @domain optional tube.specificHeatJPerKgK: from 1e-9 to 1e6
 * @domain optional tube.gripWPerM2K: from 1e-3 to 1e12
 * @domain as heatJoint
 * @throws DomainError outside the domain, and for an iron
 * @throws UnknownEntryError as heatJoint does
 * @throws ConvergenceError where no step is short enough
 * @example
 * heatSolderSleeve({
 *   ambientC: 20,
 *   tool: { kind: 'hot-air', airC: 350, airSpeedMPerS: 10, filmWPerM2K: 150, pressurePa: 101325, sweptMm: 8, sweptFilmWPerM2K: 120, sweptDiameterMm: 2 },
 *   joint: { lapMm: 8, diameterMm: 2.4, solderMm3: 6 },
 *   conductors: [{ areaMm2: 0.5, stubMm: 6, insulation: 'PTFE', insulationOutsideMm: 1.6, clip: { distanceMm: 5, resistanceKPerW: 20, temperatureC: 20 } }],
 *   alloy: { solidusC: 138, liquidusC: 138, densityKgPerM3: 8560, specificHeatJPerKgK: 167, latentHeatJPerKg: 45000 },
 *   toolOffS: 60,
 *   sampleTimesS: [5],
 *   tube: { insideMm: 4, recoveredInsideMm: 1.5, wallMm: 0.4, lengthMm: 26, recoveryC: 110, continuousC: 135, shortLimitC: 225 },
 * }) // { firstToFail: 'conductor', wettedAtS: null, steadyC: 108.18233 }
 * @source the project's model of a shrinking tube between stream and joint; conduction and radiation across an annular gap
 */
export function heatSolderSleeve(i: HeatJointInput & { readonly tool: HotAirTool; readonly tube: SolderSleeveTube }): HeatSolderSleeveResult
export function heatSolderSleeve(i: HeatJointInput & { readonly tube: SolderSleeveTube }): HeatSolderSleeveResult
export function heatSolderSleeve(i: HeatJointInput & { readonly tube: SolderSleeveTube }): HeatSolderSleeveResult {
  return solderSleeveAt(i, {})
}

/** The sleeve with stream, films and tube set to one end of their uncertainty; if asked only until it is wetted. */
export function solderSleeveAt(i: HeatJointInput & { readonly tube: SolderSleeveTube }, reading: Reading, untilWetted = false): HeatSolderSleeveResult {
  const { tube, ambientC } = i
  requireWithin('tube.insideMm', tube?.insideMm, 'tubeMm')
  const { result, record } = runHeatModel(readHeatJoint(i, { ...reading, tube }), untilWetted)
  const wettedAtS = record.wettedAtS ?? Infinity
  const spoiled = record.limitAtS.some((at) => at < wettedAtS)
  const firstToFail =
    record.recoveredAtS === null ? 'tube' : record.ringMeltsAtS === null ? 'ring' : spoiled ? 'insulation' : record.wettedAtS === null ? 'conductor' : null
  return {
    ...result,
    tubeRecoversAtS: record.recoveredAtS,
    ringMeltsAtS: record.ringMeltsAtS,
    tubeOuterPeakC: ambientC + record.tubeOuterPeakK,
    tubeShortLimitAtS: record.tubeShortLimitAtS,
    tubeAboveContinuousS: tube.continuousC === undefined ? null : record.tubeAboveContinuousS,
    tubeAboveShortS: tube.shortLimitC === undefined ? null : record.tubeAboveShortS,
    firstToFail,
  }
}
