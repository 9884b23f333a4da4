import type { PlanOption, PlanSection, PlanVerdict } from '@strandwise/planner/facts'
import type { RepairPlan } from '@strandwise/planner/report'
import { statusMark } from '@strandwise/planner/report'
import { choiceWord } from './choiceWords.ts'
import { drawn, el, list, part } from './dom.ts'
import { isStopped } from './isStopped.ts'
import type { Picture, Pictures } from './pictures.ts'
import { inUnits, type UnitSystem, valueIn } from './units.ts'

const oldWords = 'From your earlier answers.'

/** The plan on the wire, each section where the page keeps its place. */
export class PlanView {
  readonly #root: HTMLElement
  #generalCautions: readonly Node[]

  constructor(root: HTMLElement) {
    this.#root = root
    this.#generalCautions = [...part(root, '[data-cautions]', HTMLElement).childNodes]
  }

  #mark(verdict: PlanVerdict | 'plain'): Node {
    return document.importNode(part(this.#root, `template[data-mark-of="${verdict}"]`, HTMLTemplateElement).content, true)
  }

  show(plan: RepairPlan, system: UnitSystem): void {
    this.markOld(false)
    this.#cautions(plan, system)
    this.#endWire(isStopped(plan))
    for (const place of this.#root.querySelectorAll<HTMLElement>('[data-section]')) place.hidden = true
    for (const [index, section] of plan.sections.entries()) this.#section(section, index + 1, system)
    this.#after('steps', 'Steps', plan.sequence.length === 0 ? [] : [this.#steps(plan, system)])
    this.#after(
      'parts',
      'To fetch before you begin',
      plan.parts.length === 0
        ? []
        : [
            list(
              'ul',
              plan.parts.map((item) => inUnits(`${item.name}: ${Number(item.quantity.toPrecision(4))} ${item.unit}`.trim().replace(/: 1$/, ''), system)),
            ),
          ],
    )
    this.#after(
      'weighed',
      'What else was weighed',
      plan.options.length === 0
        ? []
        : [
            list(
              'ul',
              plan.options.map((option) => optionLine(option, system)),
            ),
          ],
    )
    this.#after('sources', 'Where the numbers come from', plan.tables.length === 0 ? [] : [sources(plan)])
  }

  /** The pictures of the plan that is shown. */
  picture(pictures: Pictures, system: UnitSystem): void {
    for (const [id, picture] of Object.entries(pictures)) {
      this.#root.querySelector(`[data-section="${id}"] [data-picture]`)?.replaceChildren(figure(picture, system))
    }
  }

  /** Only the stop list is known: the wire ends at it. */
  refuse(plan: RepairPlan, system: UnitSystem): void {
    this.clear()
    this.#cautions(plan, system)
    this.#endWire(true)
  }

  clear(): void {
    this.markOld(false)
    this.#endWire(false)
    const place = part(this.#root, '[data-before]', HTMLElement)
    place.dataset.verdict = 'sound'
    part(place, ':scope > .wire', SVGElement).replaceWith(this.#mark('sound'))
    part(place, '[data-cautions]', HTMLElement).replaceChildren(...this.#generalCautions)
    for (const stretch of this.#root.querySelectorAll<HTMLElement>('.planned')) {
      stretch.hidden = true
      stretch.replaceChildren()
    }
  }

  /** The last good plan stays, and says that it is old. */
  markOld(old: boolean): void {
    for (const stretch of this.#root.querySelectorAll<HTMLElement>('.planned:not([hidden])')) {
      stretch.toggleAttribute('data-old', old)
      const note = stretch.querySelector('.old')
      if (note === null && old) stretch.querySelector('h3')?.after(el('p', { class: 'old' }, oldWords))
      if (!old) note?.remove()
    }
  }

  #cautions(plan: RepairPlan, system: UnitSystem): void {
    const place = part(this.#root, '[data-before]', HTMLElement)
    const stopped = isStopped(plan)
    const verdict = stopped ? 'refused' : plan.cautions.length > 0 ? 'caution' : 'sound'
    place.dataset.verdict = verdict
    part(place, ':scope > .wire', SVGElement).replaceWith(this.#mark(verdict))
    const lines = plan.cautions.map((caution) => inUnits(caution, system))
    const end = stopped ? [el('p', {}, el('strong', { class: 'verdict', 'data-verdict': 'refused' }, 'The wire ends here: no plan for this circuit.'))] : []
    part(place, '[data-cautions]', HTMLElement).replaceChildren(...end, list('ul', lines))
  }

  /** Nothing hangs below a wire that has ended; the answers wait, should the circuit be another. */
  #endWire(ended: boolean): void {
    let below = false
    for (const stretch of this.#root.querySelectorAll<HTMLElement>('.run > .stretch')) {
      if (below) stretch.toggleAttribute('data-beyond', ended)
      if (stretch.hasAttribute('data-before')) below = true
    }
  }

  #section(section: PlanSection, number: number, system: UnitSystem): void {
    const place = part(this.#root, `[data-section="${section.id}"]`, HTMLElement)
    place.hidden = false
    place.dataset.verdict = section.verdict
    place.replaceChildren(
      this.#mark(section.verdict),
      el('h3', {}, `${number}. ${section.title}: `, el('span', { class: 'verdict', 'data-verdict': section.verdict }, section.verdict)),
      ...(section.findings.length === 0
        ? []
        : [
            list(
              'ul',
              section.findings.map(({ text }) => inUnits(text, system)),
            ),
          ]),
      ...(section.values.length === 0
        ? []
        : [el('dl', { class: 'values' }, ...section.values.flatMap((value) => [el('dt', {}, value.name), el('dd', {}, valueIn(value, system))]))]),
      el('div', { 'data-picture': true }),
      ...rests(section),
    )
  }

  #after(id: string, title: string, content: readonly Node[]): void {
    const place = part(this.#root, `[data-after="${id}"]`, HTMLElement)
    place.hidden = content.length === 0
    place.replaceChildren(this.#mark('plain'), el('h3', {}, title), ...content)
  }

  #steps(plan: RepairPlan, system: UnitSystem): HTMLElement {
    return list(
      'ol',
      plan.sequence.map((step) =>
        el(
          'div',
          {},
          inUnits(step.text, system),
          ...(step.values.length === 0
            ? []
            : [el('span', { class: 'value' }, ` ${step.values.map((value) => `${value.name}: ${valueIn(value, system)}`).join('; ')}.`)]),
          el('em', {}, ` Right when: ${inUnits(step.check, system)}`),
        ),
      ),
      { class: 'steps' },
    )
  }
}

function figure(picture: Picture, system: UnitSystem): HTMLElement {
  const caption = el('figcaption', {}, inUnits(picture.sentence, system))
  if (picture.spec === undefined) return el('figure', { class: 'to-scale' }, drawn(picture.svg), caption)
  const live = document.createElement('live-chart')
  live.dataset.chart = JSON.stringify(picture.spec)
  live.append(drawn(picture.svg))
  return el('figure', { class: 'chart' }, live, caption)
}

function optionLine(option: PlanOption, system: UnitSystem): HTMLElement {
  const reason = option.reasons[0] === undefined ? '' : `. ${inUnits(option.reasons[0], system)}`
  return el('span', {}, `${option.of} ${choiceWord(option.name)}: `, el('span', { class: 'verdict', 'data-verdict': option.verdict }, option.verdict), reason)
}

function rests(section: PlanSection): readonly Node[] {
  const formulas = [...new Set(section.workings.map((working) => working.id))]
  if (formulas.length === 0 && section.sources.length === 0) return []
  const lines = section.sources.map((source) => `${source.source}${source.clause === undefined ? '' : `, ${source.clause}`} (${statusMark[source.status]})`)
  return [
    el(
      'details',
      { class: 'more rests' },
      el('summary', {}, 'What this rests on'),
      ...(formulas.length === 0 ? [] : [el('p', {}, 'Computed by: ', ...formulas.flatMap((id, index) => [index === 0 ? '' : ', ', el('code', {}, id)]))]),
      list('ul', lines),
    ),
  ]
}

function sources(plan: RepairPlan): HTMLElement {
  const recalled = plan.tables.filter((source) => source.status === 'from memory')
  const counts = (['published', 'derived', 'common practice'] as const).map(
    (status) => `${plan.tables.filter((source) => source.status === status).length} ${statusMark[status]}`,
  )
  return el(
    'div',
    {},
    el('p', {}, `${counts.join('; ')}. Each section names its own.`),
    ...(recalled.length === 0
      ? []
      : [
          el('p', {}, 'From memory, not confirmed:'),
          list(
            'ul',
            recalled.map((source) => `${source.source}${source.clause === undefined ? '' : `, ${source.clause}`}`),
          ),
        ]),
  )
}
