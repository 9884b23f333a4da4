import type { ReferenceStatus } from '../../../references/compare.ts'

/** What the method page tells, all of it read from the code when the site is built. */
export interface MethodFacts {
  readonly sources: readonly SourceFacts[]
  readonly recalled: readonly RecalledGroup[]
}

export type CheckStatus = ReferenceStatus

/** One source of figures: how many of them check a formula by status, and how many are only looked up. */
export interface SourceFacts {
  readonly source: string
  readonly counts: Readonly<Partial<Record<CheckStatus, number>>>
  readonly lookedUp: number
  readonly missed: number
}

/** Values that were recalled and not confirmed, by the export that holds them. */
export interface RecalledGroup {
  readonly name: string
  readonly values: readonly RecalledValue[]
}

export interface RecalledValue {
  readonly where: string
  readonly shown: string
  readonly source: string
}
