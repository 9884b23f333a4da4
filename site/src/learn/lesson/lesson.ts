import type { PlanVerdict } from '@strandwise/planner/facts'
import type { Sheets } from './sheets.ts'
import type { WhatIf } from './whatIf.ts'

/** A value with its name, both as printed. */
export interface NamedValue {
  readonly name: string
  readonly text: string
}

/** A drawing with the sentence that says the same. */
export interface LessonPicture {
  readonly svg: string
  readonly sentence: string
}

/** One answer to vote on. The right one has no reply; each wrong one is a known misconception and has one. */
export interface Option {
  readonly text: string
  readonly reply?: string
}

/** Content revealed by a key of the board: words, values, a picture. */
export interface Shown {
  readonly short: string
  readonly words?: readonly string[]
  readonly values?: readonly NamedValue[]
  readonly picture?: LessonPicture
}

/** One step: predict, see, explain. */
export interface LessonStep {
  readonly id: string
  readonly title: string
  readonly ask: string
  readonly options: readonly Option[]
  /** Picture beside the question; it must not reveal the answer. */
  readonly picture?: LessonPicture
  readonly see: Shown
  readonly why: readonly string[]
  /** The sentence to remember; text in [[brackets]] is a gap on the handout. */
  readonly keep: string
  /** The derivation, on demand: a formula of the packages with its inputs. */
  readonly working?: { readonly id: string; readonly inputs: Readonly<Record<string, unknown>> }
}

/** A common mistake: first the action, then its cost. */
export interface Mistake {
  readonly title: string
  readonly verdict: Extract<PlanVerdict, 'caution' | 'unsound'>
  readonly done: string
  readonly costs: string
  readonly instead: string
  readonly value: NamedValue
}

/** A printed figure of `references/`, by source and the case's title. */
export interface PublishedCheck {
  readonly kind: 'published'
  readonly what: string
  readonly source: string
  /** Part of the clause, if the title is not unique in the source. */
  readonly clause?: string
  readonly title: string
  readonly verdict: string
}

/** Our result against a second, independent solution, if no figure is published. */
export interface DerivedCheck {
  readonly kind: 'derived'
  readonly what: string
  readonly method: string
  /** True for a value read off a printed curve. */
  readonly readOff?: true
  readonly theirs: number
  readonly ours: number
  readonly unit: string
  readonly verdict: string
}

/** A measurement for the class, with the interval to expect. */
export interface Measurement {
  readonly needs: readonly string[]
  readonly steps: readonly string[]
  readonly reads: string
  readonly low: number
  readonly high: number
  readonly unit: string
  readonly why: string
}

/** For the trainer: timing, questions, expected answers. */
export interface TrainerNotes {
  readonly plan: readonly { readonly minutes: number; readonly what: string }[]
  readonly ask: readonly string[]
  readonly expect: readonly string[]
}

/** A lesson as data, the only source of its pages. */
export interface Lesson {
  readonly number: number
  readonly id: string
  readonly question: string
  readonly summary: string
  readonly scenario: string
  readonly given: readonly NamedValue[]
  /** The picture with the answer left open. */
  readonly picture: LessonPicture
  readonly needs: readonly string[]
  readonly steps: readonly LessonStep[]
  readonly answer: Shown
  readonly whatIf: WhatIf
  readonly checks: readonly (PublishedCheck | DerivedCheck)[]
  readonly mistakes: readonly Mistake[]
  readonly measurement: Measurement
  readonly sheets: Sheets
  readonly notes: TrainerNotes
  readonly code: { readonly text: string; readonly prints: Readonly<Record<string, number>> }
  readonly cautions: readonly { readonly text: string; readonly source: string }[]
}

export const minutesOf = (lesson: Lesson): number => lesson.notes.plan.reduce((total, { minutes }) => total + minutes, 0)
