import type { PlanVerdict } from '@strandwise/planner/facts'
import type { Sheets } from './sheets.ts'
import type { WhatIf } from './whatIf.ts'

/** A value with its name, both as they are printed. */
export interface NamedValue {
  readonly name: string
  readonly text: string
}

/** A drawing with the sentence that says the same. */
export interface LessonPicture {
  readonly svg: string
  readonly sentence: string
}

/** One answer to vote on. The right one has no reply; each wrong one is a known misconception and is answered. */
export interface Option {
  readonly text: string
  readonly reply?: string
}

/** What a key of the board shows: words, values, a picture. */
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
  /** Beside the question; it must not show what is asked. */
  readonly picture?: LessonPicture
  readonly see: Shown
  readonly why: readonly string[]
  /** The sentence that the class keeps; what stands in [[brackets]] is a gap on the handout. */
  readonly keep: string
  /** The derivation, for who opens it: a formula that the packages run, with its inputs. */
  readonly working?: { readonly id: string; readonly inputs: Readonly<Record<string, unknown>> }
}

/** A common mistake: what is done is shown first, what it costs after. */
export interface Mistake {
  readonly title: string
  readonly verdict: PlanVerdict
  readonly done: string
  readonly costs: string
  readonly instead: string
  readonly value: NamedValue
}

/** A printed figure of `references/`, named by its source and the case's title. */
export interface PublishedCheck {
  readonly kind: 'published'
  readonly what: string
  readonly source: string
  /** Part of the clause, where the title alone stands twice in a source. */
  readonly clause?: string
  readonly title: string
  readonly verdict: string
}

/** Our result against a second, independent solution, where no figure is published. */
export interface DerivedCheck {
  readonly kind: 'derived'
  readonly what: string
  readonly method: string
  /** A reading off a printed curve, not a solution of ours. */
  readonly readOff?: true
  readonly theirs: number
  readonly ours: number
  readonly unit: string
  readonly verdict: string
}

/** What a class can measure, with the interval to expect. */
export interface Measurement {
  readonly needs: readonly string[]
  readonly steps: readonly string[]
  readonly reads: string
  readonly low: number
  readonly high: number
  readonly unit: string
  readonly why: string
}

/** For the trainer: how the time goes, what to ask, what to expect. */
export interface TrainerNotes {
  readonly plan: readonly { readonly minutes: number; readonly what: string }[]
  readonly ask: readonly string[]
  readonly expect: readonly string[]
}

/** A lesson as data; all its pages are drawn from this alone. */
export interface Lesson {
  readonly number: number
  readonly id: string
  readonly question: string
  readonly summary: string
  readonly scenario: string
  readonly given: readonly NamedValue[]
  /** With what the question asks for left open. */
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
