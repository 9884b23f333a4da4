import { Actions } from './actions.ts'
import { groupAt, Workbench } from './workbench.ts'

/** How long a person may pause in a word before the plan is made anew. */
const typingPauseMs = 250

const isText = (node: EventTarget | null): node is HTMLInputElement => node instanceof HTMLInputElement && node.type === 'text'

/** The plan page at work: it wires the events of the static form to the workbench. */
class RepairPlanElement extends HTMLElement {
  #stop = new AbortController()
  #timer: ReturnType<typeof setTimeout> | undefined
  #pointerDown = false
  #waiting: string | null = null

  connectedCallback(): void {
    this.#stop = new AbortController()
    const signal = this.#stop.signal
    const bench = new Workbench(this)
    const actions = new Actions(this, bench)
    this.addEventListener(
      'input',
      () => {
        clearTimeout(this.#timer)
        this.#timer = setTimeout(() => bench.refresh(), typingPauseMs)
      },
      { signal },
    )
    this.addEventListener('change', (event) => this.#changed(event, bench), { signal })
    this.addEventListener('click', (event) => this.#clicked(event, bench, actions), { signal })
    this.addEventListener('pointerdown', () => this.#pointer(true, bench), { signal, capture: true })
    for (const name of ['pointerup', 'pointercancel']) window.addEventListener(name, () => this.#pointer(false, bench), { signal })
    this.addEventListener('submit', (event) => event.preventDefault(), { signal })
    this.addEventListener('keydown', (event) => this.#pressed(event, bench, actions), { signal })
    // A hand on the form is soon followed by an answer.
    for (const name of ['focusin', 'pointerdown', 'input']) this.addEventListener(name, () => void bench.load(), { signal, once: true })
    actions.start(signal)
    this.dataset.ready = ''
  }

  disconnectedCallback(): void {
    this.#stop.abort()
    clearTimeout(this.#timer)
  }

  #changed({ target }: Event, bench: Workbench): void {
    if ((!(target instanceof HTMLInputElement) && !(target instanceof HTMLSelectElement)) || target.name === '') return
    clearTimeout(this.#timer)
    this.#waiting = target.name
    this.#settle(bench)
  }

  /** Leaving a field by a tap changes the page: that must not move what is being tapped before the tap is done. */
  #pointer(down: boolean, bench: Workbench): void {
    this.#pointerDown = down
    if (!down) this.#settle(bench)
  }

  /** After this event and, where a finger or a mouse button is down, after it is up and its click is given. */
  #settle(bench: Workbench): void {
    setTimeout(() => {
      if (this.#waiting === null || this.#pointerDown) return
      const path = this.#waiting
      this.#waiting = null
      bench.commit(path)
    })
  }

  #readNow(bench: Workbench): void {
    clearTimeout(this.#timer)
    const path = this.#waiting
    this.#waiting = null
    if (path === null) bench.refresh()
    else bench.commit(path)
  }

  #clicked({ target }: Event, bench: Workbench, actions: Actions): void {
    const button = target instanceof Element ? target.closest<HTMLElement>('button') : null
    if (button === null) return
    const { act, add, remove, goto, fromBar } = button.dataset
    if (goto !== undefined) {
      // The text just typed counts before the way on is chosen, however soon after the last key the tap comes.
      if (fromBar !== undefined) this.#readNow(bench)
      bench.form.goTo((fromBar === undefined ? undefined : bench.nextPath) ?? goto)
    }
    if (act !== undefined) actions.act(act)
    const group = groupAt(add ?? remove ?? '')
    if (group === undefined) return
    if (add !== undefined) {
      bench.addEntry(group)
      this.querySelector<HTMLElement>(`[data-list="${group.at}"] > :last-child :is(input, select)`)?.focus()
    } else {
      const entry = button.closest('.entry')
      bench.removeEntry(group, [...(entry?.parentElement?.children ?? [])].indexOf(entry as Element))
      this.querySelector<HTMLElement>(`[data-add="${group.at}"]`)?.focus()
    }
  }

  #pressed(event: KeyboardEvent, bench: Workbench, actions: Actions): void {
    if (event.key === 'Enter' && isText(event.target) && event.target.name !== '') {
      clearTimeout(this.#timer)
      bench.commit(event.target.name)
      return
    }
    if (!(event.ctrlKey || event.metaKey) || event.altKey) return
    const key = event.key.toLowerCase()
    const wanted = key === 'y' || (key === 'z' && event.shiftKey) ? 'redo' : key === 'z' ? 'undo' : null
    if (wanted === null) return
    // Half-typed text is the browser's own to take back.
    if (isText(event.target) && event.target.value !== (bench.committed[event.target.name] ?? '')) return
    event.preventDefault()
    actions.act(wanted)
  }
}

customElements.define('repair-plan', RepairPlanElement)
