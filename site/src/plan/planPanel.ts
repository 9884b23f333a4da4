import { drawn, part } from './dom.ts'
import type { PlanShown } from './showPlan.ts'

/** The plan on the page: only changed parts are replaced, and opened details stay open. */
export class PlanPanel {
  readonly #place: HTMLElement
  readonly #card: HTMLElement
  readonly #shown = new Map<string, string>()

  constructor(root: HTMLElement) {
    this.#place = part(root, '[data-plan]', HTMLElement)
    this.#card = part(root, '[data-card]', HTMLElement)
  }

  show(plan: PlanShown): void {
    this.markOld(false)
    for (const { key, markup } of plan.blocks) this.#put(key, markup)
    this.#place.dataset.verdict = plan.verdict
    this.#place.dataset.kind = plan.kind
    if (this.#shown.get('paper') !== plan.card.markup) this.#card.replaceChildren(drawn(plan.card.markup))
    this.#shown.set('paper', plan.card.markup)
    this.#card.dataset.size = plan.card.size
  }

  #put(key: string, markup: string): void {
    if (this.#shown.get(key) === markup) return
    this.#shown.set(key, markup)
    const place = part(this.#place, `[data-block="${key}"]`, HTMLElement)
    const open = new Set([...place.querySelectorAll('details[open][id], details[open][data-working]')].map(nameOf))
    place.replaceChildren(drawn(markup))
    for (const details of place.querySelectorAll('details')) if (open.has(nameOf(details))) details.open = true
  }

  clear(): void {
    this.#shown.clear()
    delete this.#place.dataset.verdict
    delete this.#place.dataset.kind
    this.markOld(false)
    for (const place of this.#place.querySelectorAll('[data-block]')) place.replaceChildren()
    this.#card.replaceChildren()
  }

  /** Marks the last good plan as outdated. */
  markOld(old: boolean): void {
    this.#place.toggleAttribute('data-old', old)
    part(this.#place, '[data-old-note]', HTMLElement).hidden = !old
  }
}

const nameOf = (details: Element): string => details.id || (details.getAttribute('data-working') ?? '')
