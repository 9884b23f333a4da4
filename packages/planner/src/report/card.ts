import { printed } from '../facts/inner.ts'
import type { RepairPlan } from './repairPlan.ts'
import { valueText } from './words.ts'

/** Words that a card may have; past them the second thing to settle stands among the findings alone. */
const mostWords = 130

const wordsIn = (lines: readonly string[]): number =>
  lines
    .join(' ')
    .split(/\s+/)
    .filter((word) => word !== '').length
/** The sentence that says what, by how much, what to do. */
export const firstSentence = (text: string): string => text.split(/(?<=[.!?]) (?=[A-Z])/)[0] ?? text

/** The card, first thing in every report: what to do, not what was meant, what to fetch, lengths, what to settle, the reading that shows it is done. */
export function cardLines(plan: RepairPlan): readonly string[] {
  const { decision } = plan
  const lines = [decision.says]
  if (decision.notAsMeant !== null) lines.push(firstSentence(decision.notAsMeant.text))
  const fetch = fetchLine(plan)
  if (fetch !== '') lines.push(fetch)
  if (decision.lengths.length > 0) lines.push(`Lengths: ${decision.lengths.map((value) => `${value.name} ${valueText(value, plan.units)}`).join(', ')}.`)
  const done = decision.doneWhen.slice(0, 1).map((finding) => `Done when: ${firstSentence(finding.text)}`)
  const before = decision.before.map((finding) => `First settle: ${firstSentence(finding.text)}`)
  const verdict = `Verdict: ${plan.verdict}.`
  while (before.length > 0 && wordsIn([...lines, ...before, ...done, verdict]) > mostWords) before.pop()
  return [...lines, ...before, ...done, verdict]
}

/** Wire, fuse and terminal as they are asked for over a counter. */
function fetchLine({ decision, parts, units }: RepairPlan): string {
  const items: string[] = []
  const { wire, fuseA } = decision
  if (wire !== null) {
    const length = wire.lengthM < 1 ? printed(1000 * wire.lengthM, 'mm', units) : printed(wire.lengthM, 'm', units)
    items.push(`${length} of ${wire.size} ${wire.insulation} wire`)
  }
  if (fuseA !== null) items.push(`a ${printed(fuseA, 'A', units)} fuse`)
  const terminal = parts.find(({ name }) => /contact|terminal|lug|ferrule/.test(name))
  if (terminal !== undefined) items.push(terminal.name)
  return items.length === 0 ? '' : `Wire, fuse, terminal: ${items.join('; ')}.`
}
