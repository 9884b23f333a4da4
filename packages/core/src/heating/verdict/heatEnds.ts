import { DomainError, requireChoice } from '../../errors/index.ts'
import { type SolderName, solders } from '../../materials/index.ts'
import { heatJointBandDefaults } from '../heatJointBand.ts'
import { requireWithin } from '../heatLimits.ts'
import { runHeatModel } from '../heatResult.ts'
import { solderSleeveAt } from '../heatSolderSleeve.ts'
import { sleeveEnds } from '../heatSolderSleeveBand.ts'
import { type Reading, readHeatJoint } from '../readHeatJoint.ts'
import { tipContactDefaults, tipContactKPerW } from '../tipContact.ts'
import { type HeatEnd, type HeatEndName, type HeatVerdictInput, heatVerdictDefaults } from './verdictTypes.ts'

type Result = HeatEnd['result']

/** One run at an end of the uncertainties. */
function runAt(i: HeatVerdictInput, reading: Reading, toolOffS: number, untilWetted: boolean): Result {
  const { tube } = i
  const timed = { ...i, toolOffS, observeS: toolOffS + heatVerdictDefaults.watchAfterS, sampleTimesS: [] }
  return tube === undefined ? runHeatModel(readHeatJoint(timed, reading), untilWetted).result : solderSleeveAt({ ...timed, tube }, reading, untilWetted)
}

/** The joint held under the tool until it wets, at the most for the time allowed; and when it wetted, null if not in that time. */
function heldEnd(i: HeatVerdictInput, reading: Reading): { readonly wettedAtS: number | null; readonly held: Result } {
  const { wettedWithinS } = heatVerdictDefaults[i.tool.kind]
  const held = runAt(i, reading, wettedWithinS, true)
  return { held, wettedAtS: held.wettedAtS !== null && held.wettedAtS <= wettedWithinS ? held.wettedAtS : null }
}

/** Time of wetting; null if it is not within the time allowed. */
export const wettedAtEndS = (i: HeatVerdictInput, reading: Reading): number | null => heldEnd(i, reading).wettedAtS

/** Heats the joint with the tool lifted 2 s after wetting; if it does not wet in time, the tool stays for the whole time allowed. */
function heatedEnd(i: HeatVerdictInput, reading: Reading): HeatEnd {
  const { tool } = i
  const { held, wettedAtS } = heldEnd(i, reading)
  const toolOffS = wettedAtS === null ? heatVerdictDefaults[tool.kind].wettedWithinS : wettedAtS + heatVerdictDefaults.liftAfterS
  return {
    contactResistanceKPerW: tool.kind === 'iron' ? tool.contactResistanceKPerW * (reading.contactFactor ?? 1) : null,
    streamFactor: tool.kind === 'iron' ? null : (reading.streamFactor ?? 1),
    wettedAtS,
    toolOffS,
    result: wettedAtS === null ? held : runAt(i, reading, toolOffS, false),
  }
}

function solderWPerMK(alloy: HeatVerdictInput['alloy']): number {
  const known = typeof alloy === 'string' ? solders[alloy satisfies SolderName]?.conductivityWPerMK : null
  return known?.nominal ?? tipContactDefaults.solderWPerMK.value
}

/** Bounds of the contact of this tip on this joint. */
export function contactOf(i: HeatVerdictInput, more: { readonly bridgeMm?: number; readonly forceN?: number } = {}): ReturnType<typeof tipContactKPerW> {
  const tipWidthMm = i.tipWidthMm ?? tipContactDefaults.tipWidthMm.value
  return tipContactKPerW({ diameterMm: i.joint.diameterMm, tipWidthMm, solderWPerMK: solderWPerMK(i.alloy), ...more })
}

/** Factors on the contact resistance at either end of its uncertainty, bounded by solder over the whole flat and by a dry tip with light force. */
function contactFactors(i: HeatVerdictInput): readonly [favourable: number, unfavourable: number] {
  const factor = requireWithin('contactFactor', i.contactFactor ?? heatJointBandDefaults.contactFactor.value, 'factor')
  if (i.tool.kind !== 'iron') return [1, 1]
  const nominal = i.tool.contactResistanceKPerW
  const best = contactOf(i, { bridgeMm: tipContactDefaults.bridgeMm.low }).wettedKPerW
  const worst = contactOf(i, { forceN: tipContactDefaults.forceN.low }).dryKPerW
  return [Math.max(nominal / factor, Math.min(nominal, best)) / nominal, Math.min(nominal * factor, Math.max(nominal, worst)) / nominal]
}

/** Joint and factors at one end. */
function endOf(i: HeatVerdictInput, name: HeatEndName): readonly [HeatVerdictInput, Reading] {
  const { tube } = i
  if (name === 'nominal') return [i, {}]
  const better = name === 'favourable'
  if (tube !== undefined) {
    const [best, worst] = sleeveEnds({ ...i, tube })
    const end = better ? best : worst
    return [{ ...i, tube: end.tube }, end.reading]
  }
  const stream = requireWithin('streamFactor', i.streamFactor ?? heatJointBandDefaults.streamFactor.value, 'factor')
  const film = requireWithin('filmFactor', i.filmFactor ?? heatJointBandDefaults.filmFactor.value, 'factor')
  const [favourable, unfavourable] = contactFactors(i)
  const reading = better
    ? { contactFactor: favourable, streamFactor: stream, filmFactor: 1 / film }
    : { contactFactor: unfavourable, streamFactor: 1 / stream, filmFactor: film }
  return [i, reading]
}

/**
 * Heats a joint at one end of its uncertainties as heatVerdict does: under the tool until it wets and 2 s more, or for the whole time allowed.
 *
 * The time allowed is 10 s under an iron, 60 s in hot air.
 *
 * @equation R_c/f, R_c, R_c f (h f, h, h/f for a stream); t_off = t_wet + 2 s
 * @symbol R_c - tool.contactResistanceKPerW - K/W - contact of tip and joint
 * @symbol h - tool.filmWPerM2K - W/(m2 K) - film coefficient of the stream
 * @symbol f - contactFactor - 1 - how far off it may be; streamFactor for a stream
 * @symbol t_wet - result.wettedAtS - s - when the joint is wetted
 * @symbol t_off - result.toolOffS - s - when the tool lifts
 * @domain as heatVerdict
 * @throws DomainError outside the domain, and as heatJoint and heatSolderSleeve do
 * @throws UnknownEntryError as heatJoint does
 * @throws ConvergenceError where no step is short enough
 * @example
 * heatAtEnd(
 *   {
 *     ambientC: 20,
 *     tool: { kind: 'iron', setC: 360, maximumW: 60, tipResistanceKPerW: 1.5, contactResistanceKPerW: 6 },
 *     joint: { lapMm: 8, diameterMm: 2.4, solderMm3: 5.5 },
 *     conductors: [{ areaMm2: 0.75, stubMm: 6, insulation: 'PVC', insulationOutsideMm: 2 }],
 *     alloy: 'Sn60Pb40',
 *   },
 *   'unfavourable',
 * ) // { contactResistanceKPerW: 18 }
 * @source the project's model of a lap joint, judged by workshop practice
 */
export function heatAtEnd(i: HeatVerdictInput, end: HeatEndName): HeatEnd {
  requireChoice('end', end, ['favourable', 'nominal', 'unfavourable'])
  requireChoice('tool.kind', i.tool?.kind, ['iron', 'hot-air'])
  if (i.tube !== undefined && i.tool.kind !== 'hot-air')
    throw new DomainError('tool.kind', i.tool.kind, 'hot-air: a solder sleeve is shrunk in a stream', undefined, 'wrong-choice')
  return heatedEnd(...endOf(i, end))
}
