import type { CircuitKind, Interval } from '@strandwise/core'
import type { Place } from '../job/index.ts'
import { placesInOrder } from './places.ts'
import { sound } from './sound.ts'

/** A piece of wire as a resistor: its metal at a temperature, and where it settles under a current. */
export interface WirePiece {
  /** A metre of wire whose strands run straight. */
  readonly ohmPerM: (temperatureC: number) => number
  /** The hottest that the conductor settles at; the ceiling where it settles nowhere. */
  readonly steadyC: (currentA: number, airC: number) => number
}

/** What the chain is built from: the job's own figures, read once. */
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
  /** Between the joint and the plug, where another wire lies there. */
  readonly beyond: WirePiece
  readonly load: LoadGiven
  /** What the terminal carries in the hottest air; null where it has no rating. */
  readonly terminalA: number | null
}

/** What the job says of the load. */
export interface LoadGiven {
  /** How it was stated: what stays the same when its volts change. */
  readonly by: 'current' | 'power' | 'resistance'
  readonly kind: CircuitKind
  readonly stallA: number | null
}

/** Metres of wire within their bounds, lay and length tolerance included. */
interface Run {
  readonly of: 'wire' | 'beyond' | 'joint'
  /** A length that the job gives, or what a sound joint or contact is worth. */
  readonly as: 'length' | 'joint' | 'contact'
  /** Of the length given; 0 for a joint and a contact. */
  readonly metres: number
  readonly lowM: number
  readonly highM: number
}

/** What lies between two neighbouring places. */
export interface Gap {
  readonly runs: readonly Run[]
  readonly fuseOhm: Interval | null
  /** Pieces of one name share a length: each may hold none or all of it, both together hold it once. */
  readonly shared: 'feed' | 'return' | null
}

/** The circuit as a chain of stretches between neighbouring places. */
export interface Chain {
  readonly input: CircuitInput
  readonly places: readonly Place[]
  /** Index of load+; the load lies between it and the next place. */
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
  // Without a rating there may be no fuse at all.
  return {
    low: fuseA === null ? 0 : sound.fuseV.low / ratedA,
    high: sound.fuseV.high / ratedA,
  }
}

/** Lays the job's pieces between the places; each is a length of wire with its allowance. */
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
