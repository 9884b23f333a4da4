import type { Interval } from '@strandwise/core'
import { type Chain, deadWarmth, healthyOhm, restingSupplyV, sound, type TakenReading, warmthAt } from '../circuit/inner.ts'
import { type Bounds, combine, type Difference } from './constraints.ts'

/** Readings of one state combined: loss of every stretch, measured and healthy. */
export interface System {
  readonly of: 'on' | 'off' | 'dead'
  readonly when: 'still' | 'moved'
  /** Current of the losses; null if only the wires bound it. A dead circuit's ohms are converted to the working current. */
  readonly currentA: Interval | null
  readonly bounds: Bounds
  readonly healthyV: (from: number, to: number) => Interval
  /** Highest resistance of a healthy stretch at the working current. */
  readonly healthyOhmHigh: (from: number, to: number) => number
  /** Loss that a stretch may have above a healthy one. */
  readonly allowanceV: number
  readonly readings: readonly TakenReading[]
  /** Dead readings overruled by contradictory ones under load. */
  readonly yielding: readonly number[]
}

/** True if both ends are on one side of the load. */
export const sameSide = (chain: Chain, from: number, to: number): boolean => from > chain.loadAt === to > chain.loadAt

/** Factor on all bounds before a contradiction counts: a Gaussian error exceeds its bound once in twelve, twice its bound hardly ever. */
const widening = 2

function widened(low: number, high: number, share: number): { readonly low: number; readonly high: number } {
  const middle = (low + high) / 2
  const half = ((high - low) / 2) * share
  return { low: middle - half, high: middle + half }
}

/** Bounds of the healthy circuit: every stretch drops at least its healthy minimum, and the load does not feed back. */
function drops(chain: Chain, least: (from: number, to: number) => number): Difference[] {
  const found: Difference[] = []
  for (let from = 0; from < chain.places.length; from += 1)
    for (let to = from + 1; to < chain.places.length; to += 1) {
      if (sameSide(chain, from, to))
        found.push({
          from,
          to,
          low: least(from, to),
          high: Number.POSITIVE_INFINITY,
        })
      else if (from === chain.loadAt && to === from + 1) found.push({ from, to, low: 0, high: Number.POSITIVE_INFINITY })
    }
  return found
}

/** Combines the readings as they are, then with widened bounds, before calling them contradictory. */
function consistent(count: number, free: readonly Difference[], read: readonly Difference[]): Bounds {
  const exact = combine(count, [...free, ...read])
  if (exact.contradiction === null) return exact
  const wide = combine(count, [
    ...free,
    ...read.map((item) => ({
      ...item,
      ...(Number.isFinite(item.high) ? widened(item.low, item.high, widening) : {}),
    })),
  ])
  return wide.contradiction === null ? wide : exact
}

const airOf = (readings: readonly TakenReading[]): Interval => ({
  low: Math.min(...readings.map(({ airC }) => airC)),
  high: Math.max(...readings.map(({ airC }) => airC)),
})

const spread = (intervals: readonly Interval[]): Interval => ({
  low: Math.min(...intervals.map(({ low }) => low)),
  high: Math.max(...intervals.map(({ high }) => high)),
})

const budgetShareV = ({ input }: Chain): number => sound.faultShareOfBudget * input.allowedDropV

/** Currents that differ by more than this factor are scaled to the working current. */
const sameCurrentShare = 1.05

/** Volts under load at known current; if the currents differ, scaled to the working current. */
export function systemAtCurrent(chain: Chain, readings: readonly TakenReading[], dead: readonly TakenReading[]): System {
  const { input, places } = chain
  const currents = readings.map(({ currentA }) => currentA as Interval)
  const range = spread(currents)
  const differ = range.high > sameCurrentShare * range.low && currents.some(({ low, high }) => low > range.low || high < range.high)
  const at: Interval = differ ? { low: input.currentA, high: input.currentA } : range
  const warmth = warmthAt(input, Math.max(range.high, at.high), airOf(readings))
  const ohm = healthyOhm(chain, warmth)
  const cold = healthyOhm(chain, deadWarmth(airOf(readings)))
  const healthyV = (from: number, to: number) => ({
    low: at.low * ohm(from, to).low,
    high: at.high * ohm(from, to).high,
  })
  const read = readings.map(({ from, to, low, high, currentA, index }): Difference => {
    const { low: leastA, high: mostA } = currentA as Interval
    const brought = differ
      ? {
          low: low * (input.currentA / (low < 0 ? leastA : mostA)),
          high: (high * input.currentA) / leastA,
        }
      : { low, high }
    return { from, to, ...brought, reading: index }
  })
  const ohms = dead.map(({ from, to, low, high, overRange, index }): Difference => {
    const warmer = cold(from, to).high > 0 ? ohm(from, to).high / cold(from, to).high : 1
    return {
      from,
      to,
      low: low * at.low,
      high: overRange ? Number.POSITIVE_INFINITY : high * at.high * warmer,
      reading: index,
    }
  })
  const free = drops(chain, (from, to) => healthyV(from, to).low)
  const all = consistent(places.length, free, [...read, ...ohms])
  const loaded = all.contradiction === null || ohms.length === 0 ? all : consistent(places.length, free, read)
  return {
    of: 'on',
    when: readings[0]?.when ?? 'still',
    currentA: at,
    bounds: loaded,
    healthyV,
    healthyOhmHigh: (from, to) => ohm(from, to).high,
    allowanceV: (budgetShareV(chain) * (at.low + at.high)) / 2 / input.currentA,
    readings,
    yielding: loaded === all || loaded.contradiction !== null ? [] : (all.contradiction ?? []).filter((index) => dead.some((item) => item.index === index)),
  }
}

/** Volts under load without a current: bounded by drop over the wires' resistance. */
export function systemWithoutCurrent(chain: Chain, readings: readonly TakenReading[]): System {
  const { input, places } = chain
  const free = drops(chain, () => 0)
  const read = readings.map(
    ({ from, to, low, high, index }): Difference => ({
      from,
      to,
      low,
      high,
      reading: index,
    }),
  )
  const bounds = consistent(places.length, free, read)
  const supplied: Difference = {
    from: 0,
    to: places.length - 1,
    low: 0,
    high: restingSupplyV(input).high,
  }
  // Two readings that err against each other leave a stretch between them next to nothing: its bound is taken wide.
  const wide = read.map((item) => ({ ...item, ...widened(item.low, item.high, widening) }))
  const within = combine(places.length, [...free, ...wide, supplied])
  const cold = healthyOhm(chain, deadWarmth(airOf(readings)))
  const last = places.length - 1
  let mostA = restingSupplyV(input).high / (cold(0, chain.loadAt).low + cold(chain.loadAt + 1, last).low)
  for (let from = 0; from < last; from += 1)
    for (let to = from + 1; to <= last; to += 1)
      if (sameSide(chain, from, to) && cold(from, to).low > 0) mostA = Math.min(mostA, Math.max(0, within.most(from, to)) / cold(from, to).low)
  const ohm = healthyOhm(chain, warmthAt(input, mostA, airOf(readings)))
  const working = healthyOhm(chain, warmthAt(input, input.currentA, airOf(readings)))
  return {
    of: 'on',
    when: readings[0]?.when ?? 'still',
    currentA: null,
    bounds,
    healthyV: (from, to) => ({ low: 0, high: mostA * ohm(from, to).high }),
    healthyOhmHigh: (from, to) => working(from, to).high,
    allowanceV: budgetShareV(chain),
    readings,
    yielding: [],
  }
}

/** Volts with the load off: no current flows, so a sound lead has no loss. */
export function systemOffLoad(chain: Chain, readings: readonly TakenReading[]): System {
  const read = readings.map(
    ({ from, to, low, high, index }): Difference => ({
      from,
      to,
      low,
      high,
      reading: index,
    }),
  )
  return {
    of: 'off',
    when: readings[0]?.when ?? 'still',
    currentA: { low: 0, high: 0 },
    bounds: consistent(
      chain.places.length,
      drops(chain, () => 0),
      read,
    ),
    healthyV: () => ({ low: 0, high: 0 }),
    healthyOhmHigh: () => 0,
    allowanceV: Math.max(budgetShareV(chain), sound.offLoadShare * chain.input.supplyV),
    readings,
    yielding: [],
  }
}

/** Ohms of a dead circuit, as the drop at the working current. */
export function systemDead(chain: Chain, readings: readonly TakenReading[]): System {
  const { input, places } = chain
  const ohm = healthyOhm(chain, deadWarmth(airOf(readings)))
  const healthyV = (from: number, to: number) => ({
    low: input.currentA * ohm(from, to).low,
    high: input.currentA * ohm(from, to).high,
  })
  const read = readings.map(
    ({ from, to, low, high, overRange, index }): Difference => ({
      from,
      to,
      low: low * input.currentA,
      high: overRange ? Number.POSITIVE_INFINITY : high * input.currentA,
      reading: index,
    }),
  )
  return {
    of: 'dead',
    when: readings[0]?.when ?? 'still',
    currentA: { low: input.currentA, high: input.currentA },
    bounds: consistent(
      places.length,
      drops(chain, (from, to) => healthyV(from, to).low),
      read,
    ),
    healthyV,
    healthyOhmHigh: (from, to) => ohm(from, to).high,
    allowanceV: budgetShareV(chain),
    readings,
    yielding: [],
  }
}
