import type { ProofVerdict } from '@strandwise/core'
import { type Chain, deadWarmth, healthyOhm, restingSupplyV, type TakenReading, warmthAt } from '../circuit/inner.ts'
import type { Place } from '../job/index.ts'
import type { Stretch } from './diagnosisShapes.ts'
import { type Taken, takenBy, verdictOf } from './locate.ts'
import type { System } from './system.ts'
import { faultAllowanceV } from './systems.ts'

/** A stretch by its places' indices, with its result in each state. */
export interface JudgedStretch extends Stretch {
  readonly start: number
  readonly end: number
  /** True if a reading covers it. */
  readonly read: boolean
}

/** Neighbouring places that readings separate: a reading over several places without one in between is one stretch. */
function cuts(chain: Chain, systems: readonly System[]): readonly (readonly [number, number])[] {
  const sides: readonly (readonly [number, number])[] = [
    [0, chain.loadAt],
    [chain.loadAt + 1, chain.places.length - 1],
  ]
  const touched = new Set(systems.flatMap(({ readings }) => readings.flatMap(({ from, to }) => [from, to])))
  const found: (readonly [number, number])[] = []
  for (const [first, last] of sides) {
    let from = first
    while (from < last) {
      let to = from + 1
      // From a place with a probe to the next one, where a reading bounds the stretch between.
      if (touched.has(from)) {
        const next = Array.from({ length: last - from }, (_, n) => from + n + 1).find((place) => touched.has(place))
        if (next !== undefined && systems.some(({ bounds }) => Number.isFinite(bounds.most(from, next)))) to = next
      }
      found.push([from, to])
      from = to
    }
  }
  return found
}

/** Best to worst. */
const order: readonly ProofVerdict[] = ['passes', 'cannot tell', 'fails']

/** Every stretch of the circuit with its loss and verdict. */
export function stretchesOf(chain: Chain, systems: readonly System[], readings: readonly TakenReading[]): readonly JudgedStretch[] {
  return cuts(chain, systems).map(([from, to]) => judged(chain, systems, readings, from, to))
}

function judged(chain: Chain, systems: readonly System[], readings: readonly TakenReading[], from: number, to: number): JudgedStretch {
  const seen = systems
    .map((system) => {
      const taken = takenBy(chain, system, from, to)
      return {
        system,
        taken,
        verdict: verdictOf(chain, system, taken, from, to),
      }
    })
    .filter(({ system, taken, verdict }) => verdict === 'fails' || tells(chain, system, taken, from, to))
  const names = {
    from: chain.places[from] as Place,
    to: chain.places[to] as Place,
  }
  // Ohms of a dead circuit and volts off load can add a proof, never remove one.
  const fails = seen.filter(({ verdict }) => verdict === 'fails')
  const loaded = seen.filter(({ system }) => system.of === 'on')
  const passing = seen.filter(({ verdict }) => verdict === 'passes')
  const verdict: ProofVerdict =
    fails.length > 0
      ? 'fails'
      : loaded.length > 0
        ? loaded.reduce<ProofVerdict>((worst, item) => (order.indexOf(item.verdict) > order.indexOf(worst) ? item.verdict : worst), 'passes')
        : passing.length > 0
          ? 'passes'
          : 'cannot tell'
  const candidates = [...fails, ...seen.filter((item) => item.verdict === verdict), ...seen]
  const shown = candidates.find(({ system }) => system.of !== 'dead') ?? candidates[0]
  const on = shown?.system.of === 'dead' || shown === undefined ? null : shown
  const idle = idleStretch(chain, from, to)
  const used = new Set(seen.flatMap(({ taken }) => taken.readings))
  return {
    ...names,
    healthyV: shown?.taken.healthyV ?? idle.healthyV,
    allowedV: shown?.taken.allowedV ?? idle.allowedV,
    measuredV:
      on === null
        ? null
        : {
            low: Math.max(0, on.taken.measuredV.low),
            high: Math.max(0, on.taken.measuredV.high),
          },
    verdict,
    readings: readings.filter(({ index }) => used.has(index)).map(({ index }) => index),
    start: from,
    end: to,
    read: seen.length > 0,
  }
}

/** Above this share of the supply an upper bound tells nothing more than the supply's voltage. */
const tellingShare = 0.5

/** True if a reading covers this very stretch and bounds it below the supply. */
function tells(chain: Chain, { readings, bounds }: System, { measuredV }: Taken, from: number, to: number): boolean {
  const touches = (place: number) => readings.some((reading) => reading.from === place || reading.to === place)
  return bounds.contradiction === null && touches(from) && touches(to) && measuredV.high < tellingShare * restingSupplyV(chain.input).low
}

/** Without a reading: the expected drop at the working current. */
function idleStretch(chain: Chain, from: number, to: number) {
  const { input } = chain
  const air = { low: input.ambientC, high: input.ambientC }
  const low = healthyOhm(chain, deadWarmth(air))(from, to).low
  const high = healthyOhm(chain, warmthAt(input, input.currentA, air))(from, to).high
  const healthyV = { low: low * input.currentA, high: high * input.currentA }
  return { healthyV, allowedV: healthyV.high + faultAllowanceV(chain) }
}
