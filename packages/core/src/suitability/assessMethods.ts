import type { Provenance } from '../materials/index.ts'
import { type MethodContext, type MethodName, methodDecidingRules, type PracticeRule, ruleFacts, rulesHolding } from '../rules/index.ts'
import { requireMethodContext } from './requireMethodContext.ts'
import { liftedIf, requirements } from './requirements.ts'

/** Why a method is excluded, conditional or preferred: the rule, its effect here, its statement, and what would change it. */
export interface MethodReason {
  readonly rule: string
  readonly effect: 'forbids' | 'requires' | 'favours'
  readonly text: string
  readonly changesIf?: string
  readonly source: Provenance
}

/** A method with the rules for and against it; `requires` lists only unmet requirements. */
export interface MethodAssessment {
  readonly method: MethodName
  readonly verdict: 'suitable' | 'conditional' | 'unsuitable'
  readonly reasons: readonly MethodReason[]
}

/** The seven methods, in order of preference where the rules leave two equal: self-sealing crimp first, solder after the mechanical methods. */
const methods: readonly MethodName[] = [
  'crimped-and-sealed-butt-splice',
  'crimped-butt-splice',
  'new-crimped-terminal',
  'replace-the-run',
  'soldered-lineman-splice',
  'soldered-lap',
  'solder-sleeve',
]
const verdicts = ['suitable', 'conditional', 'unsuitable'] as const
const effects = ['forbids', 'requires', 'favours'] as const

function reasonOf(rule: PracticeRule, effect: MethodReason['effect'], changesIf: string | undefined): MethodReason {
  return { rule: rule.id, effect, text: rule.statement, ...(changesIf === undefined ? {} : { changesIf }), source: rule.source }
}

function judge(rule: PracticeRule, context: MethodContext, method: MethodName): readonly MethodReason[] {
  const reasons: MethodReason[] = []
  if ((rule.effect === 'forbids' || rule.effect === 'favours') && rule.methods.includes(method)) reasons.push(reasonOf(rule, rule.effect, liftedIf[rule.id]))
  const requirement = requirements[rule.id]
  if (requirement !== undefined && (requirement.methods ?? rule.methods).includes(method)) {
    const judgement = requirement.judge(context, method, rule)
    if (judgement !== null) reasons.push(reasonOf(rule, judgement.effect, judgement.changesIf))
  }
  return reasons
}

/** Facts that follow from the method and the metals, by the field names of the rules. */
function factsOf(context: MethodContext, method: MethodName) {
  const wet = context.location !== 'dry'
  return {
    ...ruleFacts(context),
    method,
    tool: 'iron',
    step: 'heating',
    ...(wet || method === 'crimped-and-sealed-butt-splice' ? { sleeve: 'polyolefin-adhesive-lined' } : {}),
    ...(context.metals[0] === context.metals[1] ? {} : { situation: 'unlike-metals' }),
  }
}

/** A rule with conditions counts twice an unconditional one. */
const weightOf = (rule: PracticeRule | undefined): number => (rule === undefined || rule.conditions.length === 0 ? 1 : 2)
const ruleById = (id: string): PracticeRule | undefined => methodDecidingRules.find((rule) => rule.id === id)

function assess(context: MethodContext, method: MethodName): MethodAssessment {
  const reasons = rulesHolding(methodDecidingRules, factsOf(context, method)).flatMap((rule) => judge(rule, context, method))
  const sorted = effects.flatMap((effect) => reasons.filter((reason) => reason.effect === effect))
  const worst = sorted[0]?.effect
  return { method, verdict: worst === 'forbids' ? 'unsuitable' : worst === 'requires' ? 'conditional' : 'suitable', reasons: sorted }
}

/**
 * The seven ways to make the joint, best first, each with the rules of the trade for and against it.
 *
 * A prohibition makes a method unsuitable, an unmet requirement (a missing tool, for instance) makes it conditional. Among equals the method that more rules favour comes first, then the one with fewer conditions; a joint that must come apart again is then better made at the plug. The plan judges facts outside the context (damage, supply voltage, alloy).
 *
 * @equation row of the rules that decide a method
 * @symbol context - context - as each field's name says - circuit, place, wire, tools at hand, rule sets that the job names
 * @symbol verdict - result.0.verdict - 1 - of each method, best first
 * @domain hottestC: above -273.15
 * @domain coldestC: above -273.15
 * @domain currentA: at least 0
 * @domain areaMm2: above 0
 * @domain optional accessMm: at least 0
 * @domain optional distanceToTerminationMm: at least 0
 * @throws DomainError outside the domain, for a coldestC above hottestC and for a word that is not a choice
 * @throws UnknownEntryError for a metal or insulation that is not known
 * @example
 * assessMethods({
 *   circuit: 'motor', location: 'splash', vibration: 'some', flexes: false, hottestC: 45, coldestC: -10, currentA: 4.2, areaMm2: 1,
 *   metals: ['tinned-copper', 'tinned-copper'], insulation: 'PVC', accessMm: 300, distanceToTerminationMm: 25, flammableVapour: false,
 *   tools: ['hot-air', 'crimp-tool', 'terminal-die'], rules: ['small-craft'],
 * }) // [{ method: 'new-crimped-terminal', verdict: 'suitable' }]
 * @source each reason carries its own
 */
export function assessMethods(context: MethodContext): readonly MethodAssessment[] {
  requireMethodContext(context)
  const rank = (assessed: MethodAssessment): readonly number[] => {
    const count = (effect: MethodReason['effect']): number => assessed.reasons.filter((reason) => reason.effect === effect).length
    const favour = assessed.reasons.reduce((sum, reason) => sum + (reason.effect === 'favours' ? weightOf(ruleById(reason.rule)) : 0), 0)
    const parts = context.reversible === true && assessed.method !== 'new-crimped-terminal' ? 1 : 0
    return [verdicts.indexOf(assessed.verdict), -favour, count('forbids'), count('requires'), parts, methods.indexOf(assessed.method)]
  }
  return methods
    .map((method) => assess(context, method))
    .map((assessed) => ({ assessed, key: rank(assessed) }))
    .sort((one, other) => compareKeys(one.key, other.key))
    .map(({ assessed }) => assessed)
}

function compareKeys(one: readonly number[], other: readonly number[]): number {
  for (const [index, value] of one.entries()) {
    const difference = value - (other[index] ?? 0)
    if (difference !== 0) return difference
  }
  return 0
}
