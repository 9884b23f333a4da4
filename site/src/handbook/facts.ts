import type { QuantityKind } from '@strandwise/working/quantity'
import type { WithoutForm } from './withoutForm.ts'

/** A field of a form: its path among the arguments, meaning and value. */
export interface HandField {
  readonly id: string
  /** Index of the argument, then keys and indices. */
  readonly path: readonly (string | number)[]
  /** Path as written in docstrings and errors. */
  readonly written: string
  readonly kind: 'number' | 'numbers' | 'text' | 'choice' | 'yes-no'
  readonly label: string
  readonly unit: string
  /** Absent if only a bare number is accepted. */
  readonly quantity?: QuantityKind
  readonly domain: string
  readonly choices: readonly string[]
  readonly optional: boolean
  /** As typed; empty if the example leaves it out. */
  readonly typed: string
}

/** A published figure and the library's value. */
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

/** A plan, lesson or question that calls a function. */
export interface HandUse {
  readonly words: string
  /** Path from the site's base. */
  readonly path: string
}

/** The page of one function, read from the code. */
export interface HandFunction {
  readonly name: string
  readonly words: string
  readonly package: string
  readonly room: string
  readonly place: string
  readonly sentence: string
  readonly remarks: readonly string[]
  /** Each line as TeX, or as text if it is no formula. */
  readonly equations: readonly { readonly tex?: string; readonly text: string }[]
  readonly symbols: readonly HandSymbol[]
  readonly domains: readonly string[]
  readonly errors: readonly string[]
  readonly sources: readonly string[]
  readonly example: string
  /** Names of the parameters. */
  readonly parameters: readonly string[]
  /** null if the arguments are no plain data, or too many for a form; then it says why. */
  readonly form: { readonly fields: readonly HandField[]; readonly inputs: readonly unknown[] } | null
  readonly withoutForm: WithoutForm | null
  readonly resultUnit: string
  readonly hasWorking: boolean
  readonly checks: readonly HandCheck[]
  /** Why no figure checks it; null if that is not said. */
  readonly uncheckedBecause: string | null
  readonly bytes: number
  /** True if its code stands in a file of its own, else with its room. */
  readonly ownFile: boolean
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
