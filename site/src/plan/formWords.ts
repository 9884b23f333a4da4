import type { FormField, FormGroup } from '@strandwise/planner/job'

/** What one entry of a list is called. */
const entryWords: Readonly<Record<string, string>> = { readings: 'reading', tools: 'tool', sleeves: 'sleeve' }
export const entryWord = (group: FormGroup): string => entryWords[group.id] ?? 'entry'

/** Up to so many words are shown side by side to be tapped; more go into a list that opens. */
const mostSideBySide = 4

export type Control = 'line' | 'two-lines' | 'side-by-side' | 'list' | 'tick-list'

/** How an answer is given on a page. */
export function controlOf(field: FormField): Control {
  if (field.shape === 'interval') return 'two-lines'
  if (field.shape === 'choices') return 'tick-list'
  if (field.shape === 'yes-no') return 'side-by-side'
  if (field.shape !== 'choice') return 'line'
  return field.needed && (field.values?.length ?? 0) <= mostSideBySide ? 'side-by-side' : 'list'
}

/** Whether a field stands in the open; the others wait under "more". */
export function inTheOpen(group: FormGroup, field: FormField): boolean {
  if (field.shape === 'choices') return false
  if (group.at === '' || group.oneOf.some((names) => names.includes(field.path))) return true
  return field.needed && (group.needed || group.most !== undefined)
}

/** What stands beside the title of a field that may be left out. */
export function besideTitle(group: FormGroup, field: FormField): string {
  const choice = group.oneOf.find((names) => names.includes(field.path))
  if (choice !== undefined) return choice.length === 2 ? 'one of two' : `one of ${choice.length === 3 ? 'three' : choice.length}`
  return field.needed ? '' : 'optional'
}

export const answersWord = (count: number): string => (count === 1 ? '1 answer' : `${count} answers`)

export const missingWords = (count: number): string => (count === 1 ? 'One answer is still missing.' : `${count} answers are still missing.`)

/** Fields that a first plan can't do without; of a set that excludes one another, one. */
export function neededCount(groups: readonly FormGroup[]): number {
  return groups.filter((group) => group.needed).reduce((sum, group) => sum + group.oneOf.length + group.fields.filter((field) => field.needed).length, 0)
}
