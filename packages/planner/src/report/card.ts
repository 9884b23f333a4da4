import { firstSentence, printed } from '../facts/inner.ts'
import { measureLines } from './measureLines.ts'
import type { RepairPlan } from './repairPlan.ts'
import { valueText } from './words.ts'

/** Most words on a card; above that, the second point to settle is only among the findings. */
const mostWords = 130

const wordsIn = (lines: readonly string[]): number =>
  lines
    .join(' ')
    .split(/\s+/)
    .filter((word) => word !== '').length
/**
 * The card at the head of every report: what to do, why not the intended way, what to fetch, lengths, points to settle, the final reading.
 *
 * @throws nothing
 * @example
 * cardLines(planRepair(kilnHeater)) // ["Mains, shore power and inverter outputs: licensed people only. Ask an electrician.", "Verdict: refused."]
 */
export function cardLines(plan: RepairPlan): readonly string[] {
  const { decision } = plan
  const lines = [decision.says, ...measureLines(plan)]
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

/** Wire, fuse and terminal as shopping items. */
function fetchLine({ decision, parts, units, sequence }: RepairPlan): string {
  if (decision.kind !== 'mend' && decision.kind !== 'replace the run') return ''
  const items: string[] = []
  const { wire, fuseA } = decision
  if (wire !== null) {
    const length = wire.lengthM < 1 ? printed(1000 * wire.lengthM, 'mm', units) : printed(wire.lengthM, 'm', units)
    const name = parts.find((part) => part.name.startsWith(wire.size))?.name.replace(/ to put in$/, '')
    items.push(`Wire: ${length} of ${name ?? `${wire.size} ${wire.insulation}`}.`)
  }
  const changes = sequence.some(({ code }) => code === 'swap-fuse' || code === 'add-fuse')
  if (fuseA !== null) items.push(`Fuse: ${printed(fuseA, 'A', units)}${changes ? ', to fit' : ', as found'}.`)
  const terminal = parts.find(({ name }) => /contact|terminal|lug|ferrule/.test(name))
  if (terminal !== undefined) items.push(`Terminal: ${terminal.name.replace(/, one for the sample$/, '')}.`)
  return items.join(' ')
}
