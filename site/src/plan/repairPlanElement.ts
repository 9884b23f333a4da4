import { Actions } from './actions.ts'
import { CircuitWireElement, type Probes } from './circuitWireElement.ts'
import { part } from './dom.ts'
import { openDetails } from './onRequest.ts'
import { PlanClient } from './planClient.ts'
import { PointerGate } from './pointerGate.ts'
import { ReadingEntry } from './readingEntry.ts'
import { Workbench } from './workbench.ts'

/** Pause in typing after which the plan is updated. */
const typingPauseMs = 250

const isText = (node: EventTarget | null): node is HTMLInputElement => node instanceof HTMLInputElement && node.type === 'text'
const isOurs = (node: EventTarget | null): node is HTMLInputElement | HTMLSelectElement =>
  (node instanceof HTMLInputElement || node instanceof HTMLSelectElement) && node.name !== ''

/** The plan page: connects events of the static form to the workbench. */
class RepairPlanElement extends HTMLElement {
  #stop = new AbortController()
  #timer: ReturnType<typeof setTimeout> | undefined
  /** The field in which Enter was pressed last, until its plan is there. */
  #entered: HTMLElement | null = null

  connectedCallback(): void {
    this.#stop = new AbortController()
    const { signal } = this.#stop
    const client = new PlanClient()
    const bench = new Workbench(this, client)
    const actions = new Actions(this, bench, client)
    const readings = new ReadingEntry(this, bench)
    bench.onShown = () => {
      if (this.#entered !== null) actions.offerPlan(this.#entered)
      this.#entered = null
    }
    const gate = new PointerGate((path) => bench.commit(path))
    this.addEventListener(
      'input',
      () => {
        clearTimeout(this.#timer)
        this.#timer = setTimeout(() => void bench.refresh(), typingPauseMs)
      },
      { signal },
    )
    this.addEventListener(
      'change',
      ({ target }) => {
        if (!isOurs(target)) return
        clearTimeout(this.#timer)
        readings.suitKind(target)
        gate.wait(target.name)
      },
      { signal },
    )
    this.addEventListener('click', (event) => this.#clicked(event, bench, actions, readings, gate), { signal })
    gate.watch(this, signal)
    this.addEventListener('submit', (event) => event.preventDefault(), { signal })
    this.addEventListener('keydown', (event) => this.#pressed(event, bench, actions), { signal })
    this.addEventListener('probes', (event) => readings.add((event as CustomEvent<Probes>).detail), { signal })
    this.addEventListener('probing', (event) => readings.probing((event as CustomEvent<string | null>).detail), { signal })
    this.addEventListener('toggle', ({ target }) => void openDetails(target, bench, client), { signal, capture: true })
    // First contact with the form starts loading the worker.
    for (const name of ['focusin', 'pointerdown', 'input']) this.addEventListener(name, () => client.wake(), { signal, once: true })
    actions.start(signal)
    readings.draw(bench.answers)
    this.dataset.ready = ''
  }

  disconnectedCallback(): void {
    this.#stop.abort()
    clearTimeout(this.#timer)
  }

  #clicked({ target }: Event, bench: Workbench, actions: Actions, readings: ReadingEntry, gate: PointerGate): void {
    const button = target instanceof Element ? target.closest<HTMLElement>('button') : null
    if (button === null) return
    const { act, add, remove, goto, fromBar, readNext } = button.dataset
    if (goto !== undefined) {
      // Text just typed is read before the next field is chosen, however quick the tap.
      clearTimeout(this.#timer)
      if (fromBar !== undefined && !gate.now()) void bench.refresh()
      actions.show('answers')
      bench.form.goTo((fromBar === undefined ? undefined : bench.nextPath) ?? goto)
    }
    if (act !== undefined) actions.act(act)
    if (readNext !== undefined) {
      actions.show('answers')
      readings.addNext(readNext)
    }
    const group = bench.groupAt(add ?? remove ?? '')
    if (group === undefined) return
    if (add !== undefined) {
      bench.addEntry(group)
      this.querySelector<HTMLElement>(`[data-list="${group.at}"] > :last-child :is(input, select)`)?.focus()
    } else {
      const entry = button.closest('.entry')
      const list = part(this, `[data-list="${group.at}"]`, HTMLElement)
      bench.removeEntry(group, [...list.children].indexOf(entry as Element))
      this.querySelector<HTMLElement>(group.at === 'readings' ? '[data-place]' : `[data-add="${group.at}"]`)?.focus()
    }
  }

  #pressed(event: KeyboardEvent, bench: Workbench, actions: Actions): void {
    if (event.key === 'Enter' && isText(event.target) && event.target.name !== '') {
      clearTimeout(this.#timer)
      bench.commit(event.target.name)
      this.#entered = event.target
      return
    }
    if (!(event.ctrlKey || event.metaKey) || event.altKey) return
    const key = event.key.toLowerCase()
    const wanted = key === 'y' || (key === 'z' && event.shiftKey) ? 'redo' : key === 'z' ? 'undo' : null
    if (wanted === null) return
    // Undo of half-typed text is left to the browser.
    if (isText(event.target) && event.target.value !== (bench.committed[event.target.name] ?? '')) return
    event.preventDefault()
    actions.act(wanted)
  }
}

customElements.define('circuit-wire', CircuitWireElement)
customElements.define('repair-plan', RepairPlanElement)
