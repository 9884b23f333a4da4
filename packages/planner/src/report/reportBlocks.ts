import type { PlanSection, PlanStep } from '../facts/index.ts'
import { firstSentence } from '../facts/inner.ts'
import { methodTitles } from '../ways/inner.ts'
import type { Block } from './blocks.ts'
import { cardLines } from './card.ts'
import type { RepairPlan } from './repairPlan.ts'
import type { RuleTold } from './rulesTold.ts'
import { statusMark, valueText } from './words.ts'

/** Extent of the report: card, cautions and steps, or everything. */
export interface ReportOptions {
  readonly all?: boolean
}

/** The report as blocks: the job's title and the card, cautions, steps; the rest with `all`. */
export function reportBlocks(plan: RepairPlan, { all = false }: ReportOptions = {}): readonly Block[] {
  const [says = '', ...card] = cardLines(plan)
  const blocks: Block[] = [
    { kind: 'heading', level: 1, text: plan.title ?? 'Repair plan' },
    { kind: 'text', text: says },
    { kind: 'list', items: card },
    { kind: 'heading', level: 2, text: 'Cautions of this job' },
    { kind: 'list', items: plan.cautions },
  ]
  if (plan.sequence.length > 0) blocks.push({ kind: 'heading', level: 2, text: 'Steps' }, { kind: 'steps', items: plan.sequence.map(stepItem) })
  if (plan.parts.length > 0) blocks.push({ kind: 'heading', level: 2, text: 'To fetch' }, { kind: 'list', items: partLines(plan) })
  if (all) blocks.push(...everything(plan))
  return blocks
}

const stepItem = ({ text, check }: PlanStep) => ({ text, check })

const partLines = ({ parts }: RepairPlan): readonly string[] =>
  parts.map(({ name, quantity, unit }) =>
    unit === '' && quantity === 1 ? name : `${name}: ${Number(quantity.toPrecision(4))}${unit === '' ? '' : ` ${unit}`}`,
  )

function everything(plan: RepairPlan): readonly Block[] {
  const { decision } = plan
  const blocks: Block[] = [
    { kind: 'heading', level: 2, text: 'Why' },
    { kind: 'list', items: [decision.why.text, ...(decision.notAsMeant === null ? [] : [decision.notAsMeant.text])] },
  ]
  if (plan.ways.length > 0) {
    const rows = plan.ways.map((way) => [
      `${methodTitles[way.method]}${way.chosen ? ' (decided)' : way.meant ? ' (meant)' : ''}`,
      way.verdict,
      firstSentence(way.decides.text),
    ])
    blocks.push({ kind: 'heading', level: 2, text: 'Ways compared' }, { kind: 'table', head: ['way', 'verdict', 'what decides'], rows })
  }
  const meant = plan.ways.find((way) => way.meant && !way.chosen)
  if (meant !== undefined) {
    const items = meant.sections.flatMap(({ id, verdict, findings }) =>
      id === 'wire-and-protection' || verdict === 'sound' ? [] : findings.map(({ text }) => text),
    )
    blocks.push({ kind: 'heading', level: 2, text: `The way you meant: ${methodTitles[meant.method]} (${meant.verdict})` }, { kind: 'list', items })
  }
  for (const section of plan.sections) blocks.push(...sectionBlocks(plan, section))
  const cautions = plan.rules.find(({ topic }) => topic === 'cautions')
  if (cautions !== undefined)
    blocks.push(
      ...rulesBlocks(
        'More cautions of the trade',
        cautions.holding.filter(({ text }) => !plan.cautions.includes(text)),
        cautions.possible,
      ),
    )
  if (plan.options.length > 0)
    blocks.push(
      { kind: 'heading', level: 2, text: 'What else was weighed' },
      {
        kind: 'list',
        items: plan.options.map(
          ({ of, name, verdict, reasons }) => `${of} ${name}: ${verdict}${reasons[0] === undefined ? '' : `. ${firstSentence(reasons[0])}`}`,
        ),
      },
    )
  if (plan.assumptions.length > 0) {
    const items = plan.assumptions.map(
      ({ field, value, why, changesVerdict }) =>
        `${field} = ${String(value)}: ${why}${changesVerdict === true ? ' (known better, this could change the verdict)' : ''}`,
    )
    blocks.push({ kind: 'heading', level: 2, text: 'Assumed' }, { kind: 'list', items })
  }
  const sources = plan.tables.map(
    ({ source, edition, clause, status }) =>
      `${source}${edition === undefined ? '' : `, ${edition}`}${clause === undefined ? '' : `, ${clause}`} (${statusMark[status]})`,
  )
  if (sources.length > 0) blocks.push({ kind: 'heading', level: 2, text: 'Sources' }, { kind: 'list', items: sources })
  return blocks
}

function sectionBlocks(plan: RepairPlan, section: PlanSection): readonly Block[] {
  const blocks: Block[] = [
    { kind: 'heading', level: 2, text: `${section.title}: ${section.says} (${section.verdict})` },
    { kind: 'list', items: section.findings.map(({ text }) => text) },
  ]
  if (section.values.length > 0) {
    const rows = section.values.map((value) => [value.name, valueText(value, plan.units), value.provenance.status])
    blocks.push({ kind: 'table', head: ['value', '', 'rests on'], rows })
  }
  const formulas = [...new Set(section.workings.map(({ id }) => id))]
  if (formulas.length > 0) blocks.push({ kind: 'text', text: `Formulas: ${formulas.join(', ')}` })
  const told = plan.rules.find(({ topic }) => topic === section.id)
  const quoted = new Set(section.findings.flatMap(({ rule }) => rule ?? []))
  if (told !== undefined)
    blocks.push(
      ...rulesBlocks(
        'Rules of the trade',
        told.holding.filter(({ id }) => !quoted.has(id)),
        told.possible,
      ),
    )
  return blocks
}

function rulesBlocks(title: string, holding: readonly RuleTold[], possible: readonly RuleTold[]): readonly Block[] {
  const items = [...holding.map(({ text }) => text), ...possible.map(({ text, when = '' }) => `If ${when}: ${text}`)]
  return items.length === 0
    ? []
    : [
        { kind: 'heading', level: 3, text: title },
        { kind: 'list', items },
      ]
}
