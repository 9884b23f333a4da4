import { heatJointBandDefaults } from '../heatJointBand.ts'
import { contactOf, heatedEnd } from './heatEnds.ts'
import type { HeatEnd, HeatMove, HeatVerdictInput } from './verdictTypes.ts'

/** Two ways side by side: a share of the flat is bridged by solder, the rest is dry. */
function sideBySideKPerW(bridgedShare: number, wettedKPerW: number, dryKPerW: number): number {
  return 1 / (bridgedShare / wettedKPerW + (1 - bridgedShare) / dryKPerW)
}

/** The contact after each thing that a hand can do, from what it is now: the share that is bridged follows from it. */
function contactsAfter(i: HeatVerdictInput, nowKPerW: number): readonly (readonly [HeatMove['lever'], number])[] {
  const { wettedKPerW, dryKPerW, fluxedKPerW, pressedKPerW } = contactOf(i)
  const share = Math.min(1, Math.max(0, (1 / nowKPerW - 1 / dryKPerW) / (1 / wettedKPerW - 1 / dryKPerW)))
  // A contact worse than the dry one that is reckoned is so by dirt: each move helps in proportion.
  const scale = nowKPerW / sideBySideKPerW(share, wettedKPerW, dryKPerW)
  return [
    ['wet-tip', Math.min(nowKPerW, wettedKPerW)],
    ['flux', scale * sideBySideKPerW(share, wettedKPerW, fluxedKPerW)],
    ['press', scale * sideBySideKPerW(share, wettedKPerW, pressedKPerW)],
  ]
}

/** What each move gains against the nominal joint, the largest gain first. */
export function heatMoves(i: HeatVerdictInput, nominal: HeatEnd): readonly HeatMove[] {
  const { tool } = i
  const gained = (wettedAtS: number | null): number | null => (wettedAtS === null || nominal.wettedAtS === null ? null : nominal.wettedAtS - wettedAtS)
  if (tool.kind !== 'iron') {
    const streamFactor = i.streamFactor ?? heatJointBandDefaults.streamFactor.value
    const { wettedAtS } = heatedEnd(i, { streamFactor })
    return [{ lever: 'nearer', contactResistanceKPerW: null, streamFactor, wettedAtS, gainS: gained(wettedAtS) }]
  }
  const now = tool.contactResistanceKPerW
  return contactsAfter(i, now)
    .filter(([, to]) => to < now * (1 - 1e-9))
    .map(([lever, to]): HeatMove => {
      const { wettedAtS } = heatedEnd(i, { contactFactor: to / now })
      return { lever, contactResistanceKPerW: to, streamFactor: null, wettedAtS, gainS: gained(wettedAtS) }
    })
    .sort((a, b) => (a.contactResistanceKPerW ?? 0) - (b.contactResistanceKPerW ?? 0))
}
