import { drawn, part } from './dom.ts'
import type { PlanClient } from './planClient.ts'
import { saveText } from './saveText.ts'
import type { Workbench } from './workbench.ts'

/** The proof form: judges the readings on the finished repair and shows the record to print, sign and keep. */
export class ProofActions {
  readonly #root: HTMLElement
  readonly #bench: Workbench
  readonly #client: PlanClient
  #record: string | null = null

  constructor(root: HTMLElement, bench: Workbench, client: PlanClient) {
    this.#root = root
    this.#bench = bench
    this.#client = client
    const date = part(root, '#found-date', HTMLInputElement)
    if (date.value === '') date.value = new Date().toISOString().slice(0, 10)
  }

  act(name: string): void {
    if (name === 'prove') void this.#prove()
    if (name === 'print-record') this.#print()
    if (name === 'save-record' && this.#record !== null) saveText(this.#record, undefined, { ending: 'html', type: 'text/html', name: 'repair-record' })
  }

  async #prove(): Promise<void> {
    const form = part(this.#root, '[data-proof-form]', HTMLFormElement)
    const found = Object.fromEntries([...new FormData(form)].map(([key, value]) => [key, String(value)]))
    const proved = await this.#client.ask({ ask: 'prove', answers: this.#bench.answers, found })
    this.#record = proved?.record ?? null
    part(this.#root, '[data-proven]', HTMLElement).replaceChildren(proved === null ? 'There is no whole job yet.' : drawn(proved.markup))
    part(this.#root, '[data-recorded]', HTMLElement).hidden = this.#record === null
  }

  /** Prints the record once, in place of the job card. */
  #print(): void {
    if (this.#record === null) return
    // The record's own style is for the saved file; the page's policy would block it.
    const markup = this.#record.replace(/<style>[\s\S]*?<\/style>/, '')
    const page = new DOMParser().parseFromString(markup, 'text/html').querySelector('main')
    part(this.#root, '[data-record]', HTMLElement).replaceChildren(...(page?.childNodes ?? []))
    this.#root.dataset.paper = 'record'
    addEventListener('afterprint', () => delete this.#root.dataset.paper, { once: true })
    window.print()
  }
}
