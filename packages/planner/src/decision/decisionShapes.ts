import type { InsulationName, MethodName } from '@strandwise/core'
import type { Finding, PlanValue } from '../facts/index.ts'

/** What a plan comes to. */
export type DecisionKind = 'mend' | 'replace the run' | 'leave it' | 'measure first' | 'refused'

/** What to do, with its grounds. */
export interface Decision {
  readonly kind: DecisionKind
  /** null where nothing is joined: a fuse, a contact to clean, leave it, measure first, refused. */
  readonly method: MethodName | null
  /** What to do, in one sentence. */
  readonly says: string
  readonly why: Finding
  /** The figure that decides against the way meant. */
  readonly notAsMeant: Finding | null
  /** To fetch; null where none is needed. */
  readonly wire: { readonly size: string; readonly areaMm2: number; readonly insulation: InsulationName; readonly lengthM: number } | null
  /** To be there in the end; null where none was given and none is needed, or none does. */
  readonly fuseA: number | null
  /** Cut back, strip, insert, sleeve. */
  readonly lengths: readonly PlanValue[]
  /** To settle first, at most two, worst first. */
  readonly before: readonly Finding[]
  /** The reading that shows that it is done, with its limit. */
  readonly doneWhen: readonly Finding[]
}
