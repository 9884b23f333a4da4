import type { PlanBeforeRules, Stretch } from '@strandwise/planner'
import { type CircuitStretch, circuitLine } from '../../drawings/circuitLine.ts'
import { html, type Markup, made } from '../../lib/markup.ts'
import { choiceWord } from '../choiceWords.ts'
import { circuitPlaces } from '../places.ts'
import { printed } from '../units.ts'

const shown = (low: number, high: number): string => printed((low + high) / 2, 'V', 'metric', { low, high })

const verdicts: Readonly<Record<Stretch['verdict'], CircuitStretch['verdict']>> = { passes: 'sound', fails: 'unsound', 'cannot tell': 'cannot tell' }

const expected = (stretch: Stretch): string => `expected ${shown(stretch.healthyV.low, stretch.healthyV.high)}`
const measured = (stretch: Stretch): string =>
  stretch.measuredV === null ? 'not measured' : `measured ${shown(stretch.measuredV.low, stretch.measuredV.high)}`

const said: Readonly<Record<PlanBeforeRules['diagnosis']['fault'], string>> = {
  proven: 'The readings prove a fault',
  'not shown': 'The readings show no fault, and rule none out',
  'none here': 'No fault over what was read',
}

const asWords = (id: string): string => id.replaceAll('-', ' ')

/** Results of the readings: expected and measured by stretch, each reading's finding, leading causes and the next reading. */
export function diagnosis(plan: PlanBeforeRules): Markup | null {
  const { stretches, fault, at, answered, leading, next } = plan.diagnosis
  if (stretches.length === 0 && answered.length === 0 && next === null) return null
  const where = at === null ? '' : ` between ${choiceWord(at.from)} and ${choiceWord(at.to)}`
  const drawn = circuitLine({
    places: circuitPlaces,
    stretches: stretches
      .filter((stretch) => stretch.readings.length > 0)
      .map((stretch) => ({ from: stretch.from, to: stretch.to, words: [expected(stretch), measured(stretch)], verdict: verdicts[stretch.verdict] })),
    probes: next === null ? [] : [next.probe.from, next.probe.to],
  })
  return html`<section class="diagnosis" aria-labelledby="plan-readings"><h2 id="plan-readings">What the readings show</h2>
    ${answered.length === 0 ? html`<p>No reading yet.</p>` : html`<p class="lead">${said[fault]}${where}.</p>`}
    <figure class="to-scale">${made(drawn)}</figure>
    ${answered.length === 0 ? null : html`<ol class="answered">${answered.map(({ finding }) => html`<li data-verdict="${finding.verdict}">${finding.text}</li>`)}</ol>`}
    ${leading.length === 0 ? null : html`<p><strong>Leading ${leading.length === 1 ? 'cause' : 'causes'}:</strong> ${leading.map(asWords).join(', ')}.</p>`}
    ${next === null ? null : html`<p class="next"><strong>Next reading:</strong> ${next.finding.text} <button type="button" data-read-next="${[next.probe.kind, next.probe.from, next.probe.to, next.probe.load, next.probe.when ?? ''].join(' ')}">Enter it</button></p>`}
  </section>`
}
