import { conditionHolds, type PracticeRule, type Provenance, type RuleFacts } from '@strandwise/core'

/** A rule of the trade that holds, or would hold in a situation that the job does not state. */
export interface RuleTold {
  readonly id: string
  readonly effect: PracticeRule['effect']
  readonly text: string
  /** The situation required, in words; absent if the rule holds. */
  readonly when?: string
  readonly source: Provenance
}

/** The rules of one topic, sorted by effect (forbids, requires, limits, favours, informs), then by source (published, common practice, from memory). */
export interface RulesTold {
  readonly topic: PracticeRule['decides']
  readonly holding: readonly RuleTold[]
  readonly possible: readonly RuleTold[]
}

const effects = ['forbids', 'requires', 'limits', 'favours', 'informs'] as const
const statuses = ['published', 'derived', 'common practice', 'from memory'] as const

const rank = (rule: PracticeRule): number => effects.indexOf(rule.effect) * statuses.length + statuses.indexOf(rule.source.status)

/** A situation in words: "stud-terminal" is "a stud terminal". */
const situationWords = (rule: PracticeRule): string =>
  rule.conditions
    .filter(({ field }) => field === 'situation')
    .map(({ values }) => values.map((value) => String(value).replaceAll('-', ' ')).join(' or '))
    .join(' and ')

function told(rule: PracticeRule, when?: string): RuleTold {
  return { id: rule.id, effect: rule.effect, text: rule.statement, ...(when === undefined ? {} : { when }), source: rule.source }
}

/** The given rules of a topic that hold for the facts, and those that would in an unstated situation. */
export function toldAmong(topic: PracticeRule['decides'], rules: readonly PracticeRule[], facts: RuleFacts): RulesTold {
  const holding: PracticeRule[] = []
  const possible: PracticeRule[] = []
  for (const rule of rules) {
    const missing = rule.conditions.filter((condition) => !conditionHolds(condition, facts))
    if (missing.length === 0) holding.push(rule)
    else if (missing.every(({ field }) => field === 'situation')) possible.push(rule)
  }
  const ranked = (found: readonly PracticeRule[]) => found.toSorted((one, other) => rank(one) - rank(other))
  return { topic, holding: ranked(holding).map((rule) => told(rule)), possible: ranked(possible).map((rule) => told(rule, situationWords(rule))) }
}
