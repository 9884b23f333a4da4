import { UnknownEntryError } from '../errors/index.ts'
import { met, type RuleFacts } from './conditionHolds.ts'
import type { MethodContext } from './methodContext.ts'
import type { PracticeRule } from './practiceRule.ts'
import { practiceRulesBySection } from './practiceRules.ts'
import { factsOf } from './ruleFacts.ts'

/**
 * The rules that hold in one section of a plan, for facts by the field names of the rules.
 *
 * Pass facts beyond a method context here: supplyV, ambientC, damage, method, tool, solder, sleeve, fuse, terminal, reading, step, and any situation that follows from them.
 *
 * @equation row of the section's rules, kept where every condition holds
 * @symbol section - section - 1 - of the plan, or the cautions before it
 * @symbol facts - facts - as each field's name says - what is known
 * @throws UnknownEntryError for a section that a plan has not
 * @throws DomainError for a number that is NaN or infinite
 * @example
 * rulesThatHold('cautions', { supplyV: 72 }) // [{ id: 'ca-voltage-limit' }]
 * @source each rule carries its own
 */
export function rulesThatHold(section: PracticeRule['decides'], facts: RuleFacts): readonly PracticeRule[] {
  if (!Object.hasOwn(practiceRulesBySection, section)) throw new UnknownEntryError('section', section, Object.keys(practiceRulesBySection))
  return practiceRulesBySection[section].filter((rule) => rule.conditions.every((condition) => met(condition, facts)))
}

/**
 * The rules that hold in one section of a plan, for the known context of the joint; situations that a job cannot state never count as met.
 *
 * @equation row of the section's rules, kept where every condition holds
 * @symbol section - section - 1 - of the plan, or the cautions before it
 * @symbol context - context - as each field's name says - what is known of the joint; what is not known meets no condition
 * @domain optional context.hottestC: finite
 * @domain optional context.coldestC: finite
 * @domain optional context.currentA: finite
 * @domain optional context.areaMm2: finite
 * @domain optional context.accessMm: finite
 * @domain optional context.distanceToTerminationMm: finite
 * @throws UnknownEntryError for a section that a plan has not
 * @throws DomainError for a number that is NaN or infinite
 * @example
 * rulesFor('method', {}) // [{ id: 'me-conflict-solder' }]
 * @source each rule carries its own
 */
export function rulesFor(section: PracticeRule['decides'], context: Readonly<Partial<MethodContext>>): readonly PracticeRule[] {
  return rulesThatHold(section, factsOf(context, 'context.'))
}
