import type { QuantityKind } from '@strandwise/working/quantity'

/** A value of a form: where it goes among the arguments, what it means, and what stands in it. */
export interface HandField {
  readonly id: string
  /** First the argument's place, then keys and indices. */
  readonly path: readonly (string | number)[]
  /** As docstrings and errors write it. */
  readonly written: string
  readonly kind: 'number' | 'numbers' | 'text' | 'choice' | 'yes-no'
  readonly label: string
  readonly unit: string
  /** Absent where only a bare number can be read. */
  readonly quantity?: QuantityKind
  readonly domain: string
  readonly choices: readonly string[]
  readonly optional: boolean
  /** As typed; empty where the example leaves it out. */
  readonly typed: string
}

/** A published figure beside what the library gives. */
export interface HandCheck {
  readonly source: string
  readonly clause: string
  readonly status: string
  readonly title: string
  readonly printed: string
  readonly unit: string
  readonly got: number
  readonly met: boolean
}

export interface HandSymbol {
  readonly tex: string
  readonly field: string
  readonly unit: string
  readonly meaning: string
}

/** Where a plan, a lesson or a question calls a function. */
export interface HandUse {
  readonly words: string
  /** Path from the site's base. */
  readonly path: string
}

/** The page of one function, all of it read from the code. */
export interface HandFunction {
  readonly name: string
  readonly words: string
  readonly package: string
  readonly room: string
  readonly place: string
  readonly sentence: string
  readonly remarks: readonly string[]
  /** Each line as TeX, or as it is written where it is no formula. */
  readonly equations: readonly { readonly tex?: string; readonly text: string }[]
  readonly symbols: readonly HandSymbol[]
  readonly domains: readonly string[]
  readonly errors: readonly string[]
  readonly sources: readonly string[]
  readonly example: string
  /** Names of the parameters. */
  readonly parameters: readonly string[]
  /** null where the arguments are no plain data, or too many for a form. */
  readonly form: { readonly fields: readonly HandField[]; readonly inputs: readonly unknown[] } | null
  readonly resultUnit: string
  readonly hasWorking: boolean
  readonly checks: readonly HandCheck[]
  readonly bytes: number
  readonly uses: readonly HandUse[]
  readonly near: readonly string[]
}

/** A value of a cell; numbers sort as numbers. */
export type Cell = number | string

export interface HandTable {
  readonly name: string
  readonly title: string
  readonly columns: readonly { readonly key: string; readonly words: string; readonly unit: string }[]
  readonly rows: readonly (readonly Cell[])[]
}

/** The page of one export that holds rows. */
export interface HandData {
  readonly name: string
  readonly words: string
  readonly package: string
  readonly room: string
  readonly sentence: string
  readonly source: string
  readonly statuses: readonly string[]
  readonly tables: readonly HandTable[]
}

export interface Handbook {
  readonly functions: readonly HandFunction[]
  readonly data: readonly HandData[]
}
