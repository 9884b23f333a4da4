import type { LiveFunction } from './liveFunction.ts'

/** The form of a function; its code is loaded on first touch. */
class HandbookFunction extends HTMLElement {
  #live: Promise<LiveFunction> | null = null

  connectedCallback(): void {
    const form = this.querySelector('form')
    form?.addEventListener('focusin', () => void this.#wake(), { once: true })
    form?.addEventListener('input', () => void this.#wake().then((live) => live.compute()))
    form?.addEventListener('submit', (event) => event.preventDefault())
    this.querySelector('details[data-working]')?.addEventListener('toggle', () => void this.#live?.then((live) => live.work()))
  }

  #wake(): Promise<LiveFunction> {
    this.#live ??= import('./liveFunction.ts').then(({ LiveFunction: Live }) => {
      const live = new Live(this)
      // Fetched ahead; a failure is told when the form needs it.
      live.load().catch(() => undefined)
      return live
    })
    return this.#live
  }
}

if (customElements.get('handbook-function') === undefined) customElements.define('handbook-function', HandbookFunction)
