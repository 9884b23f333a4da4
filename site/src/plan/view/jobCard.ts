import type { Finding, PlanBeforeRules } from '@strandwise/planner'
import { html, type Markup } from '../../lib/markup.ts'
import { decisionCard } from './card.ts'
import { type Drawn, figure } from './drawings.ts'
import { partText, stepText } from './work.ts'

/** Above this many characters the card is printed smaller, to stay on few sheets. */
const roomyCharacters = 3600

export interface JobCard {
  readonly markup: string
  readonly size: 'roomy' | 'tight'
}

const box = html`<span class="box" aria-hidden="true"></span>`
const blank = (words: string): Markup => html`<span class="blank">${words}</span>`

/** Blanks for each reading of the proof, with its limit. */
function measured(findings: readonly Finding[]): Markup | null {
  if (findings.length === 0) return null
  return html`<h3>Measure</h3><table class="measured"><thead><tr><th scope="col">Reading and limit</th><th scope="col">As found</th><th scope="col">As left</th></tr></thead><tbody>${findings.map(
    (finding) => html`<tr><th scope="row">${finding.text}</th><td></td><td></td></tr>`,
  )}</tbody></table>`
}

/** The plan as a card for the bench: decision, cautions, steps to tick, readings with limits, blanks for the results. */
export function jobCard(plan: PlanBeforeRules, facts: readonly string[], drawings: readonly Drawn[]): JobCard {
  const { units, cautions, parts, sequence, decision } = plan
  const ticked = (text: string): Markup => html`<li>${box} ${text}</li>`
  const markup = html`<p class="facts">${facts.map((fact) => html`<span>${fact}</span> `)}</p>
    <p class="blanks">${[blank('Place'), blank('Date'), blank('Done by')]}</p>
    ${decisionCard(plan)}
    ${drawings.length === 0 ? null : html`<div class="paper-drawings">${drawings.map(figure)}</div>`}
    ${cautions.length === 0 ? null : html`<h3>Cautions</h3><ul class="columns">${cautions.map((line) => html`<li>${line}</li>`)}</ul>`}
    ${parts.length === 0 ? null : html`<h3>Fetch</h3><ul class="ticks columns">${parts.map((part) => ticked(partText(part)))}</ul>`}
    ${
      sequence.length === 0
        ? null
        : html`<h3>Do, and look</h3><ol class="ticks">${sequence.map((step) => html`<li>${box} ${stepText(step, units)} <em>${box} Right when: ${step.check}</em></li>`)}</ol>`
    }
    ${measured(decision.doneWhen)}
    <p class="blanks">${[blank('Cause'), blank('Look again on'), blank('Signed')]}</p>`.text
  return { markup, size: markup.replace(/<[^>]*>/g, '').length > roomyCharacters ? 'tight' : 'roomy' }
}
