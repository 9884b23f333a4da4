import type { Interval, ProofVerdict } from '@strandwise/core'
import type { PlacedReading } from '../circuit/inner.ts'
import type { Finding } from '../facts/index.ts'
import type { Place } from '../job/index.ts'

/** Possible causes, by place and effect. */
const causeIds = [
  'open-lead',
  'high-resistance-pin',
  'corroded-strands',
  'overloaded-terminal',
  'lost-spring-force',
  'bad-return',
  'weak-supply',
  'load-failed',
  'load-stalled',
  'coil-open',
  'coil-short',
  'short-to-circuit',
  'dry-joint',
  'fracture-in-contact',
  'water-in-run',
] as const
/** A cause of the fault, by name. */
export type CauseId = (typeof causeIds)[number]

/** A stretch between two places: healthy drop, largest acceptable drop, measured drop, and the verdict. */
export interface Stretch {
  readonly from: Place
  readonly to: Place
  readonly healthyV: Interval
  readonly allowedV: number
  /** null if only ohms were read, or nothing. */
  readonly measuredV: Interval | null
  readonly verdict: ProofVerdict
  /** Indices of the readings used. */
  readonly readings: readonly number[]
}

/** Places and state of the next reading. */
export type Probe = Omit<PlacedReading, 'low' | 'high'>

/** Result of the readings: stretch by stretch, the fault if one is proven, an answer to each reading, the likely causes and the next reading. */
export interface Diagnosis {
  readonly stretches: readonly Stretch[]
  readonly fault: 'proven' | 'not shown' | 'none here'
  /** The narrowest stretch with a proven fault; null if none. */
  readonly at: Pick<Stretch, 'from' | 'to'> | null
  readonly answered: readonly {
    readonly reading: number
    readonly finding: Finding
  }[]
  readonly leading: readonly CauseId[]
  readonly next: { readonly probe: Probe; readonly finding: Finding } | null
}
