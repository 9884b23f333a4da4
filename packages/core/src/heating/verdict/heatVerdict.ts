import { heatAtEnd } from './heatAtEnd.ts'
import { endOf, heatedEnd } from './heatEnds.ts'
import { flowFinding, limitFindings, tubeFindings, worstFirst } from './heatFindings.ts'
import { heatMoves } from './heatMoves.ts'
import type { HeatMove, HeatVerdict, HeatVerdictInput } from './verdictTypes.ts'

/**
 * Judges the heating of a joint as a workshop would: whether the solder flows in time at both ends of the uncertainties, before the insulation is damaged.
 *
 * Contact resistance is one unknown for wetting and for the edge; the tool lifts 2 s after wetting. Unsound: not wetted in time even at the favourable end, or a published limit passed even there. Cannot tell: sound at the favourable end only. Caution: fails at the unfavourable end, or wets late, or passes a limit that is from memory or estimated. Sound: at both ends, in good time. In time is 10 s under an iron, 60 s in hot air. An iron's contact is bounded by solder over the whole flat and by a dry tip with light force.
 *
 * @equation R_c/f, R_c, R_c f (h f, h, h/f for a stream); t_off = t_wet + 2 s
 * @symbol R_c - tool.contactResistanceKPerW - K/W - contact of tip and joint
 * @symbol h - tool.filmWPerM2K - W/(m2 K) - film coefficient of the stream
 * @symbol f - contactFactor - 1 - how far off it may be; streamFactor for a stream
 * @symbol t_wet - result.ends.nominal.wettedAtS - s - when the joint is wetted
 * @symbol t_off - result.ends.nominal.toolOffS - s - when the tool lifts
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
 * heatVerdict({
 *   ambientC: 20,
 *   tool: { kind: 'iron', setC: 360, maximumW: 60, tipResistanceKPerW: 1.5, contactResistanceKPerW: 6, tipHeatCapacityJPerK: 0 },
 *   joint: { lapMm: 8, diameterMm: 2.4, solderMm3: 5.5 },
 *   conductors: [{ areaMm2: 0.75, stubMm: 6, insulation: 'PVC', insulationOutsideMm: 2, clip: { distanceMm: 4, resistanceKPerW: 8, temperatureC: 20 } }],
 *   alloy: 'Sn60Pb40',
 *   tipWidthMm: 2,
 *   contactFactor: 3,
 *   streamFactor: 1.5,
 *   filmFactor: 1.3,
 * }) // { verdict: 'caution' }
 * @example
 * heatVerdict({
 *   ambientC: 20,
 *   tool: { kind: 'hot-air', airC: 350, airSpeedMPerS: 10, filmWPerM2K: 150, pressurePa: 101325, sweptMm: 8, sweptFilmWPerM2K: 120, sweptDiameterMm: 2 },
 *   joint: { lapMm: 8, diameterMm: 2.4, solderMm3: 6 },
 *   conductors: [{ areaMm2: 0.5, stubMm: 6, insulation: 'PTFE', insulationOutsideMm: 1.6 }],
 *   alloy: { solidusC: 138, liquidusC: 138, densityKgPerM3: 8560, specificHeatJPerKgK: 167, latentHeatJPerKg: 45000 },
 *   tube: { insideMm: 4, recoveredInsideMm: 1.5, wallMm: 0.4, lengthMm: 26, recoveryC: 110 },
 *   gripFactor: 3,
 *   recoverySpreadK: 10,
 * }) // { verdict: 'sound' }
 * @source the project's model of a lap joint, judged by workshop practice
 */
export function heatVerdict(i: HeatVerdictInput): HeatVerdict {
  // The nominal end first, so that errors name the caller's own fields.
  const nominal = heatAtEnd(i)
  const favourable = heatedEnd(...endOf(i, 'favourable'))
  const unfavourable = heatedEnd(...endOf(i, 'unfavourable'))
  const ends = { favourable, nominal, unfavourable }
  const findings = worstFirst([flowFinding(i, ends), ...limitFindings(i, ends), ...tubeFindings(i, ends)])
  const verdict = findings[0]?.verdict ?? 'cannot tell'
  let moves: readonly HeatMove[] | null = verdict === 'sound' ? [] : null
  return {
    verdict,
    ends,
    findings,
    // Each remedy is another run: only where it is read.
    get moves() {
      moves ??= heatMoves(i, nominal)
      return moves
    },
  }
}
