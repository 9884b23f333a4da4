import { practiceRulesBySection } from '@strandwise/core'
import type { PlanInParts } from './planInParts.ts'
import { type RulesTold, toldAmong } from './rulesTold.ts'

/**
 * The rules of the trade under each topic of a plan: those that hold for the job, and those that would in a situation that it does not state.
 *
 * @throws nothing
 * @example
 * rulesTold(planInParts(trailerTailLamp)) // [{ topic: 'cautions' }]
 */
export function rulesTold({ ruled }: PlanInParts): readonly RulesTold[] {
  return ruled === null ? [] : ruled.topics.map((topic) => toldAmong(topic, practiceRulesBySection[topic], ruled.facts))
}
