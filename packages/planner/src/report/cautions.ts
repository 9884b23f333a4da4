import { methodRules } from '@strandwise/core'
import type { Decided } from '../decision/inner.ts'
import { type Finding, type JobFacts, rule } from '../facts/inner.ts'
import { type RulesTold, toldAmong } from './rulesTold.ts'

/** Cautions before every repair that touches a wire. */
const always = ['ca-power-off', 'ca-prove-dead', 'ca-all-sources', 'ca-jewellery', 'ca-eyes-cutting', 'ca-identify-wire'] as const
export const generalCautions: readonly string[] = always.map((id) => rule(id).statement)
export const localCodes = 'Local codes and licensed practice come before this plan.'

/** Cautions of a refusal: who to ask, and nothing about probing. */
export function stopCautions(stops: readonly Finding[], circuit: string): readonly string[] {
  const forbidding = toldAmong('method', methodRules, { circuit }).holding.filter(({ id, effect }) => effect === 'forbids' && rule(id).conditions.length > 0)
  return [...new Set([...stops.map(({ text }) => text), ...forbidding.map(({ text }) => text), localCodes])]
}

/** Of an installation, or a note on how sources differ: told with everything, no caution of a repair. */
const notOfRepair: readonly string[] = ['ca-battery-fuel-parts', 'ca-conflict-battery-order']

/** The cautions for this job, each once, from the caution rules that hold; explosive vapour first. */
export function cautionsFor(facts: JobFacts, decided: Decided, told: RulesTold): readonly string[] {
  if (decided.kind === 'leave it') return [localCodes]
  if (decided.code === 'data-pair') return [rule('me-databus').statement, localCodes]
  const acting = told.holding.filter(({ id, effect }) => !notOfRepair.includes(id) && (effect === 'forbids' || effect === 'requires' || effect === 'limits'))
  const lines = acting.map(({ text }) => text)
  if (facts.flammableVapour) lines.unshift(rule('ca-no-hot-work-fuel').statement)
  lines.push(localCodes)
  return [...new Set(lines)]
}
