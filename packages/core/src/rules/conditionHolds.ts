import { DomainError, requireFinite } from '../errors/index.ts'
import type { RuleCondition } from './practiceRule.ts'

/** One fact of a job: a word, number or boolean, or a list of which any may meet a condition. */
export type RuleFact = string | number | boolean | readonly (string | number | boolean)[]

/** The facts of a job by the field names of the rules; unknown ones are absent. */
export type RuleFacts = Readonly<Record<string, RuleFact | undefined>>

/** Value of a condition that any given fact meets. */
const anyValue = 'any'

/** Index of a value that cannot be compared, or -1: NaN, or for an ordering anything but a number. */
export function badBound({ op, values }: RuleCondition): number {
  const ordered = op !== '=' && op !== '!='
  return values.findIndex((value) => (typeof value === 'number' ? !Number.isFinite(value) : ordered))
}

/**
 * True if a condition of a rule holds for the facts of a job; an unknown fact meets no condition.
 *
 * @equation fact op value, for any of the facts and any of the values
 * @symbol fact - facts - as the field's name says - what is known under the condition's field
 * @symbol op - condition.op - 1 - the comparison; only numbers have an order
 * @symbol value - condition.values.0 - as the field's name says - what it is compared with; the word any stands for whatever is given
 * @domain condition.values.0: finite
 * @throws DomainError for a number that is NaN or infinite, or an order against something that is no number
 * @example
 * conditionHolds({ field: 'supplyV', op: '>', values: [60] }, { supplyV: 48 }) // false
 * @source the rules, each of which carries its own
 */
export function conditionHolds(condition: RuleCondition, facts: RuleFacts): boolean {
  const bad = badBound(condition)
  if (bad >= 0) requireFinite(`condition.values.${bad}`, condition.values[bad] as number)
  return met(condition, facts)
}

/** The same for a condition whose values are already checked. */
export function met(condition: RuleCondition, facts: RuleFacts): boolean {
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
