import type { PlanBeforeRules } from '@strandwise/planner'
import { html, type Markup } from '../../lib/markup.ts'
import { type Answers, askedFields, unitOf } from '../answers.ts'
import { choiceWord } from '../choiceWords.ts'
import { planForm } from '../planForm.ts'
import { inUnits } from '../units.ts'

type Assumption = PlanBeforeRules['assumptions'][number]

const sentence = (text: string): string => `${text.slice(0, 1).toUpperCase()}${text.slice(1)}.`
const spaced = (path: string): string => (path.split('.').at(-1) ?? path).replace(/([A-Z])/g, ' $1').toLowerCase()

function line(item: Assumption, plan: PlanBeforeRules, answers: Answers): Markup {
  const asked = askedFields(planForm, answers).find(({ path }) => path === item.field)
  const title = asked?.field.title ?? spaced(item.field)
  const unit = asked === undefined ? '' : unitOf(asked, answers)
  const value = typeof item.value === 'number' ? `${Number(item.value.toPrecision(3))} ${unit}`.trim() : choiceWord(String(item.value))
  // Where the reason is the assumption itself, it is said once.
  const what = asked === undefined && typeof item.value === 'string' ? 'Assumed: ' : `Assumed: ${title}, ${inUnits(value, plan.units)}. `
  return html`<li>${what}${sentence(item.why)}${item.changesVerdict === true ? html`<strong> Known better, this could change the verdict.</strong>` : null}${
    asked === undefined ? null : html` <button type="button" data-goto="${item.field}">Answer it</button>`
  }</li>`
}

/** Assumptions by the form group whose answer would replace them; those that can change the verdict first. */
export function assumptionsByGroup(plan: PlanBeforeRules, answers: Answers): Readonly<Record<string, string>> {
  const ranked = [...plan.assumptions].sort((a, b) => Number(b.changesVerdict === true) - Number(a.changesVerdict === true))
  const groups = new Set(ranked.map((item) => item.field.split('.')[0] ?? ''))
  return Object.fromEntries(
    [...groups].map((group) => [
      group,
      ranked
        .filter((item) => (item.field.split('.')[0] ?? '') === group)
        .map((item) => line(item, plan, answers).text)
        .join(''),
    ]),
  )
}
