import type { PlanInParts, PlanSection, RulesTold, SectionId } from '@strandwise/planner'
import { picturedCurves } from '@strandwise/planner/picture'
import { rulesTold } from '@strandwise/planner/report'
import type { ChartSpec } from '../../charts/chartSpec.ts'
import { lineChart } from '../../charts/lineChart.ts'
import { currentChart, heatingChart } from '../../charts/planCharts.ts'
import { html, type Markup, made } from '../../lib/markup.ts'

const figure = ({ spec, sentence }: { readonly spec: ChartSpec; readonly sentence: string }): Markup =>
  html`<figure class="chart"><live-chart data-chart="${JSON.stringify(spec)}">${made(lineChart(spec))}</live-chart><figcaption>${sentence}</figcaption></figure>`

function chartOf(parts: PlanInParts, id: SectionId): Markup | null {
  if (id !== 'wire-and-protection' && id !== 'heating') return null
  const curves = picturedCurves(parts)
  if (curves === null) return null
  if (id === 'wire-and-protection') return figure(currentChart(curves.currents))
  return curves.heating === null ? null : figure(heatingChart(curves.heating))
}

/** Rules of the trade that hold and no finding quotes, and those that would hold in a situation that the job does not state. */
function rulesOf(told: RulesTold | undefined, { id, findings }: PlanSection): Markup | null {
  const quoted = new Set(findings.map(({ rule }) => rule))
  const lines = [
    ...(told?.holding ?? []).filter((rule) => !quoted.has(rule.id)).map((rule) => rule.text),
    ...(told?.possible ?? []).map((rule) => `If ${rule.when ?? ''}: ${rule.text}`),
  ]
  if (lines.length === 0) return null
  return html`<details class="more" id="rules-${id}"><summary>${lines.length === 1 ? '1 rule' : `${lines.length} rules`} of the trade</summary><ul>${lines.map((line) => html`<li>${line}</li>`)}</ul></details>`
}

/** Chart and rules of a section, loaded when it is opened: the charts' shapes and the text of all trade rules come with them. */
export function laterOf(parts: PlanInParts, id: SectionId): string {
  const section = parts.plan.sections.find((found) => found.id === id)
  if (section === undefined) return ''
  const told = rulesTold(parts).find(({ topic }) => topic === id)
  return html`${chartOf(parts, id)}${rulesOf(told, section)}`.text
}
