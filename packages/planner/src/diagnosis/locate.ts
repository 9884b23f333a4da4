import type { Interval, ProofVerdict } from '@strandwise/core'
import { type Chain, restingSupplyV, sound, supplyOhm, type TakenReading } from '../circuit/inner.ts'
import { type System, sameSide } from './system.ts'
import { isSeriesOhms, supplyAtRestV, usable } from './systems.ts'

/** A span with a proven fault, and the readings that prove it. */
export interface Proven {
  readonly from: number
  readonly to: number
  readonly kind: 'series' | 'supply' | 'short' | 'leak' | 'load'
  readonly excessV: number
  readonly readings: readonly number[]
}

/** Measured loss of a span in one state, without the load if that lies in it. */
export interface Taken {
  readonly measuredV: Interval
  readonly healthyV: Interval
  readonly allowedV: number
  readonly readings: readonly number[]
  /** True if a reading bounds it from above. */
  readonly bounded: boolean
}

/** Loss along a span; across the load, the loss of both leads together. */
export function takenBy(chain: Chain, system: System, from: number, to: number): Taken {
  const { bounds, healthyV, allowanceV } = system
  const plus = chain.loadAt
  const minus = plus + 1
  if (sameSide(chain, from, to)) {
    const healthy = healthyV(from, to)
    const high = bounds.most(from, to)
    return {
      measuredV: { low: bounds.least(from, to), high },
      healthyV: healthy,
      allowedV: healthy.high + allowanceV,
      readings: bounds.reasons(from, to),
      bounded: Number.isFinite(high),
    }
  }
  const out = healthyV(from, plus)
  const back = healthyV(minus, to)
  const healthy = { low: out.low + back.low, high: out.high + back.high }
  const loadMost = bounds.most(plus, minus)
  const byLoad = {
    low: Number.isFinite(loadMost) ? bounds.least(from, to) - loadMost : 0,
    high: bounds.most(from, to) - Math.max(0, bounds.least(plus, minus)),
  }
  const high = Math.min(byLoad.high, bounds.most(from, plus) + bounds.most(minus, to))
  return {
    measuredV: {
      low: Math.max(byLoad.low, bounds.least(from, plus) + bounds.least(minus, to)),
      high,
    },
    healthyV: healthy,
    allowedV: healthy.high + allowanceV,
    readings: [...new Set([...bounds.reasons(from, to), ...bounds.reasons(plus, minus)])],
    bounded: Number.isFinite(high),
  }
}

/** Verdict on a span. Off load no current flows: a loss proves a fault, no loss proves nothing. */
export function verdictOf(chain: Chain, system: System, { measuredV, allowedV, bounded }: Taken, from: number, to: number): ProofVerdict {
  if (system.bounds.contradiction !== null) return 'cannot tell'
  if (measuredV.low > allowedV) return 'fails'
  if (!bounded || system.of === 'off') return 'cannot tell'
  return measuredV.high <= passLimitV(chain, system, allowedV, from, to) ? 'passes' : 'cannot tell'
}

/** Without a known current a small drop may only mean a small current: the limit to pass is that of the stated load. */
function passLimitV({ input }: Chain, system: System, allowedV: number, from: number, to: number): number {
  if (system.currentA !== null) return allowedV
  const ohmHigh = system.healthyOhmHigh(from, to)
  return Math.min(allowedV, input.currentA * ohmHigh + system.allowanceV)
}

/** Every span with a fault proven in some state. */
export function provenSpans(chain: Chain, systems: readonly System[]): readonly Proven[] {
  const found: Proven[] = []
  const count = chain.places.length
  for (const system of systems) {
    if (system.bounds.contradiction !== null) continue
    for (let from = 0; from < count; from += 1)
      for (let to = from + 1; to < count; to += 1) {
        if (from === chain.loadAt && to === from + 1) continue
        const taken = takenBy(chain, system, from, to)
        if (taken.measuredV.low > taken.allowedV)
          found.push({
            from,
            to,
            kind: 'series',
            excessV: taken.measuredV.low - taken.healthyV.high,
            readings: taken.readings,
          })
      }
  }
  return found
}

/** A supply that is low, or that sags more than a sound one would. */
export function weakSupply(chain: Chain, systems: readonly System[], readings: readonly TakenReading[]): Proven | null {
  const last = chain.places.length - 1
  const rest = supplyAtRestV(chain, readings)
  const nominal = restingSupplyV(chain.input)
  const ownOhm = supplyOhm(chain.input)
  const allowance = sound.faultShareOfBudget * chain.input.allowedDropV
  let best: Proven | null = null
  const note = (excessV: number, used: readonly number[]) => {
    if (excessV > 0 && (best === null || excessV > best.excessV)) best = { from: 0, to: last, kind: 'supply', excessV, readings: used }
  }
  for (const { of, bounds, currentA } of systems) {
    if (of === 'dead' || bounds.contradiction !== null) continue
    const shownV = bounds.most(0, last)
    if (!Number.isFinite(shownV)) continue
    const mostA = of === 'off' ? 0 : (currentA?.high ?? Math.max(chain.input.currentA, 0))
    note(nominal.low - mostA * ownOhm.high - allowance - shownV, bounds.reasons(0, last))
    if (of === 'on' && currentA !== null && rest.read) note(rest.low - mostA * ownOhm.high - allowance - shownV, bounds.reasons(0, last))
  }
  return best
}

/** Resistance between feed and return with the load unplugged: a short, or a leak. Readings across the load itself belong to the load. */
export function crossing(chain: Chain, readings: readonly TakenReading[]): readonly Proven[] {
  const found: Proven[] = []
  for (const reading of readings) {
    if (!usable(chain, reading) || reading.state !== 'dead' || isSeriesOhms(chain, reading) || sameSide(chain, reading.from, reading.to)) continue
    if (reading.from === chain.loadAt && reading.to === chain.loadAt + 1 && reading.kind !== 'insulation') continue
    const { from, to, index } = reading
    if (reading.high < sound.shortOhm)
      found.push({
        from,
        to,
        kind: 'short',
        excessV: chain.input.supplyV,
        readings: [index],
      })
    else if (reading.high < sound.leak.belowOhm)
      found.push({
        from,
        to,
        kind: 'leak',
        excessV: chain.input.supplyV,
        readings: [index],
      })
  }
  return found
}

/** The narrowest proven span: none lies inside it; of several, the one with fewest places, then the largest excess. */
export function narrowest(spans: readonly Proven[]): Proven | null {
  const sorted = spans.toSorted((one, other) => one.to - one.from - (other.to - other.from) || other.excessV - one.excessV)
  return sorted[0] ?? null
}
