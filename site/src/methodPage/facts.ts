import type { ReferenceStatus } from '../../../references/compare.ts'

/** Content of the method page, read from the code when the site is built. */
export interface MethodFacts {
  readonly sources: readonly SourceFacts[]
  readonly recalled: readonly RecalledGroup[]
}

/** One room of the library with its models. */
export interface RoomFacts {
  readonly package: string
  readonly room: string
  readonly models: readonly ModelFacts[]
}

/** One model: its docstring, and the independent figures that it meets. */
export interface ModelFacts {
  readonly name: string
  readonly sentence: string
  readonly equations: readonly string[]
  readonly domains: readonly string[]
  readonly sources: readonly string[]
  readonly symbols: readonly string[]
  readonly checks: readonly CheckFacts[]
}

/** Figures of one source that call a model, and the first of them. */
export interface CheckFacts {
  readonly source: string
  readonly status: CheckStatus
  readonly count: number
  readonly missed: number
  readonly example: { readonly title: string; readonly printed: string; readonly unit: string; readonly got: number }
}

export type CheckStatus = ReferenceStatus

/** One source: number of figures that check a formula, by status, and of figures only looked up. */
export interface SourceFacts {
  readonly source: string
  readonly counts: Readonly<Partial<Record<CheckStatus, number>>>
  readonly lookedUp: number
  readonly missed: number
}

/** Values from memory, by the export that holds them. */
export interface RecalledGroup {
  readonly name: string
  readonly values: readonly RecalledValue[]
}

export interface RecalledValue {
  readonly where: string
  readonly shown: string
  readonly source: string
}
