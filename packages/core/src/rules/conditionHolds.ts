import { DomainError } from '../errors/index.ts'
import type { RuleCondition } from './practiceRule.ts'

/** One fact of a job: a word, a number or a yes, or several of them (any may meet a condition). */
export type RuleFact = string | number | boolean | readonly (string | number | boolean)[]

/** The facts of a job under the field names of the rules; what is not known is absent. */
export type RuleFacts = Readonly<Record<string, RuleFact | undefined>>

/** The value that means: this fact is given at all. */
const anyValue = 'any'

/**
 * Whether one condition of a rule holds for the facts of a job; a fact that is not known meets no condition.
 *
 * @equation row of the facts, compared with any of the condition's values
 * @throws DomainError for a number that is NaN or infinite
 * @example
 * conditionHolds({ field: 'supplyV', op: '>', values: [60] }, { supplyV: 48 }) // false
 * @source none: it reads the conditions of the rules, each of which carries its own
 */
export function conditionHolds(condition: RuleCondition, facts: RuleFacts): boolean {
  const fact = Object.hasOwn(facts, condition.field) ? facts[condition.field] : undefined
  if (fact === undefined) return false
  const given = Array.isArray(fact) ? (fact as readonly (string | number | boolean)[]) : [fact as string | number | boolean]
  for (const value of given) {
    if (typeof value === 'number' && !Number.isFinite(value)) throw new DomainError(condition.field, value, 'a finite number', undefined, 'not-finite')
  }
  if (given.length === 0) return false
  if (condition.op === '!=') return !given.some((value) => condition.values.includes(value))
  return given.some((value) => condition.values.some((wanted) => compares(value, condition.op, wanted)))
}

function compares(value: string | number | boolean, op: RuleCondition['op'], wanted: string | number | boolean): boolean {
  if (op === '=') return value === wanted || wanted === anyValue
  if (typeof value !== 'number' || typeof wanted !== 'number') return false
  if (op === '<') return value < wanted
  if (op === '<=') return value <= wanted
  if (op === '>') return value > wanted
  return value >= wanted
}
