import { type SolderName, solders } from '../../materials/index.ts'
import { heatJointBandDefaults } from '../heatJointBand.ts'
import { requireWithin } from '../heatLimits.ts'
import { runHeatModel } from '../heatResult.ts'
import { solderSleeveAt } from '../heatSolderSleeve.ts'
import { sleeveEnds } from '../heatSolderSleeveBand.ts'
import { type Reading, readHeatJoint } from '../readHeatJoint.ts'
import { tipContactDefaults, tipContactKPerW } from '../tipContact.ts'
import { type HeatEnd, type HeatVerdictInput, heatVerdictDefaults } from './verdictTypes.ts'

/** Heats the joint with the tool lifted 2 s after wetting; if it does not wet in time, the tool stays for the whole time allowed. */
export function heatedEnd(i: HeatVerdictInput, reading: Reading): HeatEnd {
  const { tube, tool } = i
  const { wettedWithinS } = heatVerdictDefaults[tool.kind]
  const run = (toolOffS: number): HeatEnd['result'] => {
    const timed = { ...i, toolOffS, observeS: toolOffS + heatVerdictDefaults.watchAfterS, sampleTimesS: [] }
    return tube === undefined ? runHeatModel(readHeatJoint(timed, reading)).result : solderSleeveAt({ ...timed, tube }, reading)
  }
  const held = run(wettedWithinS)
  const wettedAtS = held.wettedAtS !== null && held.wettedAtS <= wettedWithinS ? held.wettedAtS : null
  const toolOffS = wettedAtS === null ? wettedWithinS : wettedAtS + heatVerdictDefaults.liftAfterS
  return {
    contactResistanceKPerW: tool.kind === 'iron' ? tool.contactResistanceKPerW * (reading.contactFactor ?? 1) : null,
    streamFactor: tool.kind === 'iron' ? null : (reading.streamFactor ?? 1),
    wettedAtS,
    toolOffS,
    result: wettedAtS === null ? held : run(toolOffS),
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

/** The two ends: their factors and their tube. */
export function endsOf(i: HeatVerdictInput): readonly [favourable: HeatEnd, unfavourable: HeatEnd] {
  const { tube } = i
  if (tube !== undefined) {
    const [best, worst] = sleeveEnds({ ...i, tube })
    return [heatedEnd({ ...i, tube: best.tube }, best.reading), heatedEnd({ ...i, tube: worst.tube }, worst.reading)]
  }
  const streamFactor = requireWithin('streamFactor', i.streamFactor ?? heatJointBandDefaults.streamFactor.value, 'factor')
  const filmFactor = requireWithin('filmFactor', i.filmFactor ?? heatJointBandDefaults.filmFactor.value, 'factor')
  const [better, poorer] = contactFactors(i)
  return [
    heatedEnd(i, { contactFactor: better, streamFactor, filmFactor: 1 / filmFactor }),
    heatedEnd(i, { contactFactor: poorer, streamFactor: 1 / streamFactor, filmFactor }),
  ]
}
