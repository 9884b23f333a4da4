import type { FormField, FormGroup } from '@strandwise/planner/job'

/** Answers as typed, by the field's path; the path of a list has its number of entries. */
export type Answers = Readonly<Record<string, string>>

/** The parts of a form field that the page needs. */
export type PageField = Pick<FormField, 'path' | 'title' | 'shape' | 'needed' | 'kind' | 'unit' | 'values' | 'onlyOf'>
export interface PageGroup extends Pick<FormGroup, 'id' | 'at' | 'most' | 'oneOf' | 'kinds' | 'needed'> {
  readonly fields: readonly PageField[]
}

/** A form field at its path in the job, with list indices. */
export interface AskedField<G extends PageGroup = PageGroup> {
  readonly group: G
  readonly field: G['fields'][number]
  readonly path: string
  /** Path of its entry or group; '' for the job itself. */
  readonly holder: string
}

const mostDigits = 3

export function countOf(answers: Answers, group: PageGroup): number {
  const text = answers[group.at] ?? ''
  return /^\d+$/.test(text) && text.length <= mostDigits ? Math.min(Number(text), group.most ?? 0) : 0
}

/** Paths of a group's entries: "wire", "readings.0", "readings.1"; '' for fields of the job itself. */
export function holdersOf(answers: Answers, group: PageGroup): readonly string[] {
  if (group.most === undefined) return [group.at]
  return Array.from({ length: countOf(answers, group) }, (_, index) => `${group.at}.${index}`)
}

export const pathIn = (holder: string, path: string): string => (holder === '' ? path : `${holder}.${path}`)

/** All fields for the present answers, without those of another kind of tool. */
export function askedFields<G extends PageGroup>(form: readonly G[], answers: Answers): readonly AskedField<G>[] {
  return form.flatMap((group) =>
    holdersOf(answers, group).flatMap((holder) =>
      group.fields
        .filter((field) => field.onlyOf === undefined || field.onlyOf === (answers[pathIn(holder, 'kind')] ?? ''))
        .map((field) => ({ group, field, path: pathIn(holder, field.path), holder })),
    ),
  )
}

/** A missing answer, required by the first plan or by an entry already begun. */
export interface Missing {
  readonly path: string
  readonly title: string
}

/** Missing answers in form order. */
export function missingAnswers(form: readonly PageGroup[], answers: Answers): readonly Missing[] {
  const asked = askedFields(form, answers)
  const begun = new Set(asked.filter((item) => item.group.most !== undefined || !isBlank(answers, item.field, item.path)).map((item) => item.holder))
  const seen = new Set<string>()
  return asked.flatMap((item): readonly Missing[] => {
    const { group, field, path, holder } = item
    const choice = group.oneOf.find((names) => names.includes(field.path))
    if (choice !== undefined) {
      const key = `${holder} ${choice.join()}`
      if (seen.has(key) || (!group.needed && !begun.has(holder))) return []
      seen.add(key)
      const fields = asked.filter((other) => other.holder === holder && choice.includes(other.field.path))
      if (fields.some((other) => !isBlank(answers, other.field, other.path))) return []
      return [{ path: fields[0]?.path ?? holder, title: fields.map((other) => other.field.title.toLowerCase()).join(' or ') }]
    }
    if (isBlank(answers, field, path)) return field.needed && (group.needed || begun.has(holder)) ? [{ path, title: field.title }] : []
    if (field.shape !== 'interval') return []
    return (['low', 'high'] as const).flatMap((end) => (blank(answers[`${path}.${end}`]) ? [{ path: `${path}.${end}`, title: `${field.title}, ${end}` }] : []))
  })
}

/** Unit of a bare number in this field; for a reading it depends on the kind, '' until that is chosen. */
export function unitOf(asked: AskedField, answers: Answers): string {
  const { field, group, holder } = asked
  if (field.kind !== undefined) return field.unit ?? ''
  if (field.path === 'percentOfReading') return '%'
  if (group.at !== 'readings' || (field.path !== 'value' && field.path !== 'resolution')) return ''
  return readingUnits[answers[pathIn(holder, 'kind')] ?? ''] ?? ''
}

const readingUnits: Readonly<Record<string, string>> = {
  resistance: 'Ω',
  'four-wire': 'Ω',
  insulation: 'Ω',
  drop: 'V',
  voltage: 'V',
  current: 'A',
  temperature: '°C',
}

/** Paths of a field's texts: two for an interval. */
export const textsOf = (field: PageField, path: string): readonly string[] => (field.shape === 'interval' ? [`${path}.low`, `${path}.high`] : [path])

const blank = (text: string | undefined): boolean => text === undefined || text.trim() === ''

export const isBlank = (answers: Answers, field: PageField, path: string): boolean => textsOf(field, path).every((name) => blank(answers[name]))

/** Without blank answers, sorted, for comparison. */
export function trimmed(answers: Answers): Answers {
  return Object.fromEntries(
    Object.entries(answers)
      .filter(([, text]) => !blank(text))
      .sort(([a], [b]) => (a < b ? -1 : 1)),
  )
}

/** Answers without one entry of a list; later entries move up. */
export function withoutEntry(answers: Answers, group: PageGroup, index: number): Answers {
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

/** Answers with an empty entry added to a list. */
export function withEntry(answers: Answers, group: PageGroup): Answers {
  const count = countOf(answers, group)
  const kind = group.kinds[0]
  return {
    ...answers,
    [group.at]: String(Math.min(count + 1, group.most ?? 0)),
    ...(kind === undefined ? {} : { [`${group.at}.${count}.kind`]: kind }),
  }
}
