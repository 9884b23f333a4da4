import type { Interval } from '@strandwise/core'
import { type Chain, restingSupplyV, sound, type TakenReading } from '../circuit/inner.ts'
import { type System, sameSide, systemAtCurrent, systemDead, systemOffLoad, systemWithoutCurrent } from './system.ts'

const isVolts = ({ kind }: TakenReading): boolean => kind === 'drop' || kind === 'voltage'
export const isSeriesOhms = (chain: Chain, { kind, from, to }: TakenReading): boolean =>
  (kind === 'resistance' || kind === 'four-wire') && sameSide(chain, from, to)

/** Upper bound of the supply voltage: as read at rest, else from its nominal voltage. */
export function mostSupplyV(chain: Chain, readings: readonly TakenReading[]): number {
  const last = chain.places.length - 1
  const read = readings.filter((reading) => isVolts(reading) && reading.from === 0 && reading.to === last).map(({ high }) => high)
  return Math.max(restingSupplyV(chain.input).high, ...read)
}

/** Readings above this share of the supply are impossible: another range, or another source. */
const beyondShare = 1.05

/** True for a reading on the chain and within the supply. */
export function usable(chain: Chain, reading: TakenReading): boolean {
  if (reading.from < 0 || reading.to < 0 || reading.from === reading.to) return false
  return !isVolts(reading) || !beyondSupply(chain, reading)
}

/** True for a reading above the supply. */
export function beyondSupply(chain: Chain, reading: TakenReading): boolean {
  return isVolts(reading) && reading.low > beyondShare * restingSupplyV(chain.input).high
}

/** Groups readings by the state of the circuit, and combines each group. */
export function systemsOf(chain: Chain, readings: readonly TakenReading[]): readonly System[] {
  const good = readings.filter((reading) => usable(chain, reading))
  const found: System[] = []
  for (const when of ['still', 'moved'] as const) {
    const here = good.filter((reading) => reading.when === when)
    const volts = here.filter((reading) => isVolts(reading) && reading.state === 'on')
    const dead = here.filter((reading) => isSeriesOhms(chain, reading))
    const known = volts.filter(({ currentA }) => currentA !== null && currentA.high > 0)
    const unknown = volts.filter(({ currentA }) => currentA === null || currentA.high <= 0)
    const off = here.filter((reading) => isVolts(reading) && reading.state === 'off')
    if (known.length > 0) found.push(systemAtCurrent(chain, known, dead))
    if (unknown.length > 0) found.push(systemWithoutCurrent(chain, unknown))
    if (dead.length > 0) found.push(systemDead(chain, dead))
    if (off.length > 0) found.push(systemOffLoad(chain, off))
  }
  return found
}

/** Supply voltage at rest: as read with the load off, else nominal. */
export function supplyAtRestV(chain: Chain, readings: readonly TakenReading[]): Interval & { readonly read: boolean } {
  const last = chain.places.length - 1
  const off = readings.filter((reading) => isVolts(reading) && reading.state === 'off' && reading.from === 0 && reading.to === last && usable(chain, reading))
  if (off.length === 0) return { ...restingSupplyV(chain.input), read: false }
  return {
    low: Math.min(...off.map(({ low }) => low)),
    high: Math.max(...off.map(({ high }) => high)),
    read: true,
  }
}

/** Share of the supply across a place that counts as open. */
export const openShare = 0.9
export const faultAllowanceV = ({ input }: Chain): number => sound.faultShareOfBudget * input.allowedDropV

/** True if the load itself reads open, by its own ohms. */
export const isLoadOpen = (chain: Chain, { kind, from, to, overRange }: TakenReading): boolean =>
  overRange && kind !== 'insulation' && from === chain.loadAt && to === chain.loadAt + 1
