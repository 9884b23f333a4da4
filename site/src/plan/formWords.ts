import type { FormField, FormGroup } from '@strandwise/planner/job'
import type { PageField, PageGroup } from './answers.ts'

/** What one entry of a list is called. */
const entryWords: Readonly<Record<string, string>> = { readings: 'reading', tools: 'tool', sleeves: 'sleeve' }
export const entryWord = (group: Pick<FormGroup, 'id'>): string => entryWords[group.id] ?? 'entry'

/** Up to so many words are shown side by side to be tapped; more go into a list that opens. */
const mostSideBySide = 6

export type Control = 'line' | 'two-lines' | 'side-by-side' | 'list' | 'tick-list'

/** How an answer is given on a page. */
export function controlOf(field: FormField): Control {
  if (field.shape === 'interval') return 'two-lines'
  if (field.shape === 'choices') return 'tick-list'
  if (field.shape === 'yes-no') return 'side-by-side'
  if (field.shape !== 'choice') return 'line'
  return field.needed && (field.values?.length ?? 0) <= mostSideBySide ? 'side-by-side' : 'list'
}

/** Beside the value what it is a reading of, and how the load stood; the places were tapped. */
export const openInReading: readonly string[] = ['value', 'kind', 'load']

/** Of an entry of a list: whether a field stands in the open; the others wait under "more". */
export const inTheOpen = (group: PageGroup, field: PageField): boolean =>
  group.at === 'readings' ? openInReading.includes(field.path) : group.most !== undefined && field.needed && field.shape !== 'choices'

/** What stands beside the title of a field that may be left out. */
export function besideTitle(group: FormGroup, field: FormField): string {
  const choice = group.oneOf.find((names) => names.includes(field.path))
  if (choice !== undefined) return choice[0] === field.path ? '' : 'instead'
  return field.needed ? '' : 'optional'
}

export const answersWord = (count: number): string => (count === 1 ? '1 answer' : `${count} answers`)

export const missingWords = (count: number): string => (count === 1 ? 'One answer to a plan.' : `${count} answers to a plan.`)
