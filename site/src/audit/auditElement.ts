import { list, part } from '../plan/dom.ts'
import { saveText } from '../plan/saveText.ts'
import { AuditClient, RefusedList } from './auditClient.ts'
import type { Judged } from './auditMessages.ts'
import type { SortColumn } from './judgedList.ts'
import { TableView } from './tableView.ts'

/** Pause in typing after which the rows are chosen again. */
const typingPauseMs = 200

/** The audit page: takes a list by file, drop or paste, and shows its table. */
class AuditListElement extends HTMLElement {
  readonly #client = new AuditClient()
  readonly #table = new TableView(this, this.#client)
  #stop = new AbortController()
  #typing: ReturnType<typeof setTimeout> | undefined
  #name = ''

  connectedCallback(): void {
    this.#stop = new AbortController()
    const { signal } = this.#stop
    const file = part(this, '#file', HTMLInputElement)
    file.addEventListener(
      'change',
      () => {
        const chosen = file.files?.[0]
        // The same file may be chosen again after a correction.
        if (chosen !== undefined) void this.#judge(chosen, chosen.name).finally(() => (file.value = ''))
      },
      { signal },
    )
    this.addEventListener('click', ({ target }) => this.#clicked(target), { signal })
    this.addEventListener('change', ({ target }) => target instanceof HTMLInputElement && target.name === 'shown' && void this.#table.turn('first'), { signal })
    part(this, '#words', HTMLInputElement).addEventListener(
      'input',
      () => {
        clearTimeout(this.#typing)
        this.#typing = setTimeout(() => void this.#table.turn('first'), typingPauseMs)
      },
      { signal },
    )
    this.#takeDrops(signal)
    this.dataset.ready = ''
  }

  disconnectedCallback(): void {
    this.#stop.abort()
    this.#client.stop()
  }

  /** A file dropped anywhere on the page; without this a browser would leave the page and open it. */
  #takeDrops(signal: AbortSignal): void {
    const hasFile = (event: DragEvent): boolean => event.dataTransfer?.types.includes('Files') === true
    const over = (on: boolean) => this.toggleAttribute('data-over', on)
    document.addEventListener(
      'dragover',
      (event) => {
        if (!hasFile(event)) return
        event.preventDefault()
        over(true)
      },
      { signal },
    )
    document.addEventListener('dragleave', ({ relatedTarget }) => relatedTarget === null && over(false), { signal })
    document.addEventListener(
      'drop',
      (event) => {
        if (!hasFile(event)) return
        event.preventDefault()
        over(false)
        const dropped = event.dataTransfer?.files[0]
        if (dropped !== undefined) void this.#judge(dropped, dropped.name)
      },
      { signal },
    )
  }

  #clicked(target: EventTarget | null): void {
    const button = target instanceof Element ? target.closest('button') : null
    if (button === null || button.getAttribute('aria-disabled') === 'true') return
    const { act, turn } = button.dataset
    const by = button.closest<HTMLElement>('th')?.dataset.by
    if (by !== undefined) void this.#table.sort(by as SortColumn)
    if (turn !== undefined) void this.#table.turn(turn)
    if (act === 'choose') part(this, '#file', HTMLInputElement).click()
    if (act === 'sample') void this.#sample()
    if (act === 'paste') void this.#judge(new Blob([part(this, '#paste', HTMLTextAreaElement).value]), 'pasted rows')
    if (act === 'stop') this.#stopped()
    if (act === 'save') void this.#save(null)
    if (act === 'save-shown') void this.#save(this.#table.choice)
  }

  async #sample(): Promise<void> {
    const { fleet, fleetName } = await import('./fleet.ts')
    await this.#judge(new Blob([fleet]), fleetName, true)
  }

  /** Judges a list; a refused one leaves the table as it is. */
  async #judge(source: Blob, name: string, invented = false): Promise<void> {
    this.#refuse([])
    this.#progress(`Judging ${name} …`)
    try {
      const judged = await this.#client.judge(source, (rows) => this.#progress(`${rows.toLocaleString('en')} rows of ${name} judged`))
      if (judged === null) return
      this.#progress(null)
      await this.#show(judged, name, invented)
    } catch (error) {
      if (!(error instanceof RefusedList)) throw error
      this.#progress(null)
      this.#refuse(error.lines.map((line) => `${name}: ${line}`))
    }
  }

  async #show(judged: Judged, name: string, invented: boolean): Promise<void> {
    this.#name = name
    const rows = `${judged.rows.toLocaleString('en')} ${judged.rows === 1 ? 'row' : 'rows'}`
    const heading = part(this, '#result', HTMLElement)
    heading.textContent = `${rows} of ${name}${invented ? ', an invented list' : ''}`
    const unused = part(this, '[data-unused]', HTMLElement)
    unused.hidden = judged.unused.length === 0
    unused.textContent = `Not used, for no row has them: ${judged.unused.join(', ')}.`
    await this.#table.take(judged)
    part(this, '[data-result]', HTMLElement).hidden = false
    heading.focus({ preventScroll: true })
    heading.scrollIntoView({ block: 'start' })
  }

  #stopped(): void {
    this.#client.stop()
    this.#progress(null)
    part(this, '[data-act="choose"]', HTMLElement).focus()
  }

  /** Says how far the list is; null once it is done. */
  #progress(words: string | null): void {
    part(this, '[data-progress]', HTMLElement).hidden = words === null
    part(this, '[data-judging]', HTMLElement).textContent = words ?? ''
  }

  #refuse(lines: readonly string[]): void {
    const said = part(this, '[data-said]', HTMLElement)
    const kept = this.#name === '' ? [] : [`The table below is still that of ${this.#name}.`]
    said.hidden = lines.length === 0
    said.replaceChildren(...(lines.length === 0 ? [] : [list('ul', [...lines, ...kept])]))
    if (lines.length > 0) said.scrollIntoView({ block: 'nearest' })
  }

  async #save(choice: Parameters<AuditClient['csv']>[0]): Promise<void> {
    const text = await this.#client.csv(choice)
    saveText(text, `${this.#name.replace(/\.\w+$/, '')} judged`, { ending: 'csv', type: 'text/csv', name: 'audit' })
  }
}

customElements.define('audit-list', AuditListElement)
