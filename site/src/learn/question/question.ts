import type { PlanVerdict } from '@strandwise/planner/facts'
import type { QuantityKind } from '@strandwise/working/quantity'

/** A quantity that the question asks for; a bare number takes the unit beside the field. */
export interface AskedQuantity {
  readonly kind: 'quantity'
  readonly id: string
  readonly title: string
  readonly note?: string
  readonly quantity: QuantityKind
  readonly unit: string
  readonly low: number
  readonly high: number
  /** The low end itself is not allowed. */
  readonly aboveLow?: boolean
  readonly whole?: boolean
  readonly optional?: boolean
  readonly example: string
  /** The sensible case, as a bare number: its unit stands beside the field. */
  readonly typed: string
}

/** One word of a few, or any number of them. */
export interface AskedChoice {
  readonly kind: 'choice' | 'ticks'
  readonly id: string
  readonly title: string
  readonly note?: string
  readonly choices: readonly { readonly value: string; readonly label: string }[]
  /** The sensible case; ticks by commas. */
  readonly typed: string
}

export type AskedField = AskedQuantity | AskedChoice

/** Fields that stand together on the wire. */
export interface AskedGroup {
  readonly id: string
  readonly title: string
  readonly sentence?: string
  /** Hidden away until asked for: nothing in it is needed. */
  readonly folded?: boolean
  readonly fields: readonly AskedField[]
}

/** The answers as numbers in each field's own unit, as a word, or as words; an open optional field is absent. */
export type Inputs = Readonly<Record<string, number | string | readonly string[] | undefined>>

export interface AnswerValue {
  readonly name: string
  readonly text: string
}

/** One answer: a sentence that stands alone, the values behind it, what to know about it. */
export interface AnswerPart {
  readonly id: string
  readonly title: string
  /** null leaves the wire plain: nothing is judged. */
  readonly verdict: PlanVerdict | null
  readonly sentence: string
  /** The thing to fetch, to scale, as markup. */
  readonly drawing?: string
  readonly values: readonly AnswerValue[]
  readonly notes: readonly string[]
}

/** A formula to show the working of, with a line that says what it is for. */
export interface AskedWorking {
  readonly title: string
  readonly id: string
  readonly inputs: Readonly<Record<string, unknown>>
}

export interface Answer {
  readonly parts: readonly AnswerPart[]
  readonly workings: readonly AskedWorking[]
}

/** An input that the models refuse although each field alone is fine; the message stands at the field. */
export interface InputProblem {
  readonly field: string
  readonly read: string
  readonly allowed: string
  readonly example: string
}

export type Outcome = Answer | InputProblem
export const isProblem = (outcome: Outcome): outcome is InputProblem => 'field' in outcome

/** The mark on the wire of an answer. */
export const markOf = (part: AnswerPart): string => part.verdict ?? 'plain'

/** What runs on the page: facts are rows of the tables that the page was built with. */
export interface QuestionModel<F> {
  readonly answer: (inputs: Inputs, facts: F) => Outcome
}

/** A question as data; its page is drawn from this and the model alone. */
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

/** A number that the form made sure of. */
export function numberOf(inputs: Inputs, id: string): number {
  const value = inputs[id]
  if (typeof value !== 'number') throw new Error(`the form has no number ${id}`)
  return value
}

/** A word that the form made sure of. */
export function wordOf(inputs: Inputs, id: string): string {
  const value = inputs[id]
  if (typeof value !== 'string') throw new Error(`the form has no word ${id}`)
  return value
}
