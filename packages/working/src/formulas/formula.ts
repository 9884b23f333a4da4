import type { Provenance } from '@strandwise/core/materials'

/** The object that a core function takes; positional parameters by their names. */
export type Inputs = Readonly<Record<string, unknown>>

/** A name in an expression: how it is set, its unit (1 where bare), what it means, and where its value comes from. */
export interface FormulaSymbol<I = Inputs> {
  readonly tex: string
  readonly unit: string
  readonly meaning: string
  /** Path of the input, or its value where it is a default, a table's or a constant. */
  readonly of: string | ((inputs: I) => number)
}

/** A value computed from names above it. */
export interface FormulaStep {
  readonly name: string
  readonly tex: string
  readonly unit: string
  readonly meaning: string
  /** In the syntax of mathjs. */
  readonly expression: string
}

/** A result: what the expression must equal. Without a path the function gives the number itself. */
export interface FormulaResult extends FormulaStep {
  readonly of?: string
}

/** A closed form: the expression on the page, proven to be the function that runs. */
export interface ClosedFormula {
  readonly kind: 'closed'
  readonly id: string
  readonly call: (inputs: Inputs) => unknown
  readonly symbols: (inputs: Inputs) => Readonly<Record<string, FormulaSymbol>>
  readonly steps: (inputs: Inputs) => readonly FormulaStep[]
  /** The first is the value of the explanation. */
  readonly results: (inputs: Inputs) => readonly FormulaResult[]
  readonly source: Provenance
  readonly validity: readonly string[]
  readonly notes: (inputs: Inputs) => readonly string[]
}

/** A term of an equation at its solution. */
export interface SolvedTerm {
  readonly text: string
  readonly tex: string
  readonly value: number
  readonly unit: string
}

/** What a solved model shows: its value, its unit, and the terms of its equation at the solution, the residual last. */
export interface Solution {
  readonly value: number
  readonly terms: readonly SolvedTerm[]
  readonly notes?: readonly string[]
}

/** A model that is solved rather than evaluated. */
export interface SolvedFormula {
  readonly kind: 'solved'
  readonly id: string
  readonly call: (inputs: Inputs) => unknown
  readonly symbols: (inputs: Inputs) => Readonly<Record<string, FormulaSymbol>>
  readonly name: string
  readonly tex: string
  readonly unit: string
  /** The equation that the solution satisfies: in TeX, and in plain characters. */
  readonly equationTex: string
  readonly equation: string
  readonly solution: (inputs: Inputs) => Solution
  readonly source: Provenance
  readonly validity: readonly string[]
}

/** A formula that can show its working, evaluated or solved. */
export type Formula = ClosedFormula | SolvedFormula

/** A part of a definition that may depend on the inputs: a list of joints has as many names as there are joints. */
type Given<I, T> = T | ((inputs: I) => T)

interface ClosedDefinition<I> {
  readonly id: string
  readonly call: (inputs: I) => unknown
  readonly symbols: Given<I, Readonly<Record<string, FormulaSymbol<I>>>>
  readonly steps?: Given<I, readonly FormulaStep[]>
  readonly results: Given<I, readonly FormulaResult[]>
  readonly source: Provenance
  readonly validity: readonly string[]
  readonly notes?: Given<I, readonly string[]>
}

interface SolvedDefinition<I> extends Omit<SolvedFormula, 'kind' | 'call' | 'symbols' | 'solution'> {
  readonly call: (inputs: I) => unknown
  readonly symbols: ClosedDefinition<I>['symbols']
  readonly solution: (inputs: I) => Solution
}

function given<I, T>(part: Given<I, T>): (inputs: Inputs) => T {
  // The core function itself has checked the inputs by the time a part is asked for.
  return typeof part === 'function' ? (part as (inputs: Inputs) => T) : () => part
}

/** A closed form from its definition; I is what the core function takes. */
export function closed<I>(definition: ClosedDefinition<I>): ClosedFormula {
  const { id, source, validity, call } = definition
  return {
    kind: 'closed',
    id,
    source,
    validity,
    call: call as (inputs: Inputs) => unknown,
    symbols: given(definition.symbols) as ClosedFormula['symbols'],
    steps: given(definition.steps ?? []),
    results: given(definition.results),
    notes: given(definition.notes ?? []),
  }
}

/** A solved model from its definition. */
export function solved<I>(definition: SolvedDefinition<I>): SolvedFormula {
  const { call, symbols, solution, ...rest } = definition
  return {
    ...rest,
    kind: 'solved',
    call: call as (inputs: Inputs) => unknown,
    symbols: given(symbols) as SolvedFormula['symbols'],
    solution: solution as (inputs: Inputs) => Solution,
  }
}

/** The number at a path such as "meter.leadOhm" or "diametersMm.1". */
export function numberAt(value: unknown, path: string): number {
  let found: unknown = value
  for (const key of path.split('.')) found = (found as Readonly<Record<string, unknown>> | undefined)?.[key]
  return Number(found)
}

/** A name of a formula with its value for some inputs. */
export interface ValuedSymbol {
  readonly name: string
  readonly tex: string
  readonly unit: string
  readonly meaning: string
  readonly value: number
}

/** Each name of a formula with its value for the inputs. */
export function valuesOf(symbols: Readonly<Record<string, FormulaSymbol>>, inputs: Inputs): readonly ValuedSymbol[] {
  return Object.entries(symbols).map(([name, { tex, unit, meaning, of }]) => ({
    name,
    tex,
    unit,
    meaning,
    value: typeof of === 'string' ? numberAt(inputs, of) : of(inputs),
  }))
}
