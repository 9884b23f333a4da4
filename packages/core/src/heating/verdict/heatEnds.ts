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

/** Checks the joint as it is given. */
export function requireJoint(i: HeatVerdictInput): void {
  const { wettedWithinS } = heatVerdictDefaults[i.tool.kind]
  readHeatJoint({ ...i, toolOffS: wettedWithinS, sampleTimesS: [] }, i.tube === undefined ? {} : { tube: i.tube })
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
export function heatedEnd(i: HeatVerdictInput, reading: Reading): HeatEnd {
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
export function endOf(i: HeatVerdictInput, name: HeatEndName): readonly [HeatVerdictInput, Reading] {
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
