import { DomainError, requireChoice } from '../../errors/index.ts'
import { endOf, heatedEnd, requireJoint } from './heatEnds.ts'
import type { HeatEnd, HeatEndName, HeatVerdictInput } from './verdictTypes.ts'

/**
 * Heats a joint at one end of its uncertainties as heatVerdict does: under the tool until it wets and 2 s more, or for the whole time allowed.
 *
 * The end is the nominal one where it is not said. The time allowed is 10 s under an iron, 60 s in hot air.
 *
 * @equation R_c/f, R_c, R_c f (h f, h, h/f for a stream); t_off = t_wet + 2 s
 * @symbol R_c - tool.contactResistanceKPerW - K/W - contact of tip and joint
 * @symbol h - tool.filmWPerM2K - W/(m2 K) - film coefficient of the stream
 * @symbol f - contactFactor - 1 - how far off it may be; streamFactor for a stream
 * @symbol t_wet - result.wettedAtS - s - when the joint is wetted
 * @symbol t_off - result.toolOffS - s - when the tool lifts
 * @domain optional contactFactor: from 1 to 1000
 * @domain optional streamFactor: from 1 to 1000
 * @domain optional filmFactor: from 1 to 1000
 * @domain optional gripFactor: from 1 to 1000
 * @domain optional recoverySpreadK: from 0 to 1e4
 * @domain optional tipWidthMm: from 0.1 to 50
 * @domain as heatSolderSleeve
 * @domain as heatJoint
 * @throws DomainError outside the domain, and as heatJoint and heatSolderSleeve do
 * @throws UnknownEntryError as heatJoint does
 * @throws ConvergenceError where no step is short enough
 * @example
 * heatAtEnd({
 *   ambientC: 20,
 *   tool: { kind: 'iron', setC: 360, maximumW: 60, tipResistanceKPerW: 1.5, contactResistanceKPerW: 6, tipHeatCapacityJPerK: 0 },
 *   joint: { lapMm: 8, diameterMm: 2.4, solderMm3: 5.5 },
 *   conductors: [{ areaMm2: 0.75, stubMm: 6, insulation: 'PVC', insulationOutsideMm: 2, clip: { distanceMm: 4, resistanceKPerW: 8, temperatureC: 20 } }],
 *   alloy: 'Sn60Pb40',
 *   tipWidthMm: 2,
 *   contactFactor: 3,
 *   streamFactor: 1.5,
 *   filmFactor: 1.3,
 *   end: 'unfavourable',
 * }) // { contactResistanceKPerW: 18 }
 * @example
 * heatAtEnd({
 *   ambientC: 20,
 *   tool: { kind: 'hot-air', airC: 350, airSpeedMPerS: 10, filmWPerM2K: 150, pressurePa: 101325, sweptMm: 8, sweptFilmWPerM2K: 120, sweptDiameterMm: 2 },
 *   joint: { lapMm: 8, diameterMm: 2.4, solderMm3: 6 },
 *   conductors: [{ areaMm2: 0.5, stubMm: 6, insulation: 'PTFE', insulationOutsideMm: 1.6 }],
 *   alloy: { solidusC: 138, liquidusC: 138, densityKgPerM3: 8560, specificHeatJPerKgK: 167, latentHeatJPerKg: 45000 },
 *   tube: { insideMm: 4, recoveredInsideMm: 1.5, wallMm: 0.4, lengthMm: 26, recoveryC: 110 },
 *   gripFactor: 3,
 *   recoverySpreadK: 10,
 *   end: 'favourable',
 * }) // { streamFactor: 1.5 }
 * @source the project's model of a lap joint, judged by workshop practice
 */
export function heatAtEnd(i: HeatVerdictInput & { readonly end?: HeatEndName }): HeatEnd {
  const { end = 'nominal', ...joint } = i
  requireChoice('end', end, ['favourable', 'nominal', 'unfavourable'])
  requireChoice('tool.kind', i.tool?.kind, ['iron', 'hot-air'])
  if (i.tube !== undefined && i.tool.kind !== 'hot-air')
    throw new DomainError('tool.kind', i.tool.kind, 'hot-air: a solder sleeve is shrunk in a stream', undefined, 'wrong-choice')
  // Errors name the caller's own fields, not those moved to an end.
  if (end !== 'nominal') requireJoint(joint)
  return heatedEnd(...endOf(joint, end))
}
