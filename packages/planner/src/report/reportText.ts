import type { PlanSection, RepairPlan } from '../plan/repairPlan.ts'
import { statusMark, valueText, verdictWord } from './words.ts'

const width = 96

/** The wire in the margin, as on the site: whole where sound, thin at caution, dashed where nothing can be told, broken where unsound, ended where refused. */
const wireMark = { sound: '║', caution: '│', 'cannot tell': '┊', unsound: '╳', refused: '■' } as const

function wrap(text: string, first: string, next: string): readonly string[] {
  const lines: string[] = []
  let line = first
  let empty = true
  for (const word of text.split(/\s+/)) {
    if (!empty && line.length + 1 + word.length > width) {
      lines.push(line)
      line = next + word
    } else line += empty ? word : ` ${word}`
    empty = false
  }
  lines.push(line)
  return lines
}

function sectionLines(section: PlanSection, index: number): readonly string[] {
  const mark = wireMark[section.verdict]
  const lines = [`${mark}  ${index + 1}. ${section.title}: ${verdictWord[section.verdict].toUpperCase()}`]
  for (const reason of section.reasons) lines.push(...wrap(reason, `${mark}     - `, `${mark}       `))
  for (const value of section.values) lines.push(`${mark}       ${value.name}: ${valueText(value)}`)
  lines.push(mark)
  return lines
}

/**
 * The plan for a terminal: the wire runs down the margin, and its shape carries each verdict.
 *
 * @throws nothing
 * @example
 * reportText(planRepair(trailerTailLamp)) // "REPAIR PLAN: SOUND…"
 */
export function reportText(plan: RepairPlan): string {
  const lines = [`REPAIR PLAN: ${verdictWord[plan.verdict].toUpperCase()}`, '', 'Cautions, first']
  for (const caution of plan.cautions) lines.push(...wrap(caution, '  ! ', '    '))
  lines.push('', ...plan.sections.flatMap(sectionLines), '')
  if (plan.sequence.length > 0) {
    lines.push('Steps')
    for (const [index, step] of plan.sequence.entries()) {
      lines.push(...wrap(step.text, `  ${String(index + 1).padStart(2)}. `, '      '))
      lines.push(...wrap(`Right when: ${step.check}`, '      ', '      '))
      for (const value of step.values) lines.push(`      ${value.name}: ${valueText(value)}`)
    }
    lines.push('')
  }
  if (plan.parts.length > 0) lines.push('Parts', ...plan.parts.map((part) => `  ${part.name}: ${part.quantity} ${part.unit}`.trimEnd()), '')
  if (plan.assumptions.length > 0) {
    lines.push('Assumed, because the job does not say (* known better, it could change the verdict)')
    for (const item of plan.assumptions)
      lines.push(...wrap(`${item.field} = ${String(item.value)}: ${item.why}`, item.changesVerdict === true ? '  * ' : '    ', '      '))
    lines.push('')
  }
  const recalled = plan.tables.filter((source) => source.status === 'from memory')
  if (recalled.length > 0) {
    lines.push('From memory, not confirmed')
    for (const source of recalled) lines.push(...wrap(`${source.source}${source.clause === undefined ? '' : `, ${source.clause}`}`, '  ', '    '))
    lines.push('')
  }
  const counted = (['published', 'common practice', 'derived'] as const).map(
    (status) => `${plan.tables.filter((source) => source.status === status).length} ${statusMark[status]}`,
  )
  lines.push(`Sources: ${counted.join('; ')}. The Markdown report names each.`)
  return `${lines.join('\n')}\n`
}
