import { DomainError, UnknownEntryError } from '@strandwise/core/errors'
import type { Provenance } from '@strandwise/core/materials'
import { type ClosedFormula, type FormulaStep, type Inputs, numberAt, type SolvedFormula, type SolvedTerm, type ValuedSymbol, valuesOf } from './formula.ts'
import { formulas } from './formulas.ts'
import { evaluateExpression } from './mathematics.ts'
import { plainNumber, texOf, texQuantity, texValue } from './tex.ts'

/** A computed value with its working. */
export interface Explanation {
  readonly id: string
  readonly value: number
  readonly unit: string
  readonly formulaTex: string
  readonly substitutedTex: string
  readonly plain: string
  readonly symbols: readonly ValuedSymbol[]
  readonly steps: readonly { readonly text: string; readonly tex: string; readonly value?: number; readonly unit?: string }[]
  readonly source: Provenance
  readonly validity: readonly string[]
  readonly notes: readonly string[]
}

/**
 * Shows the working of a formula for given inputs: the formula, substituted values, each step, source and validity.
 *
 * @equation value = the core function itself; the expression shown is proven equal to it
 * @symbol id - id - 1 - name of the core function
 * @symbol value - result.value - 1 - what that function gives; of several results the first one shown
 * @throws UnknownEntryError for a function without a formula here
 * @throws DomainError where the function refuses the inputs
 * @throws NoSteadyStateError where a solved model has no solution
 * @example
 * explain('criticalRadiusMm', { insulationConductivityWPerMK: 0.17, filmWPerM2K: 3 }) // { id: "criticalRadiusMm", value: 56.67, unit: "mm" }
 * @source each formula's own, in the field source
 */
export function explain(id: string, inputs: Readonly<Record<string, unknown>>): Explanation {
  const formula = Object.hasOwn(formulas, id) ? formulas[id] : undefined
  if (formula === undefined) throw new UnknownEntryError('id', id, Object.keys(formulas))
  if (typeof inputs !== 'object' || inputs === null) throw new DomainError('inputs', inputs, `the object that ${id} takes`, undefined, 'missing')
  return formula.kind === 'closed' ? explainClosed(formula, inputs) : explainSolved(formula, inputs)
}

function explainClosed(formula: ClosedFormula, inputs: Inputs): Explanation {
  const given = formula.call(inputs)
  const symbols = valuesOf(formula.symbols(inputs), inputs)
  const steps = formula.steps(inputs)
  const results = formula.results(inputs)
  const tex = new Map([...symbols, ...steps, ...results].map((entry) => [entry.name, entry.tex]))
  const values: Record<string, number> = Object.fromEntries(symbols.map(({ name, value }) => [name, value]))
  const shown = steps.map((step) => {
    const value = evaluateExpression(step.expression, values)
    values[step.name] = value
    return shownStep(step, value, tex, values)
  })
  const outcomes = results.map((result) => ({ result, value: result.of === undefined ? Number(given) : numberAt(given, result.of) }))
  const [first] = outcomes
  if (first === undefined) throw new UnknownEntryError('id', formula.id, [])
  const { result, value } = first
  return {
    id: formula.id,
    value,
    unit: result.unit,
    formulaTex: `${result.tex} = ${texOf(result.expression, (name) => tex.get(name))}`,
    substitutedTex: `${result.tex} = ${substituted(result.expression, values)} = ${texQuantity(value, result.unit)}`,
    plain: plainText([...steps, result], symbols, value, result.unit),
    symbols,
    steps: [...shown, ...outcomes.map((outcome) => shownStep(outcome.result, outcome.value, tex, values))],
    source: formula.source,
    validity: formula.validity,
    notes: formula.notes(inputs),
  }
}

function substituted(expression: string, values: Readonly<Record<string, number>>): string {
  return texOf(expression, (name) => (Object.hasOwn(values, name) ? texValue(values[name] ?? 0) : undefined))
}

function shownStep(step: FormulaStep, value: number, tex: ReadonlyMap<string, string>, values: Readonly<Record<string, number>>): Explanation['steps'][number] {
  const symbolic = texOf(step.expression, (name) => tex.get(name))
  const put = substituted(step.expression, values)
  return { text: step.meaning, tex: `${step.tex} = ${symbolic} = ${put} = ${texQuantity(value, step.unit)}`, value, unit: step.unit }
}

/** "R = rho*L/A with rho = 1.7e-8 Ω m, L = 3 m, A = 1 mm²: R = 0.05 Ω". */
function plainText(chain: readonly FormulaStep[], symbols: readonly ValuedSymbol[], value: number, unit: string): string {
  const last = chain.at(-1)
  const equations = [...chain].reverse().map(({ name, expression }) => `${name} = ${expression}`)
  return `${equations.join(', ')}${putIn(symbols)}: ${last?.name ?? ''} = ${quantity(value, unit)}`
}

function putIn(symbols: readonly ValuedSymbol[]): string {
  return symbols.length === 0 ? '' : ` with ${symbols.map((symbol) => `${symbol.name} = ${quantity(symbol.value, symbol.unit)}`).join(', ')}`
}

function quantity(value: number, unit: string): string {
  return unit === '1' ? plainNumber(value) : `${plainNumber(value)} ${unit}`
}

/** Below this share of the terms a residual is rounding, far below their printed digits. */
const roundingShare = 1e-9
const rounding = '0, to rounding'

function isRounding(term: SolvedTerm, terms: readonly SolvedTerm[]): boolean {
  const balanced = terms.filter((other) => other !== term && other.unit === term.unit).map((other) => Math.abs(other.value))
  return term.text.startsWith('residual') && Math.abs(term.value) <= roundingShare * Math.max(0, ...balanced)
}

function explainSolved(formula: SolvedFormula, inputs: Inputs): Explanation {
  const { value, terms, notes = [] } = formula.solution(inputs)
  const symbols = valuesOf(formula.symbols(inputs), inputs)
  const { name, tex, unit, equation, equationTex } = formula
  return {
    id: formula.id,
    value,
    unit,
    formulaTex: equationTex,
    substitutedTex: `${tex} = ${texQuantity(value, unit)}`,
    plain: `${equation}${putIn(symbols)}; solved: ${name} = ${quantity(value, unit)}; ${terms.map((term) => `${term.text} ${isRounding(term, terms) ? rounding : quantity(term.value, term.unit)}`).join(', ')}`,
    symbols,
    steps: terms.map((term) => ({ ...term, tex: `${term.tex} = ${isRounding(term, terms) ? `\\text{${rounding}}` : texQuantity(term.value, term.unit)}` })),
    source: formula.source,
    validity: formula.validity,
    notes,
  }
}
