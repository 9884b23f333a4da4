import { conditionHolds, type PracticeRule, type Provenance, practiceRulesBySection, type RuleFacts } from '@strandwise/core'

/** A rule of the trade as it is told: it holds, or it would if a situation is given that the job does not tell. */
export interface RuleTold {
  readonly id: string
  readonly effect: PracticeRule['effect']
  readonly text: string
  /** The situation that it asks for, in words; absent where it holds. */
  readonly when?: string
  readonly source: Provenance
}

/** The rules of one topic, ranked: what forbids, requires, limits, favours, informs; published before common practice before memory. */
export interface RulesTold {
  readonly topic: PracticeRule['decides']
  readonly holding: readonly RuleTold[]
  readonly possible: readonly RuleTold[]
}

const effects = ['forbids', 'requires', 'limits', 'favours', 'informs'] as const
const statuses = ['published', 'derived', 'common practice', 'from memory'] as const

const rank = (rule: PracticeRule): number => effects.indexOf(rule.effect) * statuses.length + statuses.indexOf(rule.source.status)

/** A situation of the rules in words: "stud-terminal" is "a stud terminal". */
const situationWords = (rule: PracticeRule): string =>
  rule.conditions
    .filter(({ field }) => field === 'situation')
    .map(({ values }) => values.map((value) => String(value).replaceAll('-', ' ')).join(' or '))
    .join(' and ')

function told(rule: PracticeRule, when?: string): RuleTold {
  return { id: rule.id, effect: rule.effect, text: rule.statement, ...(when === undefined ? {} : { when }), source: rule.source }
}

/** The rules of a topic that hold for the facts, and those that only a situation is missing for. */
export function rulesOf(topic: PracticeRule['decides'], facts: RuleFacts): RulesTold {
  const holding: PracticeRule[] = []
  const possible: PracticeRule[] = []
  for (const rule of practiceRulesBySection[topic]) {
    const missing = rule.conditions.filter((condition) => !conditionHolds(condition, facts))
    if (missing.length === 0) holding.push(rule)
    else if (missing.every(({ field }) => field === 'situation')) possible.push(rule)
  }
  const ranked = (rules: readonly PracticeRule[]) => rules.toSorted((one, other) => rank(one) - rank(other))
  return { topic, holding: ranked(holding).map((rule) => told(rule)), possible: ranked(possible).map((rule) => told(rule, situationWords(rule))) }
}
