import { UnknownEntryError } from '@strandwise/core/errors'
import { type PracticeRule, practiceRules } from '@strandwise/core/rules'
import { sourceText } from './workingMarkup.ts'

/** A rule of the trade by its id. */
export function rule(id: string): PracticeRule {
  const found = practiceRules.find((item) => item.id === id)
  if (found === undefined) throw new UnknownEntryError('rule', id, [])
  return found
}

/** Rules of the trade as a page quotes them. */
export const quoted = (...ids: readonly string[]): readonly { readonly text: string; readonly source: string }[] =>
  ids.map((id) => ({ text: rule(id).statement, source: sourceText(rule(id).source) }))
