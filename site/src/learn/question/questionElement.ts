import type { LiveQuestion } from './liveQuestion.ts'
import type { QuestionModel } from './question.ts'

/** A question on its page: its code is loaded on first touch, or for a case in the link. */
export function defineQuestion(load: (folder: string) => Promise<QuestionModel<never>>): void {
  class AskedQuestion extends HTMLElement {
    #live: Promise<LiveQuestion> | null = null
    #stop = new AbortController()

    connectedCallback(): void {
      this.#stop = new AbortController()
      const { signal } = this.#stop
      const form = this.querySelector('form')
      // Focus in the form starts the download, so that the answer is ready sooner.
      form?.addEventListener('focusin', () => void this.#wake(), { signal, once: true })
      form?.addEventListener('input', () => void this.#wake().then((live) => live.ask()), { signal })
      form?.addEventListener('submit', (event) => event.preventDefault(), { signal })
      this.querySelector('[data-copy]')?.addEventListener('click', () => void this.#wake().then((live) => live.copy()), { signal })
      this.querySelector('details[data-working]')?.addEventListener('toggle', () => void this.#live?.then((live) => live.work()), { signal })
      addEventListener('hashchange', () => this.#openLink(), { signal })
      this.#openLink()
      this.#watchAnswer()
    }

    /** When the answer is scrolled out of view, a slim bar at the top repeats it. */
    #watchAnswer(): void {
      const answer = this.querySelector('.answered .short')
      const bar = this.querySelector('[data-bar]')
      if (answer === null || bar === null) return
      const watch = new IntersectionObserver(([seen]) =>
        bar.toggleAttribute('hidden', seen === undefined || seen.isIntersecting || seen.boundingClientRect.top > 0),
      )
      watch.observe(answer)
      this.#stop.signal.addEventListener('abort', () => watch.disconnect())
    }

    disconnectedCallback(): void {
      this.#stop.abort()
    }

    #wake(): Promise<LiveQuestion> {
      this.#live ??= Promise.all([import('./liveQuestion.ts'), load(this.dataset.folder ?? '')]).then(
        ([{ LiveQuestion }, model]) => new LiveQuestion(this, model),
      )
      return this.#live
    }

    #openLink(): void {
      if (location.hash.startsWith('#case')) void this.#wake().then((live) => live.openLink())
    }
  }
  if (customElements.get('asked-question') === undefined) customElements.define('asked-question', AskedQuestion)
}
