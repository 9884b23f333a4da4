import { type PracticeRule, practiceRules } from '@strandwise/core'

const byId = new Map(practiceRules.map((item) => [item.id, item]))

/** A trade rule by its id; the ids used here are checked by a test. */
export function rule(id: string): PracticeRule {
  const found = byId.get(id)
  if (found === undefined) throw new Error(`no trade rule "${id}"`)
  return found
}
