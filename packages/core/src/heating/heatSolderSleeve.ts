import type { HeatJointInput, HeatJointResult, HotAirTool } from './heatJointTypes.ts'
import type { HeatModel } from './heatModel.ts'
import { runHeatModel } from './heatResult.ts'
import { type Reading, readHeatJoint } from './readHeatJoint.ts'
import { readTube, type SolderSleeveTube } from './readTube.ts'

/** What became of the sleeve, and which of its parts failed first. */
export interface HeatSolderSleeveResult extends HeatJointResult {
  readonly tubeRecoversAtS: number | null
  readonly ringMeltsAtS: number | null
  readonly firstToFail: 'tube' | 'ring' | 'conductor' | 'insulation' | null
}

/**
 * Tells when a solder sleeve in hot air shrinks, when its ring melts and whether the wires under it take the solder, by a simple model.
 *
 * The joint and its stubs lie inside the tube and meet no air; film, emissivity and stream act on the tube alone, which is one lump. It recovers at once
 * and wholly when it first reaches recoveryC. A ring can look melted long before the wires under it are hot enough.
 * filmWPerM2K of a tool stands in place of what its airSpeedMPerS would give.
 *
 * @equation C_t dT_t/dt = h A_o (T_air - T_t) - losses - G (T_t - T_j); G = 2 pi k_air L_j/ln(ID/d_j) + radiation, then 1/(1/(g A_j) + ln((d_j + 2 w)/d_j)/(2 pi k_t L_j))
 * @symbol T_t - result - C - temperature of the tube
 * @symbol T_j - result - C - temperature of the joint
 * @symbol T_air - tool.airC - C - temperature of the stream
 * @symbol C_t - tube.wallMm - J/K - heat of the tube for each kelvin
 * @symbol h - tool.airSpeedMPerS - W/(m2 K) - film coefficient of the stream on the tube's outside
 * @symbol A_o - tube.lengthMm - m2 - outside of the tube
 * @symbol G - result - W/K - from tube to joint, before and after it grips
 * @symbol L_j - joint.lapMm - mm - length of the lap
 * @symbol d_j - joint.diameterMm - mm - across the joint
 * @symbol ID - tube.insideMm - mm - inside of the tube as supplied
 * @symbol w - tube.wallMm - mm - its wall
 * @symbol k_t - tube.conductivityWPerMK - W/(m K) - its conductivity
 * @symbol g - tube.gripWPerM2K - W/(m2 K) - contact of the recovered tube with the joint
 * @domain tube.insideMm: from 1e-4 to 1e3
 * @domain tube.wallMm: from 1e-4 to 1e3
 * @domain tube.lengthMm: from 1e-3 to 1e4
 * @domain tube.recoveryC: above -273.15 up to 3000
 * @domain optional tube.conductivityWPerMK: from 1e-9 to 1e12
 * @domain optional tube.densityKgPerM3: from 1e-9 to 1e6
 * @domain optional tube.specificHeatJPerKgK: from 1e-9 to 1e6
 * @domain optional tube.gripWPerM2K: from 1e-3 to 1e12
 * @domain ambientC: above -273.15 up to 3000
 * @domain tool.airC: above -273.15 up to 3000
 * @domain optional tool.airSpeedMPerS: from 0 to 1e4
 * @domain optional tool.filmWPerM2K: from 0 to 1e7
 * @domain optional tool.pressurePa: from 1 to 1e9
 * @domain optional tool.sweptMm: from 0 to 1e4
 * @domain optional tool.sweptFilmWPerM2K: from 0 to 1e7
 * @domain joint.lapMm: from 1e-3 to 1e4
 * @domain joint.diameterMm: from 1e-7 to 1e3
 * @domain optional joint.surfaceMm2: from 1e-9 to 1e8
 * @domain joint.solderMm3: from 0 to 1e7
 * @domain optional joint.filmWPerM2K: from 0 to 1e7
 * @domain optional joint.emissivity: from 0 to 1
 * @domain conductors.0.areaMm2: from 1e-12 to 1e4
 * @domain optional conductors.0.diameterMm: from 1e-7 to 1e3
 * @domain conductors.0.stubMm: from 0 to 1e4
 * @domain optional conductors.0.stubFilmWPerM2K: from 0 to 1e7
 * @domain conductors.0.insulationOutsideMm: from 1e-7 to 1e3
 * @domain optional conductors.0.insulationConductivityWPerMK: from 1e-9 to 1e12
 * @domain optional conductors.0.insulationFilmWPerM2K: from 0 to 1e7
 * @domain optional conductors.0.insulationDensityKgPerM3: from 1e-9 to 1e6
 * @domain optional conductors.0.insulationSpecificHeatJPerKgK: from 1e-9 to 1e6
 * @domain optional conductors.0.insulationShare: from 0 to 1
 * @domain optional conductors.0.insulationLimitC: above -273.15 up to 3000
 * @domain conductors.0.clip.distanceMm: from 0.01 to 1e4
 * @domain conductors.0.clip.resistanceKPerW: from 0 to 1e9
 * @domain conductors.0.clip.temperatureC: above -273.15 up to 3000
 * @domain optional conductors.0.densityKgPerM3: from 1e-9 to 1e6
 * @domain optional conductors.0.specificHeatJPerKgK: from 1e-9 to 1e6
 * @domain optional conductors.0.conductivityWPerMK: from 1e-9 to 1e12
 * @domain alloy.solidusC: above -273.15 up to 3000
 * @domain alloy.liquidusC: above -273.15 up to 3000
 * @domain alloy.densityKgPerM3: from 1e-3 to 1e6
 * @domain alloy.specificHeatJPerKgK: from 0 to 1e6
 * @domain alloy.latentHeatJPerKg: from 0 to 1e8
 * @domain optional wettingSuperheatK: from 0 to 1e4
 * @domain toolOffS: from 1e-9 to 1e7
 * @domain optional observeS: from 1e-9 to 1e8
 * @domain sampleTimesS.0: from 0 to 1e8
 * @domain optional accuracy: from 0.001 to 10
 * @throws DomainError outside the domain, and for an iron
 * @throws UnknownEntryError as heatJoint does
 * @throws ConvergenceError where no step is short enough
 * @example
 * heatSolderSleeve({
 *   ambientC: 20,
 *   tool: { kind: 'hot-air', airC: 350, airSpeedMPerS: 10, filmWPerM2K: 150, pressurePa: 101325, sweptMm: 8, sweptFilmWPerM2K: 120 },
 *   joint: { lapMm: 8, diameterMm: 2.4, solderMm3: 6 },
 *   conductors: [{ areaMm2: 0.5, stubMm: 6, insulation: 'PTFE', insulationOutsideMm: 1.6, clip: { distanceMm: 5, resistanceKPerW: 20, temperatureC: 20 } }],
 *   alloy: { solidusC: 138, liquidusC: 138, densityKgPerM3: 8560, specificHeatJPerKgK: 167, latentHeatJPerKg: 45000 },
 *   toolOffS: 60,
 *   sampleTimesS: [5],
 *   tube: { insideMm: 4, wallMm: 0.4, lengthMm: 26, recoveryC: 110 },
 * }) // { firstToFail: 'conductor', wettedAtS: null, steadyC: 143.36955 }
 * @source the project's model of a tube as one lump between stream and joint; conduction and radiation across an annular gap
 */
export function heatSolderSleeve(i: HeatJointInput & { readonly tool: HotAirTool; readonly tube: SolderSleeveTube }): HeatSolderSleeveResult
export function heatSolderSleeve(i: HeatJointInput & { readonly tube: SolderSleeveTube }): HeatSolderSleeveResult
export function heatSolderSleeve(i: HeatJointInput & { readonly tube: SolderSleeveTube }): HeatSolderSleeveResult {
  return solderSleeveAt(i, {})
}

/** The sleeve with what is unknown of the stream moved. */
export function solderSleeveAt(i: HeatJointInput & { readonly tube: SolderSleeveTube }, reading: Reading): HeatSolderSleeveResult {
  const open = readHeatJoint(i, { ...reading, stubsInOpen: false })
  const model: HeatModel = { ...open, source: readTube(i, open, reading.streamFactor ?? 1) }
  const { result, record } = runHeatModel(model)
  const wettedAtS = record.wettedAtS ?? Infinity
  const spoiled = record.limitAtS.some((at) => at < wettedAtS)
  const firstToFail =
    record.recoveredAtS === null ? 'tube' : record.ringMeltsAtS === null ? 'ring' : spoiled ? 'insulation' : record.wettedAtS === null ? 'conductor' : null
  return { ...result, tubeRecoversAtS: record.recoveredAtS, ringMeltsAtS: record.ringMeltsAtS, firstToFail }
}
