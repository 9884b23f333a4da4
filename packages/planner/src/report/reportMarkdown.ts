import type { PlanSection, PlanValue, RepairPlan } from '../plan/repairPlan.ts'
import { statusMark, valueText, verdictWord } from './words.ts'

function valueRow(value: PlanValue): string {
  return `| ${value.name} | ${valueText(value)} | ${value.provenance.status} |`
}

function sectionLines(section: PlanSection, index: number): readonly string[] {
  return [
    `## ${index + 1}. ${section.title}: ${verdictWord[section.verdict]}`,
    '',
    ...section.reasons.map((reason) => `- ${reason}`),
    ...(section.values.length === 0 ? [] : ['', '| value | | rests on |', '|---|---:|---|', ...section.values.map(valueRow)]),
    ...(section.workings.length === 0 ? [] : ['', `Formulas: ${[...new Set(section.workings.map((working) => `\`${working.id}\``))].join(', ')}`]),
    '',
  ]
}

/**
 * The plan as Markdown: verdict, cautions, the nine sections, steps, what else was weighed, parts, assumptions and sources.
 *
 * @throws nothing
 * @example
 * reportMarkdown(planRepair(trailerTailLamp)) // "# Repair plan…"
 */
export function reportMarkdown(plan: RepairPlan): string {
  const lines = [
    '# Repair plan',
    '',
    `**Verdict: ${verdictWord[plan.verdict]}**`,
    '',
    '## Cautions, first',
    '',
    ...plan.cautions.map((caution) => `- ${caution}`),
    '',
    ...plan.sections.flatMap(sectionLines),
  ]
  if (plan.sequence.length > 0) {
    lines.push(
      '## Steps',
      '',
      ...plan.sequence.map(
        (step, index) =>
          `${index + 1}. ${step.text}\n   Right when: ${step.check}${step.values.map((value) => `\n   ${value.name}: ${valueText(value)}`).join('')}`,
      ),
      '',
    )
  }
  if (plan.options.length > 0)
    lines.push(
      '## What else was weighed',
      '',
      ...plan.options.map(
        (option) => `- ${option.of} ${option.name}: ${verdictWord[option.verdict]}${option.reasons[0] === undefined ? '' : `. ${option.reasons[0]}`}`,
      ),
      '',
    )
  if (plan.parts.length > 0)
    lines.push('## Parts', '', ...plan.parts.map((part) => `- ${part.name}: ${part.quantity}${part.unit === '' ? '' : ` ${part.unit}`}`), '')
  if (plan.assumptions.length > 0) {
    lines.push(
      '## Assumed',
      '',
      ...plan.assumptions.map(
        (item) =>
          `- \`${item.field}\` = ${String(item.value)}: ${item.why}${item.changesVerdict === true ? ' **(known better, this could change the verdict)**' : ''}`,
      ),
      '',
    )
  }
  lines.push(
    '## Sources',
    '',
    ...plan.tables.map(
      (source) =>
        `- ${source.source}${source.edition === undefined ? '' : `, ${source.edition}`}${source.clause === undefined ? '' : `, ${source.clause}`} (${statusMark[source.status]})`,
    ),
    '',
  )
  return lines.join('\n')
}
