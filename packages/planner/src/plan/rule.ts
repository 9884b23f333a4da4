import { type PracticeRule, quotedRules, ruleFigure } from '@strandwise/core'

const byId = new Map(quotedRules.map((item) => [item.id, item]))

/** A trade rule that the plan quotes, by its id; a test goes through every id that stands in the plan's sources. */
export function rule(id: string): PracticeRule {
  const found = byId.get(id)
  if (found === undefined) throw new Error(`"${id}" is not among the quoted rules of core`)
  return found
}

/** A figure of a quoted rule, so that the plan's limits stand where the rule does. */
export const figure = (id: string, key: string): number => ruleFigure(rule(id), key)
