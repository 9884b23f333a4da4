import { type Interval, readingInterval } from '@strandwise/core'
import type { JobReading, Place, ReadingKind } from '../job/index.ts'
import { assumed } from '../job/inner.ts'
import type { Chain } from './chain.ts'
import { sound } from './sound.ts'

/** A reading with its interval, entered by hand or from a meter. */
export interface PlacedReading {
  readonly kind: ReadingKind
  readonly from: Place
  readonly to: Place
  readonly load: JobReading['load']
  readonly when?: 'still' | 'moved'
  readonly low: number
  readonly high: number
  readonly currentA?: number
  readonly atC?: number
}

/** A reading on the chain: places by index in the order of the current. */
export interface TakenReading {
  readonly index: number
  readonly kind: ReadingKind
  readonly state: 'on' | 'off' | 'dead'
  readonly unplugged: boolean
  readonly when: 'still' | 'moved'
  /** -1 if the place is not on this chain. */
  readonly from: number
  readonly to: number
  readonly low: number
  readonly high: number
  /** The meter was over range: the value is a lower bound. */
  readonly overRange: boolean
  readonly currentA: Interval | null
  /** The current was given with this reading and may be another load's. */
  readonly ownCurrent: boolean
  readonly airC: number
}

const isOhms = (kind: ReadingKind): boolean => kind === 'resistance' || kind === 'four-wire' || kind === 'insulation'

function meterOf(reading: JobReading): {
  readonly percentOfReading: number
  readonly counts: number
  readonly resolution: number
} {
  const usual = usualMeter(reading.kind, reading.value)
  return {
    percentOfReading: reading.percentOfReading ?? usual.percentOfReading,
    counts: reading.counts ?? usual.counts,
    resolution: reading.resolution ?? usual.resolution,
  }
}

function usualMeter(kind: ReadingKind, value: number) {
  if (kind === 'four-wire')
    return {
      ...assumed.meterOhm,
      resolution: assumed.fourWireResolutionOhm.value,
    }
  if (kind === 'resistance') return assumed.meterOhm
  // Default accuracy. Insulation: 5 % and 1 % of the value; clamp: 2 % and 0.1 A; thermometer: 2 K.
  if (kind === 'insulation')
    return {
      percentOfReading: 5,
      counts: 1,
      resolution: Math.abs(value) / 100,
    }
  if (kind === 'current') return { percentOfReading: 2, counts: 3, resolution: 0.01 }
  if (kind === 'temperature') return { percentOfReading: 1, counts: 1, resolution: 2 }
  return assumed.meterVolt
}

/** A reading as the meter's interval takes it; what is not given of meter and leads is that of an ordinary one. */
export function meterInputs(reading: JobReading): Parameters<typeof readingInterval>[0] {
  const { kind } = reading
  const leads =
    kind === 'resistance'
      ? {
          leadOhm: reading.leadOhm ?? assumed.leadOhm.value,
          leadUncertaintyOhm: reading.leadUncertaintyOhm ?? assumed.leadOhm.uncertainty,
        }
      : {}
  return { reading: reading.value, ...meterOf(reading), ...leads }
}

/** The interval that contains the true value, from the meter's accuracy and its leads. */
export function placedReading(reading: JobReading): PlacedReading {
  const { kind, from, to, load, currentA, atC, when } = reading
  const { low, high } = readingInterval(meterInputs(reading))
  const open = isOhms(kind) && reading.value >= sound.overRangeOhm
  return {
    kind,
    from,
    to,
    load,
    low: open ? sound.overRangeOhm : low,
    high: open ? Math.max(high, sound.overRangeOhm) : high,
    ...(currentA === undefined ? {} : { currentA }),
    ...(atC === undefined ? {} : { atC }),
    ...(when === undefined ? {} : { when }),
  }
}

/** Voltage falls along the current, so a negative reading means swapped probes. */
function ordered(chain: Chain, reading: PlacedReading): Pick<TakenReading, 'from' | 'to' | 'low' | 'high'> {
  const first = chain.places.indexOf(reading.from)
  const second = chain.places.indexOf(reading.to)
  const negative = (reading.kind === 'drop' || reading.kind === 'voltage') && reading.low + reading.high < 0
  const [from, to] = first <= second || first === -1 || second === -1 ? [first, second] : [second, first]
  return {
    from,
    to,
    low: negative ? -reading.high : reading.low,
    high: negative ? -reading.low : reading.high,
  }
}

/** Places readings on the chain; a clamp's current is used for readings in the same state that give none. */
export function takenReadings(chain: Chain, readings: readonly PlacedReading[]): readonly TakenReading[] {
  const stateOf = ({ kind, load }: PlacedReading) => (isOhms(kind) ? 'dead' : load === 'on' ? 'on' : 'off')
  const clampOf = (reading: PlacedReading): Interval | null => {
    const found = readings.filter(({ kind, load, when = 'still' }) => kind === 'current' && load === reading.load && when === (reading.when ?? 'still'))
    if (found.length === 0) return null
    return {
      low: Math.max(0, Math.min(...found.map(({ low }) => low))),
      high: Math.max(...found.map(({ high }) => high)),
    }
  }
  return readings.map((reading, index) => ({
    index,
    kind: reading.kind,
    state: stateOf(reading),
    unplugged: reading.load === 'unplugged',
    when: reading.when ?? 'still',
    ...ordered(chain, reading),
    overRange: isOhms(reading.kind) && reading.low >= sound.overRangeOhm,
    currentA:
      reading.currentA === undefined
        ? clampOf(reading)
        : {
            low: sound.currentShare.low * reading.currentA,
            high: sound.currentShare.high * reading.currentA,
          },
    ownCurrent: reading.currentA !== undefined,
    airC: reading.atC ?? chain.input.ambientC,
  }))
}
