import type { AskedField } from './question.ts'
import type { Typed } from './readInputs.ts'

/** Prefix of the inputs; its number is the version of the link's form. */
const prefix = 'case1&'
/** Length limit: far above any case, far below what could stall a phone. */
const longestLink = 4000

/** A case as a link's fragment without "#": every field as typed. */
export function caseToFragment(fields: readonly AskedField[], typed: Typed): string {
  return prefix + new URLSearchParams(fields.map((field) => [field.id, typed[field.id] ?? ''])).toString()
}

export const isCaseFragment = (fragment: string): boolean => /^case\d/.test(fragment)

/** Parses a case from a fragment, which must have every field of the form and no other; a string says why it is unusable. */
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
