import type { PlanSection, PlanValue } from '@strandwise/planner/facts'
import type { RepairPlan } from '@strandwise/planner/report'
import { el, list } from './dom.ts'
import type { Planned } from './planning.ts'
import { inUnits, type UnitSystem, valueIn } from './units.ts'

/** Above so many characters the card is set smaller, so that it stays on two sheets. */
const roomyCharacters = 5200

/** Of each section that is not sound; the page has them all. */
const reasonsShown = 2

const box = () => el('span', { class: 'box', 'aria-hidden': 'true' })
const blank = (words: string) => el('span', { class: 'blank' }, words)

/** A reading that the proof asks for, with what it may be and room for what it was. */
function measuredRow(name: string, allowed: string): HTMLElement {
  return el('tr', {}, el('th', { scope: 'row' }, name), el('td', {}, allowed), el('td', {}, ''), el('td', {}, ''))
}

/** What the steps name with a value is measured on the bench; three readings without which none of them counts come first. */
function measuredTable(plan: RepairPlan, system: UnitSystem): HTMLElement {
  const named = new Map<string, PlanValue>(plan.sequence.flatMap((step) => step.values.map((value) => [value.name, value] as const)))
  const rows = [
    ['Supply at the source, load on', ''],
    ['Current while reading', ''],
    ['Air beside the joint', ''],
    ...[...named.values()].map((value) => [value.name.slice(0, 1).toUpperCase() + value.name.slice(1), valueIn(value, system)]),
  ]
  const head = ['Measured', 'Plan', 'As found', 'As left'].map((words) => el('th', { scope: 'col' }, words))
  return el(
    'table',
    { class: 'measured' },
    el('thead', {}, el('tr', {}, ...head)),
    el('tbody', {}, ...rows.map(([name = '', allowed = '']) => measuredRow(name, allowed))),
  )
}

function verdicts(sections: readonly PlanSection[], system: UnitSystem): HTMLElement {
  const rows = sections.map((section) => {
    const reason =
      section.verdict === 'sound'
        ? ''
        : inUnits(
            section.findings
              .slice(0, reasonsShown)
              .map(({ text }) => text)
              .join(' '),
            system,
          )
    return el('tr', {}, el('th', { scope: 'row' }, section.title), el('td', { class: 'word' }, section.verdict), el('td', {}, reason))
  })
  return el('table', { class: 'verdicts' }, el('tbody', {}, ...rows))
}

/** The plan as a card for the bench: what to do, boxes to tick, room for what was measured. */
export function jobCard({ job, plan }: Planned, facts: readonly string[], system: UnitSystem): readonly Node[] {
  const units = (text: string) => inUnits(text, system)
  const steps = plan.sequence.map((step) => {
    const values = step.values.map((value) => `${value.name} ${valueIn(value, system)}`).join('; ')
    return el('span', {}, box(), ` ${units(step.text)}${values === '' ? '' : ` (${values})`} `, el('em', {}, box(), ` Right when: ${units(step.check)}`))
  })
  const parts = plan.parts.map((item) => el('span', {}, box(), ` ${units(`${item.name}: ${Number(item.quantity.toPrecision(4))} ${item.unit}`.trim())}`))
  return [
    el('h2', {}, job.title ?? 'Job card'),
    el('p', {}, el('strong', {}, `Verdict on the job as it stands: ${plan.verdict}.`), ` ${facts.join('; ')}.`),
    el('p', { class: 'blanks' }, blank('Place'), blank('Date'), blank('Done by')),
    el('h3', {}, 'Cautions, first'),
    list('ul', plan.cautions.map(units), { class: 'columns' }),
    el('h3', {}, 'What the plan says'),
    verdicts(plan.sections, system),
    ...(parts.length === 0 ? [] : [el('h3', {}, 'Fetch'), list('ul', parts, { class: 'ticks' })]),
    ...(steps.length === 0 ? [] : [el('h3', {}, 'Do, and look'), list('ol', steps, { class: 'ticks' })]),
    ...(steps.length === 0 ? [] : [el('h3', {}, 'Measure'), measuredTable(plan, system), el('p', { class: 'blanks' }, blank('Cause'), blank('Look again on'))]),
  ]
}

/** How small the card must be set. */
export const cardSize = (card: HTMLElement): 'roomy' | 'tight' => ((card.textContent ?? '').length > roomyCharacters ? 'tight' : 'roomy')
