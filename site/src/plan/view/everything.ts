import type { PlanBeforeRules, PlanSection } from '@strandwise/planner'
import { statusMark } from '@strandwise/planner/report'
import { html, type Markup } from '../../lib/markup.ts'
import { choiceWord } from '../choiceWords.ts'
import { withPlaces } from '../places.ts'
import { valueIn } from '../units.ts'
import { verdictWord } from './card.ts'

type Source = PlanBeforeRules['tables'][number]
const sourceLine = (source: Source): string => `${source.source}${source.clause === undefined ? '' : `, ${source.clause}`} (${statusMark[source.status]})`

/** Formulas of a section, each opened on request with its numbers. */
function workings(section: PlanSection): Markup | null {
  if (section.workings.length === 0) return null
  return html`<ul class="workings">${section.workings.map(
    (working, index) =>
      html`<li><details data-working="${section.id}.${index}"><summary>Working: ${working.gives ?? words(working.id)}</summary><div data-working-of></div></details></li>`,
  )}</ul>`
}

/** "lapJointResistanceOhm" in words: "lap joint resistance". */
const words = (id: string): string =>
  id
    .replace(/(?:MPerS|WPerM|OhmPerM|Mm2|Mm3|Ohm|Mm|MPa|[ACKMNSVW])$/, '')
    .replace(/([a-z])([A-Z0-9])/g, '$1 $2')
    .toLowerCase()

function section(found: PlanSection, plan: PlanBeforeRules): Markup {
  const { units } = plan
  return html`<details class="section" id="section-${found.id}" data-section="${found.id}" data-verdict="${found.verdict}">
    <summary><span><strong>${found.title}</strong>: ${withPlaces(found.says)}</span> ${verdictWord(found.verdict)}</summary>
    <ul class="findings">${found.findings.map((finding) => html`<li data-verdict="${finding.verdict}">${withPlaces(finding.text)}</li>`)}</ul>
    ${found.values.length === 0 ? null : html`<dl class="values">${found.values.map((value) => html`<dt>${value.name}</dt><dd>${valueIn(value, units)}</dd>`)}</dl>`}
    <div data-later="${found.id}"></div>
    ${workings(found)}
    ${found.sources.length === 0 ? null : html`<p class="rests">Rests on: ${found.sources.map(sourceLine).join('; ')}.</p>`}
  </details>`
}

/** All ways considered, to show the choice. */
function ways(plan: PlanBeforeRules): Markup | null {
  if (plan.ways.length === 0) return null
  const name = (method: string) => choiceWord(method)
  return html`<details class="section" data-ways><summary><span><strong>Ways compared</strong>: ${plan.ways.length} judged by the same checks</span></summary>
    <div class="wide" tabindex="0" role="region" aria-label="Ways compared"><table class="ways"><thead><tr><th scope="col">Way</th><th scope="col">Verdict</th><th scope="col">What decides</th></tr></thead><tbody>${plan.ways.map(
      (way) =>
        html`<tr><th scope="row">${name(way.method)}${way.chosen ? html` <small>chosen</small>` : null}${way.meant ? html` <small>meant</small>` : null}</th><td>${verdictWord(way.verdict)}</td><td>${way.decides.text}</td></tr>`,
    )}</tbody></table></div></details>`
}

function options(plan: PlanBeforeRules): Markup | null {
  if (plan.options.length === 0) return null
  return html`<details class="section"><summary><span><strong>Tools and parts</strong>: ${plan.options.length} judged</span></summary><ul>${plan.options.map(
    (option) =>
      html`<li>${option.of} ${choiceWord(option.name)}: ${verdictWord(option.verdict)}${option.reasons[0] === undefined ? null : `. ${option.reasons[0]}`}</li>`,
  )}</ul></details>`
}

function sources(plan: PlanBeforeRules): Markup | null {
  const recalled = plan.tables.filter((source) => source.status === 'from memory')
  const count = (status: Source['status']) => plan.tables.filter((source) => source.status === status).length
  if (plan.tables.length === 0) return null
  return html`<details class="section"><summary><span><strong>Sources</strong>: ${count('published')} published, ${count('common practice')} common practice, ${recalled.length} from memory</span></summary>
    <ul>${plan.tables.map((source) => html`<li>${sourceLine(source)}</li>`)}</ul></details>`
}

/** Every section with findings, values, workings and sources, each collapsible; its chart and rules are fetched when it is opened. */
export function everything(plan: PlanBeforeRules): Markup {
  return html`<section class="everything" aria-labelledby="plan-everything"><h2 id="plan-everything">Everything</h2>
    ${plan.sections.map((found) => section(found, plan))}${ways(plan)}${options(plan)}${sources(plan)}</section>`
}
