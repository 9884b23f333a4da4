import { UnknownEntryError } from '../errors/index.ts'
import type { PracticeRule } from './practiceRule.ts'

/**
 * One figure of a rule, in the SI unit that its key ends in.
 *
 * @equation row of the rule's values
 * @symbol key - key - 1 - name of the figure, its unit at the end
 * @symbol figure - result - as the key says - the rule's value under that key
 * @throws UnknownEntryError where the rule has no such figure
 * @example
 * ruleFigure({ id: 'me-no-lap-at-plug', values: { minMm: 50 } }, 'minMm') // 50
 * @source the rule's own
 */
export function ruleFigure(rule: Pick<PracticeRule, 'id' | 'values'>, key: string): number {
  const value = Object.hasOwn(rule.values, key) ? rule.values[key] : undefined
  if (typeof value !== 'number') throw new UnknownEntryError(`${rule.id}.values`, key, Object.keys(rule.values))
  return value
}
