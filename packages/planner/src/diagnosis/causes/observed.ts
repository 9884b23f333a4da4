import type { Chain, TakenReading } from '../../circuit/inner.ts'
import type { Ask } from './model.ts'

/** A reading as input of the fit: the probe, its value and its uncertainty. */
export interface Observed {
  readonly ask: Ask
  readonly value: number
  /** Standard uncertainty, in the unit, or of the logarithm. */
  readonly uncertainty: number
  readonly logarithm: boolean
  /** The meter was over range: the value is a lower bound. */
  readonly atLeast: boolean
  /** A current entered beside a reading, possibly another load's. */
  readonly hearsay: boolean
}

/** Standard uncertainty of a rectangular distribution: half width over the square root of 3. */
const divisor = Math.sqrt(3)
/** Ohms below this many standard uncertainties are fitted linearly, above it by their logarithm. */
const logarithmAbove = 3
const leastLogarithm = 0.02
/** Scatter of a thermometer on a wire, and of an entered current. */
const touchK = 2
const toldCurrent = 0.1

/** Below this share of the working current, an entered current only means that nothing flows. */
const leastToldShare = 0.02

export function askOf({ input }: Chain, reading: TakenReading): Ask {
  const { kind, state, when, from, to, currentA, ownCurrent, airC } = reading
  const told = ownCurrent && currentA !== null && currentA.low > leastToldShare * input.currentA
  return { kind, state, when, from, to, airC, currentA: told ? (currentA.low + currentA.high) / 2 : null }
}

function observed(chain: Chain, reading: TakenReading): Observed {
  const ask = askOf(chain, reading)
  const value = (reading.low + reading.high) / 2
  const bound = (reading.high - reading.low) / 2
  const plain = Math.max(bound / divisor, 1e-9)
  const base = { ask, atLeast: reading.overRange, hearsay: false }
  if (reading.state === 'dead') {
    if (reading.overRange) return { ...base, value: Math.log(reading.low), uncertainty: 0.2, logarithm: true }
    if (value > logarithmAbove * plain) return { ...base, value: Math.log(value), uncertainty: Math.max(leastLogarithm, plain / value), logarithm: true }
    return { ...base, value, uncertainty: plain, logarithm: false }
  }
  if (ask.kind === 'temperature') return { ...base, value, uncertainty: Math.hypot(plain, touchK), logarithm: false }
  // The entered current scales the loss; its own uncertainty is added.
  const across = ask.from <= chain.loadAt && ask.to > chain.loadAt
  const lostV = across ? Math.max(0, chain.input.supplyV - value) : value
  const told = ask.currentA === null || reading.currentA === null ? 0 : ((reading.currentA.high - reading.currentA.low) / 2 / divisor / ask.currentA) * lostV
  return { ...base, value, uncertainty: Math.hypot(plain, told), logarithm: false }
}

/** Readings on the chain as observations; a current entered beside them counts once per state. */
export function observations(chain: Chain, readings: readonly TakenReading[]): readonly Observed[] {
  const found = readings.map((reading) => observed(chain, reading))
  for (const when of ['still', 'moved'] as const) {
    const clamped = readings.some((reading) => reading.kind === 'current' && reading.state === 'on' && reading.when === when)
    const told = clamped ? [] : [...new Set(found.filter(({ ask }) => ask.state === 'on' && ask.when === when).flatMap(({ ask }) => ask.currentA ?? []))]
    for (const currentA of told)
      found.push({
        ask: { kind: 'current', state: 'on', when, from: 0, to: 1, currentA: null, airC: 0 },
        value: Math.log(currentA),
        uncertainty: toldCurrent,
        logarithm: true,
        atLeast: false,
        hearsay: true,
      })
  }
  return found
}

/** Limit of an entered current's residual, in standard uncertainties. */
const hearsayAt = 3

/** Residual of a prediction, in standard uncertainties. */
export function residual({ value, uncertainty, logarithm, atLeast, hearsay }: Observed, shown: number): number {
  const asRead = logarithm ? Math.log(Math.max(shown, 1e-12)) : shown
  const away = (asRead - value) / uncertainty
  if (atLeast && away > 0) return 0
  return hearsay ? away / Math.sqrt(1 + (away / hearsayAt) ** 2) : away
}
