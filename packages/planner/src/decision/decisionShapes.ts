import type { InsulationName, MethodName } from '@strandwise/core'
import type { Finding, PlanValue } from '../facts/index.ts'

/** Kind of decision. */
export type DecisionKind = 'mend' | 'replace the run' | 'leave it' | 'measure first' | 'refused'

/** The decision and its reasons. */
export interface Decision {
  readonly kind: DecisionKind
  /** null if nothing is joined: a fuse, a contact to clean, leave it, measure first, refused. */
  readonly method: MethodName | null
  /** What to do, in one sentence. */
  readonly says: string
  readonly why: Finding
  /** The finding against the intended way. */
  readonly notAsMeant: Finding | null
  /** Wire to fetch; null if none is needed. */
  readonly wire: { readonly size: string; readonly areaMm2: number; readonly insulation: InsulationName; readonly lengthM: number } | null
  /** Fuse after the repair; null if none was given and none is needed, or none suits. */
  readonly fuseA: number | null
  /** Lengths to cut back, strip, insert, sleeve. */
  readonly lengths: readonly PlanValue[]
  /** Points to settle first, at most two, worst first. */
  readonly before: readonly Finding[]
  /** The final reading, with its limit. */
  readonly doneWhen: readonly Finding[]
}
