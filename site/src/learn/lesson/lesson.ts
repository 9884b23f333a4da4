import type { PlanVerdict } from '@strandwise/planner/plan'
import type { ChartSpec } from '../../charts/chartSpec.ts'

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

/** One step of a worked example: the question, the working, what it tells. */
export interface LessonStep {
  readonly id: string
  readonly title: string
  readonly asks: string
  /** The formula that the packages run, with the values put in. */
  readonly working: { readonly id: string; readonly inputs: Readonly<Record<string, unknown>> }
  readonly values: readonly NamedValue[]
  readonly tells: readonly string[]
  readonly picture?: LessonPicture
}

/** A common mistake with what it costs; the mark on the wire says how bad it is. */
export interface Mistake {
  readonly title: string
  readonly verdict: PlanVerdict
  readonly what: string
  readonly instead: string
}

/** Something that the result was held against, and what it said. */
export interface LessonCheck {
  readonly what: string
  readonly status: 'published' | 'derived'
  readonly source: string
  readonly theirs: string
  readonly ours: string
  readonly verdict: string
}

/** The chart of one setting of the slider, with the sentence that says the same. */
export interface WhatIfView {
  readonly spec: ChartSpec
  readonly sentence: string
}

/** One slider. */
export interface WhatIf {
  readonly title: string
  readonly asks: string
  readonly label: string
  readonly low: number
  readonly high: number
  readonly step: number
  readonly start: number
}

/** A worked example as data; its page is drawn from this alone. */
export interface Lesson {
  readonly id: string
  readonly title: string
  readonly summary: string
  readonly scenario: string
  readonly question: string
  readonly given: readonly NamedValue[]
  /** With what the question asks for left open. */
  readonly picture: LessonPicture
  readonly steps: readonly LessonStep[]
  readonly answer: { readonly short: string; readonly words: readonly string[]; readonly picture?: LessonPicture }
  readonly checks: readonly LessonCheck[]
  readonly whatIf: WhatIf
  readonly mistakes: readonly Mistake[]
  readonly code: { readonly text: string; readonly prints: readonly NamedValue[] }
  readonly cautions: readonly { readonly text: string; readonly source: string }[]
}
