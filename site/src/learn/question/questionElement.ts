import type { LiveQuestion } from './liveQuestion.ts'
import type { QuestionModel } from './question.ts'

/** A question on its page: nothing is loaded until it is touched, or a link brings a case. */
export function defineQuestion<F>(load: () => Promise<QuestionModel<F>>): void {
  class AskedQuestion extends HTMLElement {
    #live: Promise<LiveQuestion<F>> | null = null
    #stop = new AbortController()

    connectedCallback(): void {
      this.#stop = new AbortController()
      const { signal } = this.#stop
      const form = this.querySelector('form')
      // A hand on the form is soon followed by an answer: what it needs is fetched meanwhile.
      form?.addEventListener('focusin', () => void this.#wake(), { signal, once: true })
      form?.addEventListener('input', () => void this.#wake().then((live) => live.ask()), { signal })
      form?.addEventListener('submit', (event) => event.preventDefault(), { signal })
      this.querySelector('[data-copy]')?.addEventListener('click', () => void this.#wake().then((live) => live.copy()), { signal })
      this.querySelector('details[data-working]')?.addEventListener('toggle', () => void this.#live?.then((live) => live.work()), { signal })
      addEventListener('hashchange', () => this.#openLink(), { signal })
      this.#openLink()
    }

    disconnectedCallback(): void {
      this.#stop.abort()
    }

    #wake(): Promise<LiveQuestion<F>> {
      this.#live ??= Promise.all([import('./liveQuestion.ts'), load()]).then(([{ LiveQuestion }, model]) => new LiveQuestion(this, model))
      return this.#live
    }

    #openLink(): void {
      if (location.hash.startsWith('#case')) void this.#wake().then((live) => live.openLink())
    }
  }
  if (customElements.get('asked-question') === undefined) customElements.define('asked-question', AskedQuestion)
}
