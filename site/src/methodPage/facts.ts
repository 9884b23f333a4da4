import type { ReferenceStatus } from '../../../references/compare.ts'

/** What the method page tells, all of it read from the code when the site is built. */
export interface MethodFacts {
  readonly rooms: readonly RoomFacts[]
  readonly sources: readonly SourceFacts[]
  readonly recalled: readonly RecalledGroup[]
}

/** One room of the library with its models. */
export interface RoomFacts {
  readonly package: string
  readonly room: string
  readonly models: readonly ModelFacts[]
}

/** One model as its docstring tells it, with the figures from outside that it meets. */
export interface ModelFacts {
  readonly name: string
  readonly sentence: string
  readonly equations: readonly string[]
  readonly domains: readonly string[]
  readonly sources: readonly string[]
  readonly symbols: readonly string[]
  readonly checks: readonly CheckFacts[]
}

/** The figures of one source that call a model, and the first of them. */
export interface CheckFacts {
  readonly source: string
  readonly status: CheckStatus
  readonly count: number
  readonly missed: number
  readonly example: { readonly title: string; readonly printed: string; readonly unit: string; readonly got: number }
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
