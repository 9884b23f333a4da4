import type { PlanVerdict } from '@strandwise/planner/facts'
import { type CheckedFigure, checked } from './check.ts'
import type { Lesson, LessonPicture, LessonStep, Mistake, NamedValue, Option } from './lesson.ts'
import { span, tied } from './say.ts'

/** Options for a vote on a mistake, and the verdict that each stands for. */
const outcomes = [{ text: 'No harm' }, { text: 'It works, but at a cost', verdict: 'caution' }, { text: 'It fails', verdict: 'unsound' }] as const
const letters = 'ABC'

/** One part of a turn: the content of one card. */
export interface TurnPart {
  readonly judged?: { readonly verdict: PlanVerdict; readonly text: string }
  readonly short?: string
  readonly words?: readonly string[]
  /** Steps to follow, numbered. */
  readonly list?: readonly string[]
  readonly points?: readonly string[]
  readonly options?: readonly Option[]
  readonly replies?: readonly Option[]
  readonly values?: readonly NamedValue[]
  readonly picture?: LessonPicture
  readonly slider?: 'predict' | 'move'
  readonly source?: string
}

/** One turn of the lesson: question, observation, explanation. */
export interface Turn {
  readonly id: string
  readonly title: string
  readonly ask: TurnPart
  readonly see?: TurnPart
  readonly why?: TurnPart
  readonly working?: LessonStep['working']
}

const stepTurn = (step: LessonStep, index: number): Turn => ({
  id: step.id,
  title: `Step ${index + 1}. ${step.title}`,
  ask: { words: [step.ask], options: step.options, ...(step.picture === undefined ? {} : { picture: step.picture }) },
  see: step.see,
  why: { words: step.why, replies: step.options },
  ...(step.working === undefined ? {} : { working: step.working }),
})

const checkTitles = {
  published: 'Held against a published figure',
  derived: 'Held against a second solution',
  'read off': 'Held against a curve',
} as const
const checkAsks = {
  published: 'A source prints a figure: does ours agree?',
  derived: 'No published figure is known to us: does a second, independent solution agree?',
  'read off': 'The source prints a curve and no number: does ours lie on it?',
} as const

const checkTurn = (check: CheckedFigure, index: number): Turn => ({
  id: `check-${index + 1}`,
  title: checkTitles[check.status],
  ask: {
    words: [`${check.what}. ${checkAsks[check.status]}`],
  },
  see: {
    short: check.verdict,
    values: [
      { name: check.status === 'published' ? 'printed' : check.status === 'read off' ? 'read off' : 'second solution', text: check.theirs },
      { name: 'ours', text: check.ours },
      { name: 'difference', text: check.difference },
    ],
    source: check.source,
  },
})

/** The right vote on a mistake, as its card says it. */
function outcomeOf(verdict: Mistake['verdict']): NonNullable<TurnPart['judged']> {
  const index = outcomes.findIndex((outcome) => 'verdict' in outcome && outcome.verdict === verdict)
  return { verdict, text: `${letters[index]} is right. ${outcomes[index]?.text}.` }
}

/** Cautions that fit one card of the board. */
const cautionsOnCard = 3

/** The cautions, which the class reads before it works. */
function careTurns({ cautions }: Lesson): readonly Turn[] {
  const cards = Math.ceil(cautions.length / cautionsOnCard)
  return Array.from({ length: cards }, (_, card): Turn => {
    const own = cautions.slice(card * cautionsOnCard, (card + 1) * cautionsOnCard)
    return {
      id: `care-${card + 1}`,
      title: `Before you work, take care${cards === 1 ? '' : `, ${card + 1} of ${cards}`}`,
      ask: { points: own.map(({ text }) => text), source: [...new Set(own.map(({ source }) => source))].join('; ') },
    }
  })
}

/** Ties numbers to their units in all words of a part, not in its drawings. */
function tiedWords<T>(value: T): T {
  if (typeof value === 'string') return tied(value) as T
  if (Array.isArray(value)) return value.map(tiedWords) as T
  if (typeof value !== 'object' || value === null) return value
  return Object.fromEntries(Object.entries(value).map(([key, inside]) => [key, key === 'svg' || key === 'working' ? inside : tiedWords(inside)])) as T
}

/** The lesson's turns in teaching order. */
export function turnsOf(lesson: Lesson): readonly Turn[] {
  const { measurement } = lesson
  const turns: readonly Turn[] = [
    { id: 'question', title: 'The question', ask: { short: lesson.question, words: [lesson.scenario], picture: lesson.picture } },
    { id: 'given', title: 'What is known', ask: { values: lesson.given } },
    ...lesson.steps.map(stepTurn),
    { id: 'answer', title: 'The answer', ask: { words: [`Say it in one sentence: ${lesson.question}`] }, see: lesson.answer },
    {
      id: 'what-if',
      title: lesson.whatIf.title,
      ask: { words: [lesson.whatIf.ask], slider: 'predict' },
      see: { slider: 'move' },
    },
    ...lesson.checks.map(checked).map(checkTurn),
    ...lesson.mistakes.map(
      (mistake, index): Turn => ({
        id: `mistake-${index + 1}`,
        title: `Mistake ${index + 1}. ${mistake.title}`,
        ask: { words: [mistake.done], options: outcomes },
        see: { judged: outcomeOf(mistake.verdict), short: mistake.costs, values: [mistake.value], words: [mistake.instead] },
      }),
    ),
    ...careTurns(lesson),
    {
      id: 'measurement',
      title: 'Measure it yourselves',
      ask: { words: [`You need: ${measurement.needs.join(', ')}.`], list: measurement.steps },
      see: {
        short: `${measurement.reads[0]?.toUpperCase()}${measurement.reads.slice(1)}: ${span(measurement.low, measurement.high, measurement.unit)}`,
        words: [measurement.why],
      },
    },
  ]
  return tiedWords(turns)
}
