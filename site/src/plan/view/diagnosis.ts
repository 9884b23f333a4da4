import type { PlanBeforeRules, Stretch } from '@strandwise/planner'
import { type CircuitStretch, circuitLine } from '../../drawings/circuitLine.ts'
import { html, type Markup, made } from '../../lib/markup.ts'
import { circuitPlaces, withPlaces } from '../places.ts'
import { printed } from '../units.ts'

const shown = (low: number, high: number): string => printed((low + high) / 2, 'V', 'metric', { low, high })

const verdicts: Readonly<Record<Stretch['verdict'], CircuitStretch['verdict']>> = { passes: 'sound', fails: 'unsound', 'cannot tell': 'cannot tell' }

const expected = (stretch: Stretch): string => `expected ${shown(stretch.healthyV.low, stretch.healthyV.high)}`
const measured = (stretch: Stretch): string =>
  stretch.measuredV === null ? 'not measured' : `measured ${shown(stretch.measuredV.low, stretch.measuredV.high)}`

const said: Readonly<Record<PlanBeforeRules['diagnosis']['fault'], string>> = {
  proven: 'The readings prove a fault',
  'not shown': 'The readings neither show a fault nor rule one out',
  'none here': 'No fault over what was read',
}

const causes: Readonly<Record<PlanBeforeRules['diagnosis']['leading'][number], string>> = {
  'open-lead': 'the lead is broken through',
  'high-resistance-pin': 'the pin has a high resistance',
  'corroded-strands': 'strands of the feed wire are corroded or broken',
  'overloaded-terminal': 'the terminal was overheated by too much current',
  'lost-spring-force': 'the terminal has lost its spring force',
  'bad-return': 'the return or ground connection is bad',
  'weak-supply': 'the supply is weak',
  'load-failed': 'the load has failed',
  'load-stalled': 'the motor is stalled',
  'coil-open': 'a coil or winding is open',
  'coil-short': 'a coil or winding is shorted',
  'short-to-circuit': 'the feed is shorted to the return',
  'dry-joint': 'the joint is dry or badly made',
  'fracture-in-contact': 'the wire is broken, and its ends touch while it lies still',
  'water-in-run': 'there is water in the run',
}

/** Results of the readings: expected and measured by stretch, each reading's finding, leading causes and the next reading. */
export function diagnosis(plan: PlanBeforeRules): Markup | null {
  const { stretches, fault, at, answered, leading, next } = plan.diagnosis
  if (stretches.length === 0 && answered.length === 0 && next === null) return null
  const where = at === null ? '' : withPlaces(` between ${at.from} and ${at.to}`)
  const drawn = circuitLine({
    places: circuitPlaces,
    stretches: stretches
      .filter((stretch) => stretch.readings.length > 0)
      .map((stretch) => ({ from: stretch.from, to: stretch.to, words: [expected(stretch), measured(stretch)], verdict: verdicts[stretch.verdict] })),
    probes: next === null ? [] : [next.probe.from, next.probe.to],
  })
  return html`<section class="diagnosis" aria-labelledby="plan-readings"><h2 id="plan-readings">What the readings show</h2>
    ${answered.length === 0 ? html`<p>No reading yet; the damage in sight decides.</p>` : html`<p class="lead">${said[fault]}${where}.</p>`}
    <figure class="to-scale">${made(drawn)}</figure>
    ${answered.length === 0 ? null : html`<ol class="answered">${answered.map(({ finding }) => html`<li data-verdict="${finding.verdict}">${withPlaces(finding.text)}</li>`)}</ol>`}
    ${leading.length === 0 || answered.length === 0 ? null : html`<p><strong>Likely ${leading.length === 1 ? 'cause' : 'causes'}:</strong> ${leading.map((id) => causes[id]).join('; ')}.</p>`}
    ${next === null ? null : html`<p class="next">${withPlaces(next.finding.text)} <button type="button" data-read-next="${[next.probe.kind, next.probe.from, next.probe.to, next.probe.load, next.probe.when ?? ''].join(' ')}">Enter it</button></p>`}
  </section>`
}
