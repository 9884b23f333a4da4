import type { PlanVerdict } from '@strandwise/planner/facts'
import type { QuantityKind } from '@strandwise/working/quantity'

/** A quantity asked for; a bare number has the unit beside the field. */
export interface AskedQuantity {
  readonly kind: 'quantity'
  readonly id: string
  readonly title: string
  readonly note?: string
  readonly quantity: QuantityKind
  readonly unit: string
  readonly low: number
  readonly high: number
  /** True if the low end itself is excluded. */
  readonly aboveLow?: boolean
  readonly whole?: boolean
  readonly optional?: boolean
  readonly example: string
  /** Default value as a bare number, in the field's unit. */
  readonly typed: string
}

/** One of a few words, or several of them. */
export interface AskedChoice {
  readonly kind: 'choice' | 'ticks'
  readonly id: string
  readonly title: string
  readonly note?: string
  readonly choices: readonly { readonly value: string; readonly label: string }[]
  /** Default choice; several are separated by commas. */
  readonly typed: string
}

export type AskedField = AskedQuantity | AskedChoice

/** Fields in one group of the form. */
export interface AskedGroup {
  readonly id: string
  readonly title: string
  readonly sentence?: string
  /** Collapsed at first: none of its fields is required. */
  readonly folded?: boolean
  readonly fields: readonly AskedField[]
}

/** Parsed inputs: numbers in each field's own unit, a word, or words; an empty optional field is absent. */
export type Inputs = Readonly<Record<string, number | string | readonly string[] | undefined>>

export interface AnswerValue {
  readonly name: string
  readonly text: string
}

/** One answer: a self-contained sentence, its values, and notes. */
export interface AnswerPart {
  readonly id: string
  readonly title: string
  /** null for an answer without a verdict. */
  readonly verdict: PlanVerdict | null
  readonly sentence: string
  /** Drawing of the part to fetch, to scale, as markup. */
  readonly drawing?: string
  readonly values: readonly AnswerValue[]
  readonly notes: readonly string[]
}

/** A formula whose working is offered, with a line on its purpose. */
export interface AskedWorking {
  readonly title: string
  readonly id: string
  readonly inputs: Readonly<Record<string, unknown>>
}

export interface Answer {
  readonly parts: readonly AnswerPart[]
  readonly workings: readonly AskedWorking[]
}

/** Inputs that are valid one by one but refused by the models; the message is shown at the field. */
export interface InputProblem {
  readonly field: string
  readonly read: string
  readonly allowed: string
  readonly example: string
}

export type Outcome = Answer | InputProblem
export const isProblem = (outcome: Outcome): outcome is InputProblem => 'field' in outcome

/** Style of an answer by its verdict. */
export const markOf = (part: AnswerPart): string => part.verdict ?? 'plain'

/** The part of a question that runs in the browser: facts are table rows fixed at build time. */
export interface QuestionModel<F> {
  readonly answer: (inputs: Inputs, facts: F) => Outcome
}

/** A question as data; with its model, the only source of its page. */
export interface Question<F> {
  readonly id: string
  readonly title: string
  readonly summary: string
  readonly scenario: string
  readonly groups: readonly AskedGroup[]
  readonly facts: F
  readonly cautions: readonly { readonly text: string; readonly source: string }[]
  readonly rests: readonly { readonly title: string; readonly words: string }[]
}

/** A number input, already checked by the form. */
export function numberOf(inputs: Inputs, id: string): number {
  const value = inputs[id]
  if (typeof value !== 'number') throw new Error(`the form has no number ${id}`)
  return value
}

/** A word input, already checked by the form. */
export function wordOf(inputs: Inputs, id: string): string {
  const value = inputs[id]
  if (typeof value !== 'string') throw new Error(`the form has no word ${id}`)
  return value
}
