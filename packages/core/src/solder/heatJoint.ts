import { heatingRun } from './heatingRun.ts'
import type { HeatJointInput, HeatJointResult } from './heatJointTypes.ts'
import { readHeatJoint } from './readHeatJoint.ts'
import { steadyJoint } from './steadyJoint.ts'

/**
 * Tells whether and when the solder of a joint flows under an iron or hot air, and how hot the insulation's edges become meanwhile.
 * The run lasts from the tool's touch to observeS, which is at least toolOffS; an insulation is at least as wide as its wire. The lap is one lump: a real
 * one's ends lag its middle, so wettedAtS, not liquidusAtS, is the time to plan with.
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
 * @domain ambientC: above -273.15
 * @domain tool.setC: above -273.15
 * @domain optional tool.maximumW: above 0
 * @domain tool.tipResistanceKPerW: at least 0
 * @domain tool.contactResistanceKPerW: above 0
 * @domain optional tool.tipHeatCapacityJPerK: at least 0
 * @domain joint.lapMm: above 0
 * @domain joint.diameterMm: above 0
 * @domain optional joint.surfaceMm2: above 0
 * @domain joint.solderMm3: at least 0
 * @domain optional joint.filmWPerM2K: at least 0
 * @domain optional joint.emissivity: from 0 to 1
 * @domain conductors.0.areaMm2: above 0
 * @domain conductors.0.stubMm: at least 0
 * @domain optional conductors.0.stubFilmWPerM2K: at least 0
 * @domain optional conductors.0.insulationFilmWPerM2K: at least 0
 * @domain optional conductors.0.insulationShare: from 0 to 1
 * @domain optional wettingSuperheatK: at least 0
 * @domain toolOffS: above 0
 * @domain optional observeS: finite
 * @domain optional conductors.0.diameterMm: above 0
 * @domain conductors.0.insulationOutsideMm: finite
 * @domain optional accuracy: from 0.001 to 10
 * @throws DomainError outside the domain
 * @throws UnknownEntryError for an alloy, a metal or an insulation that is not listed, or a property of it that is not known
 * @throws ConvergenceError where no step is short enough
 * @example
 * heatJoint({
 *   ambientC: 20,
 *   tool: { kind: 'iron', setC: 360, maximumW: 60, tipResistanceKPerW: 1.5, contactResistanceKPerW: 3, tipHeatCapacityJPerK: 0 },
 *   joint: { lapMm: 8, diameterMm: 2.4, surfaceMm2: 60, solderMm3: 5.5, filmWPerM2K: 15, emissivity: 0.3 },
 *   conductors: [{ areaMm2: 0.75, diameterMm: 1, stubMm: 5, insulation: 'PVC', insulationOutsideMm: 2, stubFilmWPerM2K: 15, insulationFilmWPerM2K: 14, insulationShare: 0.5 }],
 *   alloy: 'Sn60Pb40',
 *   wettingSuperheatK: 30,
 *   toolOffS: 3,
 *   observeS: 30,
 *   accuracy: 1,
 * }) // { reachesLiquidus: true, everReachesLiquidus: true, steadyC: 350.88927 }
 * @source the project's model of a lap joint: one lump with the enthalpy of its melt, and conducting wires with insulated and bare stretches as fins
 */
export function heatJoint(i: HeatJointInput): HeatJointResult {
  const model = readHeatJoint(i)
  const { ambientC, wires, wireOf } = model
  const steady = steadyJoint(model)
  const { record, energyResidual } = heatingRun(model)
  const edges = <T>(of: (w: number) => T): T[] => wireOf.map(of)
  const outer = (w: number): number => {
    const wire = wires[w]
    if (wire === undefined) return 0
    const on = record.edgePeakOnK[w] as number
    const swept = wire.swept !== null && wire.stubM < wire.swept.toM ? wire.swept : null
    const onPeak = swept === null ? on * wire.outerShare : swept.riseK + (on - swept.riseK) * wire.sweptOuterShare
    return Math.max(onPeak, (record.edgePeakOffK[w] as number) * wire.outerShare)
  }
  return {
    reachesLiquidus: record.liquidusAtS !== null,
    everReachesLiquidus: steady.riseK > model.melt.liquidusRiseK,
    solidusAtS: record.solidusAtS,
    liquidusAtS: record.liquidusAtS,
    wettedAtS: record.wettedAtS,
    resolidifiedAtS: record.resolidifiedAtS,
    steadyC: ambientC + steady.riseK,
    steadyEdgeC: edges((w) => ambientC + (steady.edgeRiseK[w] as number)),
    jointAtToolOffC: ambientC + record.jointAtToolOffK,
    jointPeakC: ambientC + record.jointPeakK,
    insulationPeakC: edges((w) => ambientC + Math.max(record.edgePeakOnK[w] as number, record.edgePeakOffK[w] as number)),
    insulationOuterPeakC: edges((w) => ambientC + outer(w)),
    insulationExposureS: edges((w) => record.exposureS[w] as number),
    jointC: Array.from(record.jointK, (rise) => ambientC + rise),
    edgeC: edges((w) => Array.from(record.edgeK[w] as Float64Array, (rise) => ambientC + rise)),
    energyResidual,
  }
}
