import { requireFinite } from '../errors/index.ts'
import { badBound, met, type RuleFacts } from './conditionHolds.ts'
import type { PracticeRule } from './practiceRule.ts'

/**
 * The given rules whose conditions all hold for the facts.
 *
 * @equation row of the rules, kept where every condition holds
 * @symbol rules - rules - 1 - to choose from
 * @symbol facts - facts - as each field's name says - what is known
 * @domain rules.0.conditions.0.values.0: finite
 * @throws DomainError for a number that is NaN or infinite, or an order against something that is no number
 * @example
 * rulesHolding(
 *   [{
 *     id: 'low-voltage-only', decides: 'cautions', statement: 'Out of scope above 60 V.', conditions: [{ field: 'supplyV', op: '>', values: [60] }],
 *     effect: 'forbids', methods: [], values: {}, source: { status: 'common practice', source: 'Trade practice' },
 *   }],
 *   { supplyV: 72 },
 * ) // [{ id: 'low-voltage-only' }]
 * @source each rule carries its own
 */
export function rulesHolding(rules: readonly PracticeRule[], facts: RuleFacts): readonly PracticeRule[] {
  return rules.filter((rule, index) =>
    rule.conditions.every((condition, at) => {
      const bad = badBound(condition)
      if (bad >= 0) requireFinite(`rules.${index}.conditions.${at}.values.${bad}`, condition.values[bad] as number)
      return met(condition, facts)
    }),
  )
}
