import { type FormField, type FormGroup, jobForm } from '@strandwise/planner/job'

/** What stands in the form, as typed: by the field's path; a list's own name holds how many entries it has. */
export type Answers = Readonly<Record<string, string>>

/** A field of the form at its place in the job, list entries counted. */
export interface AskedField {
  readonly group: FormGroup
  readonly field: FormField
  readonly path: string
  /** Path of the entry or group that holds it; '' for the job itself. */
  readonly holder: string
}

const mostDigits = 3

export function countOf(answers: Answers, group: FormGroup): number {
  const text = answers[group.at] ?? ''
  return /^\d+$/.test(text) && text.length <= mostDigits ? Math.min(Number(text), group.most ?? 0) : 0
}

/** Path of a group's entries: "wire", "readings.0", "readings.1"; '' for fields of the job itself. */
export function holdersOf(answers: Answers, group: FormGroup): readonly string[] {
  if (group.most === undefined) return [group.at]
  return Array.from({ length: countOf(answers, group) }, (_, index) => `${group.at}.${index}`)
}

export const pathIn = (holder: string, path: string): string => (holder === '' ? path : `${holder}.${path}`)

/** Every field that the answers call for: those of another kind of tool are left out. */
export function askedFields(answers: Answers): readonly AskedField[] {
  return jobForm.flatMap((group) =>
    holdersOf(answers, group).flatMap((holder) =>
      group.fields
        .filter((field) => field.onlyOf === undefined || field.onlyOf === (answers[pathIn(holder, 'kind')] ?? ''))
        .map((field) => ({ group, field, path: pathIn(holder, field.path), holder })),
    ),
  )
}

/** The names under which a field's text stands: an interval has two. */
export const textsOf = (field: FormField, path: string): readonly string[] => (field.shape === 'interval' ? [`${path}.low`, `${path}.high`] : [path])

const blank = (text: string | undefined): boolean => text === undefined || text.trim() === ''

export const isBlank = (answers: Answers, field: FormField, path: string): boolean => textsOf(field, path).every((name) => blank(answers[name]))

/** The same without what is blank, in one order, so that two states can be compared. */
export function trimmed(answers: Answers): Answers {
  return Object.fromEntries(
    Object.entries(answers)
      .filter(([, text]) => !blank(text))
      .sort(([a], [b]) => (a < b ? -1 : 1)),
  )
}

/** Answers with one entry taken out of a list; the entries behind it move up. */
export function withoutEntry(answers: Answers, group: FormGroup, index: number): Answers {
  const before = `${group.at}.`
  const moved = Object.entries(answers).flatMap(([name, text]): readonly (readonly [string, string])[] => {
    if (!name.startsWith(before)) return [[name, text]]
    const [place = '', ...rest] = name.slice(before.length).split('.')
    const at = Number(place)
    if (at === index) return []
    return [[at > index ? [group.at, at - 1, ...rest].join('.') : name, text]]
  })
  return { ...Object.fromEntries(moved), [group.at]: String(Math.max(0, countOf(answers, group) - 1)) }
}

/** Answers with one more, empty entry in a list. */
export function withEntry(answers: Answers, group: FormGroup): Answers {
  const count = countOf(answers, group)
  const kind = group.kinds[0]
  return {
    ...answers,
    [group.at]: String(Math.min(count + 1, group.most ?? 0)),
    ...(kind === undefined ? {} : { [`${group.at}.${count}.kind`]: kind }),
  }
}
