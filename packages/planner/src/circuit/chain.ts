import type { CircuitKind, Interval } from '@strandwise/core'
import type { Place } from '../job/index.ts'
import { placesInOrder } from './places.ts'
import { sound } from './sound.ts'

/** A piece of wire as a resistor: resistance by temperature, and steady temperature by current. */
export interface WirePiece {
  /** Resistance per metre of the wire, with straight strands. */
  readonly ohmPerM: (temperatureC: number) => number
  /** Steady temperature of the conductor; the ceiling if there is none. */
  readonly steadyC: (currentA: number, airC: number) => number
}

/** Input of the chain, from the job's facts. */
export interface CircuitInput {
  readonly where: 'feed' | 'return'
  readonly supplyV: number
  readonly allowedDropV: number
  readonly currentA: number
  readonly ambientC: number
  readonly outLengthM: number
  readonly returnLengthM: number
  readonly fromTerminationM: number
  readonly fuseA: number | null
  readonly fuseDistanceM: number | null
  readonly sourceOhm: number | null
  readonly wire: WirePiece
  /** The other wire between joint and plug, if any. */
  readonly beyond: WirePiece
  readonly load: LoadGiven
  /** Current rating of the terminal in the hottest air; null without a rating. */
  readonly terminalA: number | null
}

/** The load as the job gives it. */
export interface LoadGiven {
  /** How it was stated; that quantity stays constant when its voltage changes. */
  readonly by: 'current' | 'power' | 'resistance'
  readonly kind: CircuitKind
  readonly stallA: number | null
}

/** A length of wire with bounds, lay and length tolerance included. */
interface Run {
  readonly of: 'wire' | 'beyond' | 'joint'
  /** A length given in the job, or the resistance of a sound joint or contact. */
  readonly as: 'length' | 'joint' | 'contact'
  /** Length given; 0 for a joint or contact. */
  readonly metres: number
  readonly lowM: number
  readonly highM: number
}

/** The circuit between two neighbouring places. */
export interface Gap {
  readonly runs: readonly Run[]
  readonly fuseOhm: Interval | null
  /** Pieces of the same name share one length: each may have any part of it, together they have all. */
  readonly shared: 'feed' | 'return' | null
}

/** The circuit as a chain of stretches between neighbouring places. */
export interface Chain {
  readonly input: CircuitInput
  readonly places: readonly Place[]
  /** Index of load+: the load is between this place and the next. */
  readonly loadAt: number
  readonly gaps: readonly Gap[]
}

const straight = (lengthM: number): Omit<Run, 'of'> => ({
  as: 'length',
  metres: lengthM,
  lowM: lengthM * sound.lay.low * sound.lengthShare.low,
  highM: lengthM * sound.lay.high * sound.lengthShare.high,
})
const asWire = (as: 'joint' | 'contact', { low, high }: Interval): Omit<Run, 'of'> => ({
  as,
  metres: 0,
  lowM: (low / 1000) * sound.lay.low,
  highM: (high / 1000) * sound.lay.high,
})
const gap = (runs: readonly Run[], shared: Gap['shared'] = null): Gap => ({
  runs,
  fuseOhm: null,
  shared,
})

function fuseOhm({ fuseA, currentA }: CircuitInput): Interval {
  const ratedA = fuseA ?? currentA / sound.fuseLoadShare
  // Without a rating there may be no fuse.
  return {
    low: fuseA === null ? 0 : sound.fuseV.low / ratedA,
    high: sound.fuseV.high / ratedA,
  }
}

/** Distributes the job's pieces of wire over the gaps between places, with their allowances. */
export function chainOf(input: CircuitInput): Chain {
  const places = placesInOrder(input.where)
  const onFeed = input.where === 'feed'
  const fuseDistanceM = input.fuseDistanceM
  const feedM = Math.max(0, input.outLengthM - (onFeed ? input.fromTerminationM : 0) - (fuseDistanceM ?? 0))
  const feedShared = fuseDistanceM === null ? 'feed' : null
  const wire = (lengthM: number): Run => ({ of: 'wire', ...straight(lengthM) })
  const beyond: Run = { of: 'beyond', ...straight(input.fromTerminationM) }
  const joint: Run = { of: 'joint', ...asWire('joint', sound.jointMm) }
  const contact: Run = {
    of: onFeed ? 'beyond' : 'wire',
    ...asWire('contact', sound.contactMm),
  }
  const returnContact: Run = { of: 'wire', ...asWire('contact', sound.contactMm) }
  const feedGaps: Gap[] = [
    gap([wire(fuseDistanceM ?? feedM)], feedShared),
    { runs: [], fuseOhm: fuseOhm(input), shared: null },
    gap([wire(feedM)], feedShared),
    ...(onFeed ? [gap([joint]), gap([beyond])] : []),
    gap([contact]),
    gap([]),
  ]
  const back = [wire(input.returnLengthM), returnContact]
  const backGaps = onFeed
    ? [gap(back, 'return'), gap(back, 'return')]
    : [gap([beyond]), gap([joint]), gap([wire(Math.max(0, input.returnLengthM - input.fromTerminationM)), returnContact])]
  return {
    input,
    places,
    loadAt: places.indexOf('load+'),
    gaps: [...feedGaps, gap([]), ...backGaps],
  }
}
