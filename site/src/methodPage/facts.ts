import type { ReferenceStatus } from '../../../references/compare.ts'

/** Content of the method page, read from the code when the site is built. */
export interface MethodFacts {
  readonly sources: readonly SourceFacts[]
  readonly models: readonly ModelFacts[]
  readonly recalled: readonly RecalledGroup[]
}

export type CheckStatus = ReferenceStatus

/** One source: number of figures that check a formula, by status, and of figures only looked up. */
export interface SourceFacts {
  readonly source: string
  readonly counts: Readonly<Partial<Record<CheckStatus, number>>>
  readonly lookedUp: number
  readonly missed: number
}

/** One function with an equation: number of figures that check it, by status; or why none does. */
export interface ModelFacts {
  readonly name: string
  readonly counts: Readonly<Partial<Record<CheckStatus, number>>>
  readonly reason: string | null
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
