import type { FormField, FormGroup } from '@strandwise/planner/job'
import type { PageField, PageGroup } from './answers.ts'

/** Name of one entry of a list. */
const entryWords: Readonly<Record<string, string>> = { readings: 'reading', tools: 'tool', sleeves: 'sleeve' }
export const entryWord = (group: Pick<FormGroup, 'id'>): string => entryWords[group.id] ?? 'entry'

/** Most choices shown side by side; longer lists become a select. */
const mostSideBySide = 6

export type Control = 'line' | 'two-lines' | 'side-by-side' | 'list' | 'tick-list'

/** Kind of control for a field. */
export function controlOf(field: FormField): Control {
  if (field.shape === 'interval') return 'two-lines'
  if (field.shape === 'choices') return 'tick-list'
  if (field.shape === 'yes-no') return 'side-by-side'
  if (field.shape !== 'choice') return 'line'
  return field.needed && (field.values?.length ?? 0) <= mostSideBySide ? 'side-by-side' : 'list'
}

/** Fields of a reading shown beside the value: kind and load; the places are tapped. */
export const openInReading: readonly string[] = ['value', 'kind', 'load']

/** True if a field of an entry is always visible, not under "more". */
export const inTheOpen = (group: PageGroup, field: PageField): boolean =>
  group.at === 'readings' ? openInReading.includes(field.path) : group.most !== undefined && field.needed && field.shape !== 'choices'

/** Note beside the title of an optional field. */
export function besideTitle(group: FormGroup, field: FormField): string {
  const choice = group.oneOf.find((names) => names.includes(field.path))
  if (choice !== undefined) return choice[0] === field.path ? '' : 'instead'
  return field.needed ? '' : 'optional'
}

export const answersWord = (count: number): string => (count === 1 ? '1 answer' : `${count} answers`)

export const missingWords = (count: number): string => (count === 1 ? 'One answer to go.' : `${count} answers to go.`)
