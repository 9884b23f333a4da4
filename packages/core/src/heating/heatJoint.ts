import type { HeatJointInput, HeatJointResult } from './heatJointTypes.ts'
import { runHeatModel } from './heatResult.ts'
import { readHeatJoint } from './readHeatJoint.ts'

/**
 * Tells whether and when the solder of a joint flows under an iron or hot air, and how hot the edges of the insulation get.
 *
 * The run lasts from first contact of the tool to observeS, which is at least toolOffS; an insulation is at least as wide as its wire. The lap is one lump: the ends of a real lap are cooler than its middle, so plan with wettedAtS, not liquidusAtS. A tool's filmWPerM2K replaces the film coefficient computed from its airSpeedMPerS.
 *
 * @equation dH/dt = P_tool - P_surface - sum(n q); H = C T + m L f(T); C' dT/dt = kA d2T/dx2 - G' (T - T_env) along each wire
 * @symbol T - result - C - temperature of the joint, one lump of copper and solder
 * @symbol H - result - J - heat in the joint
 * @symbol C - joint.lapMm - J/K - heat for each kelvin of the overlapped copper and the solder
 * @symbol m - joint.solderMm3 - kg - mass of the solder
 * @symbol L - alloy.latentHeatJPerKg - J/kg - its latent heat
 * @symbol f - result - 1 - liquid share: 0 below solidus, 1 above liquidus
 * @symbol P_tool - tool.setC - W - flow from the tool while it is on
 * @symbol P_surface - joint.filmWPerM2K - W - radiation and still air from the joint's surface
 * @symbol n - conductors.0.tails - 1 - free tails of a conductor
 * @symbol q - result - W - flow into one tail
 * @symbol C' - conductors.0.areaMm2 - J/(m K) - stored heat of a metre of wire, with a share of its insulation
 * @symbol kA - conductors.0.conductivityWPerMK - W m/K - conductance-length of the copper
 * @symbol G' - conductors.0.insulationFilmWPerM2K - W/(m K) - loss of a metre of wire
 * @domain ambientC: above -273.15 up to 3000
 * @domain tool.setC: above -273.15 up to 3000
 * @domain optional tool.maximumW: from 1e-6 to 1e6
 * @domain tool.tipResistanceKPerW: from 0 to 1e9
 * @domain tool.contactResistanceKPerW: from 1e-6 to 1e9
 * @domain optional tool.tipHeatCapacityJPerK: from 0 to 1e6
 * @domain tool.airC: above -273.15 up to 3000
 * @domain optional tool.airSpeedMPerS: from 0 to 1e4
 * @domain optional tool.filmWPerM2K: from 0 to 1e7
 * @domain optional tool.pressurePa: from 1 to 1e9
 * @domain optional tool.sweptMm: from 0 to 1e4
 * @domain optional tool.sweptFilmWPerM2K: from 0 to 1e7
 * @domain optional tool.sweptDiameterMm: from 1e-7 to 1e3
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
 * @throws DomainError outside the domain
 * @throws UnknownEntryError for an alloy, a metal or an insulation that is not listed, or a property of it that is not known
 * @throws ConvergenceError where no step is short enough
 * @example
 * heatJoint({
 *   ambientC: 20,
 *   tool: { kind: 'iron', setC: 360, maximumW: 60, tipResistanceKPerW: 1.5, contactResistanceKPerW: 3, tipHeatCapacityJPerK: 0 },
 *   joint: { lapMm: 8, diameterMm: 2.4, solderMm3: 5.5, filmWPerM2K: 15, emissivity: 0.3 },
 *   conductors: [{ areaMm2: 0.75, stubMm: 6, insulation: 'PVC', insulationOutsideMm: 2, clip: { distanceMm: 4, resistanceKPerW: 8, temperatureC: 20 } }],
 *   alloy: { solidusC: 183, liquidusC: 191, densityKgPerM3: 8500, specificHeatJPerKgK: 176, latentHeatJPerKg: 45000 },
 *   toolOffS: 3,
 *   sampleTimesS: [0.2],
 * }) // { reachesLiquidus: true, everReachesLiquidus: true, insulationExposureS: [0], steadyC: 299.00732, steadyEdgeC: [114.98738] }
 * @example
 * heatJoint({
 *   ambientC: 20,
 *   tool: { kind: 'hot-air', airC: 350, airSpeedMPerS: 5, filmWPerM2K: 150, pressurePa: 101325, sweptMm: 8, sweptFilmWPerM2K: 120, sweptDiameterMm: 2 },
 *   joint: { lapMm: 8, diameterMm: 2.4, solderMm3: 5.5 },
 *   conductors: [{ areaMm2: 2.5, stubMm: 6, insulation: 'PTFE', insulationOutsideMm: 3.4, tails: 2 }],
 *   alloy: 'SAC305',
 *   toolOffS: 60,
 * }) // { reachesLiquidus: false, everReachesLiquidus: false, solidusAtS: null, steadyC: 158.61153 }
 * @source the project's model of a lap joint: one lump with the enthalpy of its melt, and conducting wires with insulated and bare stretches as fins
 */
export function heatJoint(i: HeatJointInput): HeatJointResult {
  return runHeatModel(readHeatJoint(i)).result
}
