import { type PracticeRule, practiceRules, ruleFigure } from '@strandwise/core'

const byId = new Map(practiceRules.map((item) => [item.id, item]))

/** A trade rule by its id; a test checks every id in the planner's sources. */
export function rule(id: string): PracticeRule {
  const found = byId.get(id)
  if (found === undefined) throw new Error(`"${id}" is not among core's rules`)
  return found
}

/** A figure of a rule, read from the rule itself. */
export const figure = (id: string, key: string): number => ruleFigure(rule(id), key)
