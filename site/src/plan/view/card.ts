import type { Decision, Finding, PlanBeforeRules } from '@strandwise/planner'
import { html, type Markup } from '../../lib/markup.ts'
import { choiceWord } from '../choiceWords.ts'
import { withPlaces } from '../places.ts'
import { printed, valueIn } from '../units.ts'

const kindWords: Readonly<Record<Decision['kind'], string>> = {
  mend: 'Mend it',
  'replace the run': 'Replace the run',
  'leave it': 'Leave it',
  'measure first': 'Measure first',
  refused: 'Refused',
}

/** First sentence of a finding: what, by how much, what to do. */
const firstSentence = (text: string): string => text.split(/(?<=[.!?]) (?=[A-Z])/)[0] ?? text

/** The verdict on the repair as a word; the mark's shape on the wire says the same. */
export const verdictWord = (verdict: string): Markup => html`<span class="verdict" data-verdict="${verdict}">${verdict}</span>`

const row = (name: string, value: string): Markup => html`<div><dt>${name}</dt><dd>${value}</dd></div>`

/** Figures for the hand: what to fetch, cut and set. */
function figures({ units, decision }: PlanBeforeRules): readonly Markup[] {
  const { wire, fuseA, lengths } = decision
  return [
    ...(wire === null
      ? []
      : [
          row('wire', `${wire.lengthM < 1 ? printed(1000 * wire.lengthM, 'mm', units) : printed(wire.lengthM, 'm', units)} of ${wire.size} ${wire.insulation}`),
        ]),
    ...(fuseA === null ? [] : [row('fuse', `${fuseA} A`)]),
    ...lengths.map((length) => row(length.name, valueIn(length, units))),
  ]
}

const named = (title: string, findings: readonly Finding[]): Markup | null =>
  findings.length === 0
    ? null
    : html`<div class="say"><h3>${title}</h3><ul>${findings.map((finding) => html`<li data-verdict="${finding.verdict}">${withPlaces(firstSentence(finding.text))}</li>`)}</ul></div>`

/** The card at the head of every plan: what to do, why, what to fetch and set, points to settle first, and the final reading. */
export function decisionCard(plan: PlanBeforeRules): Markup {
  const { decision } = plan
  const rows = figures(plan)
  return html`<article class="decision tinted" data-verdict="${plan.verdict}">
    ${plan.title === null ? null : html`<p class="job-title">${plan.title}</p>`}
    <p class="kind">${kindWords[decision.kind]}${decision.method === null || decision.kind === 'replace the run' ? null : html`: ${choiceWord(decision.method)}`}${decision.kind === 'refused' ? null : html` (${verdictWord(plan.verdict)})`}</p>
    <p class="says">${withPlaces(decision.says)}</p>
    <p>${withPlaces(firstSentence((decision.notAsMeant ?? decision.why).text))}</p>
    ${rows.length === 0 ? null : html`<dl class="figures">${rows}</dl>`}
    ${named('Settle first', decision.before)}
    ${named('Done when', decision.doneWhen.slice(0, 1))}
  </article>`
}
