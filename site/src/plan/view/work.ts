import type { PlanBeforeRules } from '@strandwise/planner'
import { html, type Markup } from '../../lib/markup.ts'
import { valueIn } from '../units.ts'

/** All cautions of this job, each once. */
export const cautions = (plan: PlanBeforeRules): Markup | null =>
  plan.cautions.length === 0
    ? null
    : html`<section class="cautions" aria-labelledby="plan-cautions"><h2 id="plan-cautions">Cautions</h2><ul>${plan.cautions.map((line) => html`<li>${line}</li>`)}</ul></section>`

/** "crimp contact: 2", "wire: 0.6 m"; no count for a single piece. */
export const partText = (part: PlanBeforeRules['parts'][number]): string => {
  const count = `${Number(part.quantity.toPrecision(4))} ${part.unit}`.trim()
  return count === '1' ? part.name : `${part.name}: ${count}`
}

export function stepText(step: PlanBeforeRules['sequence'][number], units: PlanBeforeRules['units']): string {
  // A figure that the sentence or its check names already is not printed twice.
  const said = `${step.text} ${step.check}`
  const values = step.values.filter((value) => !said.includes(valueIn(value, units))).map((value) => `${value.name} ${valueIn(value, units)}`)
  return values.length === 0 ? step.text : `${step.text} (${values.join('; ')})`
}

export const steps = (plan: PlanBeforeRules): Markup | null =>
  plan.sequence.length === 0
    ? null
    : html`<section aria-labelledby="plan-steps"><h2 id="plan-steps">Steps</h2><ol class="steps">${plan.sequence.map(
        (step) => html`<li>${stepText(step, plan.units)} <em>Right when: ${step.check}</em></li>`,
      )}</ol></section>`

export const parts = (plan: PlanBeforeRules): Markup | null =>
  plan.parts.length === 0
    ? null
    : html`<section aria-labelledby="plan-parts"><h2 id="plan-parts">Fetch</h2><ul class="parts">${plan.parts.map((part) => html`<li>${partText(part)}</li>`)}</ul></section>`
