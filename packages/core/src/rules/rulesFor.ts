import { UnknownEntryError } from '../errors/index.ts'
import { conditionHolds, type RuleFacts } from './conditionHolds.ts'
import type { MethodContext } from './methodContext.ts'
import type { PracticeRule } from './practiceRule.ts'
import { practiceRulesBySection } from './practiceRules.ts'

/**
 * The facts that a method context carries, under the field names of the rules.
 *
 * @equation row of the context, each under the name that the rules use
 * @throws nothing
 * @example
 * ruleFacts({ flexes: true, distanceToTerminationMm: 25 }) // { flexes: true, fromTerminationMm: 25 }
 * @source none: it only renames
 */
export function ruleFacts(context: Readonly<Partial<MethodContext>>): RuleFacts {
  return {
    circuit: context.circuit,
    rules: context.rules,
    location: context.location,
    vibration: context.vibration,
    flexes: context.flexes,
    flammableVapour: context.flammableVapour,
    currentA: context.currentA,
    areaMm2: context.areaMm2,
    hottestC: context.hottestC,
    coldestC: context.coldestC,
    fromTerminationMm: context.distanceToTerminationMm,
    metal: context.metals,
    insulation: context.insulation,
    tool: context.tools,
  }
}

/**
 * Those of the given rules whose conditions all hold for the facts.
 *
 * @equation row of the rules, kept where every condition holds
 * @throws DomainError for a number that is NaN or infinite
 * @example
 * rulesHolding([], { flexes: true }) // []
 * @source each rule carries its own
 */
export function rulesHolding(rules: readonly PracticeRule[], facts: RuleFacts): readonly PracticeRule[] {
  return rules.filter((rule) => rule.conditions.every((condition) => conditionHolds(condition, facts)))
}

/**
 * What the trade says in one section of a plan, for facts under the field names of the rules.
 *
 * Give what the job knows beyond a method context here: supplyV, ambientC, damage, method, tool, solder, sleeve, fuse, terminal, reading, step, and any situation that plainly follows.
 *
 * @equation row of the section's rules, kept where every condition holds
 * @throws UnknownEntryError for a section that a plan has not
 * @throws DomainError for a number that is NaN or infinite
 * @example
 * rulesThatHold('cautions', { supplyV: 72 }) // [{ id: 'ca-voltage-limit' }]
 * @source each rule carries its own
 */
export function rulesThatHold(section: PracticeRule['decides'], facts: RuleFacts): readonly PracticeRule[] {
  if (!Object.hasOwn(practiceRulesBySection, section)) throw new UnknownEntryError('section', section, Object.keys(practiceRulesBySection))
  return rulesHolding(practiceRulesBySection[section], facts)
}

/**
 * What the trade says in one section of a plan, for what is known of the joint's context; a situation that no job carries is never taken as met.
 *
 * @equation row of the section's rules, kept where every condition holds
 * @throws UnknownEntryError for a section that a plan has not
 * @throws DomainError for a number that is NaN or infinite
 * @example
 * rulesFor('method', {}) // [{ id: 'me-conflict-solder' }]
 * @source each rule carries its own
 */
export function rulesFor(section: PracticeRule['decides'], context: Readonly<Partial<MethodContext>>): readonly PracticeRule[] {
  return rulesThatHold(section, ruleFacts(context))
}
