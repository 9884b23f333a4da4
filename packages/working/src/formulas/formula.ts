import type { Provenance } from '@strandwise/core/materials'

/** Inputs of a core function as one object; positional parameters by name. */
export type Inputs = Readonly<Record<string, unknown>>

/** A symbol of an expression: its TeX, unit (1 if bare), meaning, and origin of its value. */
export interface FormulaSymbol<I = Inputs> {
  readonly tex: string
  readonly unit: string
  readonly meaning: string
  /** Path of the input, or the value of a default, table entry or constant. */
  readonly of: string | ((inputs: I) => number)
}

/** A value computed from symbols above it. */
export interface FormulaStep {
  readonly name: string
  readonly tex: string
  readonly unit: string
  readonly meaning: string
  /** In the syntax of mathjs. */
  readonly expression: string
}

/** A result that the expression must reproduce. Without a path it is the function's number itself. */
export interface FormulaResult extends FormulaStep {
  readonly of?: string
}

/** A closed form: the expression shown is tested against the function. */
export interface ClosedFormula {
  readonly kind: 'closed'
  readonly id: string
  readonly call: (inputs: Inputs) => unknown
  readonly symbols: (inputs: Inputs) => Readonly<Record<string, FormulaSymbol>>
  readonly steps: (inputs: Inputs) => readonly FormulaStep[]
  /** The first is the explained value. */
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

/** Working of a solved model: value, unit, and the terms of its equation at the solution, the residual last. */
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

/** A part of a definition that may depend on the inputs, such as one symbol for each joint of a list. */
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
  // The core function has already checked the inputs here.
  return typeof part === 'function' ? (part as (inputs: Inputs) => T) : () => part
}

/** A closed form from its definition; I is the core function's input. */
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

/** A symbol of a formula with its value. */
export interface ValuedSymbol {
  readonly name: string
  readonly tex: string
  readonly unit: string
  readonly meaning: string
  readonly value: number
}

/** All symbols of a formula with their values. */
export function valuesOf(symbols: Readonly<Record<string, FormulaSymbol>>, inputs: Inputs): readonly ValuedSymbol[] {
  return Object.entries(symbols).map(([name, { tex, unit, meaning, of }]) => ({
    name,
    tex,
    unit,
    meaning,
    value: typeof of === 'string' ? numberAt(inputs, of) : of(inputs),
  }))
}
