import { part } from './dom.ts'

export type View = 'plan' | 'answers'

/** Wide windows show answers and plan side by side, so there is nothing to go back from. */
const sideBySide = '(min-width: 62.5rem)'

const viewOf = (state: unknown): View | null => {
  const view = typeof state === 'object' && state !== null && 'view' in state ? state.view : null
  return view === 'plan' || view === 'answers' ? view : null
}

/** The two views of the page on a phone. The browser's back button leads from the plan to the answers where they were, then to the page before. */
export class Views {
  readonly #root: HTMLElement
  /** How far down the answers were when they were left. */
  #leftAt = 0

  constructor(root: HTMLElement) {
    this.#root = root
  }

  /** After a reload the plan is shown again, if there is work to plan. */
  start(signal: AbortSignal, hasWork: boolean): void {
    if (hasWork && viewOf(history.state) === 'plan') this.#set('plan')
    window.addEventListener(
      'popstate',
      ({ state }) => {
        const view = viewOf(state)
        if (view === null || view === this.#root.dataset.view) return
        this.#set(view)
        if (view !== 'answers') return
        scrollTo({ top: this.#leftAt })
        history.scrollRestoration = 'auto'
      },
      { signal },
    )
  }

  /** The view that the page opens with, without a step in the history. */
  begin(view: View): void {
    this.#set(view)
  }

  show(view: View): void {
    const now = this.#root.dataset.view
    if (now === view) return
    if (view === 'plan') this.#leftAt = scrollY
    this.#set(view)
    if (matchMedia(sideBySide).matches) return
    if (view === 'plan') {
      // Marked, so that going back is told from leaving; the place in the page is ours to restore.
      history.replaceState({ view: 'answers' }, '')
      history.scrollRestoration = 'manual'
      history.pushState({ view: 'plan' }, '')
    } else if (viewOf(history.state) === 'plan') history.back()
  }

  #set(view: View): void {
    this.#root.dataset.view = view
    scrollTo({ top: view === 'plan' ? part(this.#root, '[data-plan]', HTMLElement).offsetTop - 8 : 0 })
    part(this.#root, view === 'plan' ? '#plan-title' : 'h1', HTMLElement).focus({ preventScroll: true })
  }
}
