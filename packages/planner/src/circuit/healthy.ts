import type { Interval } from '@strandwise/core'
import type { Chain, CircuitInput, Gap } from './chain.ts'
import { sound } from './sound.ts'

/** Lowest and highest conductor temperatures during a reading. */
export interface Warmth {
  readonly lowC: number
  readonly wireC: number
  readonly beyondC: number
}

/** From air temperature to steady state at that current. */
export function warmthAt(input: CircuitInput, currentA: number, airC: Interval): Warmth {
  return {
    lowC: airC.low,
    wireC: input.wire.steadyC(currentA, airC.high),
    beyondC: input.beyond.steadyC(currentA, airC.high),
  }
}

/** Dead circuit: at air temperature. */
export const deadWarmth = (airC: Interval): Warmth => ({
  lowC: airC.low,
  wireC: airC.high,
  beyondC: airC.high,
})

function gapOhm({ wire, beyond }: CircuitInput, gap: Gap, warmth: Warmth): { low: number; high: number } {
  let low = gap.fuseOhm?.low ?? 0
  let high = gap.fuseOhm?.high ?? 0
  for (const run of gap.runs) {
    const least = [wire.ohmPerM(warmth.lowC), beyond.ohmPerM(warmth.lowC)] as const
    const most = [wire.ohmPerM(warmth.wireC), beyond.ohmPerM(warmth.beyondC)] as const
    low += run.lowM * (run.of === 'wire' ? least[0] : run.of === 'beyond' ? least[1] : Math.min(...least))
    high += run.highM * (run.of === 'wire' ? most[0] : run.of === 'beyond' ? most[1] : Math.max(...most))
  }
  return { low, high }
}

/** Resistance of a healthy circuit between any two places, without its load: rows by the first place, columns by the second. */
export function healthyOhm(chain: Chain, warmth: Warmth): (from: number, to: number) => Interval {
  const each = chain.gaps.map((gap) => gapOhm(chain.input, gap, warmth))
  return (from, to) => {
    let low = 0
    let high = 0
    const counted = new Set<string>()
    for (let n = from; n < to; n += 1) {
      const { shared } = chain.gaps[n] as Gap
      const ohm = each[n] as Interval
      if (shared === null) {
        low += ohm.low
        high += ohm.high
      } else if (!counted.has(shared)) {
        counted.add(shared)
        const whole = chain.gaps.every((gap, index) => gap.shared !== shared || (index >= from && index < to))
        low += whole ? ohm.low : 0
        high += ohm.high
      }
    }
    return { low, high }
  }
}

/** Voltage of a sound supply without load. */
export function restingSupplyV({ supplyV }: CircuitInput): Interval {
  const { batteryV, supplyShare } = sound
  const batteries = supplyV / batteryV.ofV
  if (batteries === 1 || batteries === 2) return { low: batteries * batteryV.low, high: batteries * batteryV.high }
  return { low: supplyShare.low * supplyV, high: supplyShare.high * supplyV }
}

/** Internal resistance of a sound supply. */
export function supplyOhm({ supplyV, currentA, sourceOhm }: CircuitInput): Interval {
  const ownOhm = supplyV / currentA
  return sourceOhm === null
    ? {
        low: sound.sourceShare.low * ownOhm,
        high: sound.sourceShare.high * ownOhm,
      }
    : { low: sourceOhm, high: sourceOhm }
}
