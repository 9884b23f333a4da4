import type { AskedField } from './question.ts'
import type { Typed } from './readInputs.ts'

/** What stands before the inputs: a later form of link gets another number. */
const prefix = 'case1&'
/** Far above any case, far below what could stall a phone. */
const longestLink = 4000

/** A case as the fragment of a link, without the "#": every field as it was typed. */
export function caseToFragment(fields: readonly AskedField[], typed: Typed): string {
  return prefix + new URLSearchParams(fields.map((field) => [field.id, typed[field.id] ?? ''])).toString()
}

export const isCaseFragment = (fragment: string): boolean => /^case\d/.test(fragment)

/** The case in a link's fragment: every field of the form and no other; a string says why it can't be used. */
export function caseFromFragment(fields: readonly AskedField[], fragment: string): Typed | string {
  const version = /^case(\d{1,6})&/.exec(fragment)?.[1]
  if (version === undefined) return 'it is cut short or was changed on its way'
  if (version !== '1') return `it is of form ${Number(version)}, and this page reads form 1`
  if (fragment.length > longestLink) return 'it is longer than any case'
  const given = new URLSearchParams(fragment.slice(prefix.length))
  const typed: Record<string, string> = {}
  for (const [id, text] of given) {
    if (!fields.some((field) => field.id === id)) return 'it holds something that this page does not ask for'
    if (id in typed) return 'it holds an answer twice'
    if (/[<>]/.test(text)) return 'it carries < or >'
    typed[id] = text
  }
  if (fields.some((field) => !(field.id in typed))) return 'it is cut short or was changed on its way'
  return typed
}
