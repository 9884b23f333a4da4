import { heatJointBandDefaults } from '../heatJointBand.ts'
import { contactOf, wettedAtEndS } from './heatEnds.ts'
import type { HeatEnd, HeatMove, HeatVerdictInput } from './verdictTypes.ts'

/** Parallel resistance of the flat's bridged share and its dry rest. */
function sideBySideKPerW(bridgedShare: number, wettedKPerW: number, dryKPerW: number): number {
  return 1 / (bridgedShare / wettedKPerW + (1 - bridgedShare) / dryKPerW)
}

/** Contact resistance after each remedy, from the bridged share that the present resistance implies. */
function contactsAfter(i: HeatVerdictInput, nowKPerW: number): readonly (readonly [HeatMove['lever'], number])[] {
  const { wettedKPerW, dryKPerW, fluxedKPerW, pressedKPerW } = contactOf(i)
  const share = Math.min(1, Math.max(0, (1 / nowKPerW - 1 / dryKPerW) / (1 / wettedKPerW - 1 / dryKPerW)))
  // A contact worse than the computed dry one is dirty: each remedy is assumed to help in proportion.
  const scale = nowKPerW / sideBySideKPerW(share, wettedKPerW, dryKPerW)
  return [
    ['wet-tip', Math.min(nowKPerW, wettedKPerW)],
    ['flux', scale * sideBySideKPerW(share, wettedKPerW, fluxedKPerW)],
    ['press', scale * sideBySideKPerW(share, wettedKPerW, pressedKPerW)],
  ]
}

/** Remedies with their gain over the nominal joint, largest first. */
export function heatMoves(i: HeatVerdictInput, nominal: HeatEnd): readonly HeatMove[] {
  const { tool } = i
  const gained = (wettedAtS: number | null): number | null => (wettedAtS === null || nominal.wettedAtS === null ? null : nominal.wettedAtS - wettedAtS)
  if (tool.kind !== 'iron') {
    const streamFactor = i.streamFactor ?? heatJointBandDefaults.streamFactor.value
    const wettedAtS = wettedAtEndS(i, { streamFactor })
    return [{ lever: 'nearer', contactResistanceKPerW: null, streamFactor, wettedAtS, gainS: gained(wettedAtS) }]
  }
  const now = tool.contactResistanceKPerW
  return contactsAfter(i, now)
    .filter(([, to]) => to < now * (1 - 1e-9))
    .map(([lever, to]): HeatMove => {
      const wettedAtS = wettedAtEndS(i, { contactFactor: to / now })
      return { lever, contactResistanceKPerW: to, streamFactor: null, wettedAtS, gainS: gained(wettedAtS) }
    })
    .sort((a, b) => (a.contactResistanceKPerW ?? 0) - (b.contactResistanceKPerW ?? 0))
}
