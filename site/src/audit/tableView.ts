import { drawn, part } from '../plan/dom.ts'
import type { AuditClient } from './auditClient.ts'
import type { Judged, Rows } from './auditMessages.ts'
import { type Choice, type Kind, kinds, type SortColumn } from './judgedList.ts'
import { rowMarkup } from './rowMarkup.ts'

/** Rows of one page: few enough to draw at once, whatever the length of the list. */
const pageRows = 50

const numberWords = (count: number): string => count.toLocaleString('en')

/** Which kinds each choice of the field "Show" takes. */
const shownKinds: Readonly<Record<string, readonly Kind[]>> = {
  all: kinds,
  'not sound': kinds.filter((kind) => kind !== 'sound'),
  ...Object.fromEntries(kinds.map((kind) => [kind, [kind]])),
}

/** The table of the present list: filter, order, and one page of rows at a time. */
export class TableView {
  readonly #root: HTMLElement
  readonly #client: AuditClient
  #by: SortColumn = 'line'
  #down = false
  #from = 0
  #of = 0
  #drawing = 0

  constructor(root: HTMLElement, client: AuditClient) {
    this.#root = root
    this.#client = client
  }

  get choice(): Choice {
    const shown = this.#root.querySelector<HTMLInputElement>('[name="shown"]:checked')?.value ?? 'all'
    return { kinds: shownKinds[shown] ?? kinds, words: part(this.#root, '#words', HTMLInputElement).value, by: this.#by, down: this.#down }
  }

  /** Shows a new list from its first row, unfiltered and in its own order. */
  async take({ counts, rows }: Judged): Promise<void> {
    part(this.#root, '#words', HTMLInputElement).value = ''
    part(this.#root, '[name="shown"][value="all"]', HTMLInputElement).checked = true
    for (const [name, taken] of Object.entries(shownKinds)) {
      const count = name === 'all' ? rows : taken.reduce((sum, kind) => sum + counts[kind], 0)
      part(this.#root, `[data-count="${name}"]`, HTMLElement).textContent = numberWords(count)
    }
    this.#by = 'line'
    this.#down = false
    await this.turn('first')
  }

  /** Sorts by a column; the same one again turns the order round. */
  async sort(by: SortColumn): Promise<void> {
    this.#down = this.#by === by && !this.#down
    this.#by = by
    await this.turn('first')
  }

  async turn(to: string): Promise<void> {
    const last = Math.max(0, Math.floor((this.#of - 1) / pageRows) * pageRows)
    const wanted: Readonly<Record<string, number>> = { first: 0, earlier: this.#from - pageRows, later: this.#from + pageRows, last }
    this.#from = Math.max(0, wanted[to] ?? 0)
    this.#drawing += 1
    const drawing = this.#drawing
    const page = await this.#client.rows(this.choice, this.#from, pageRows)
    // A slower answer to an earlier choice is out of date.
    if (drawing === this.#drawing) this.#draw(page)
  }

  #draw({ rows, of }: Rows): void {
    this.#of = of
    part(this.#root, 'tbody', HTMLElement).replaceChildren(drawn(rows.map((row) => rowMarkup(row).text).join('')))
    const to = this.#from + rows.length
    const words = of === 0 ? 'No row is like that.' : `Rows ${numberWords(this.#from + 1)} to ${numberWords(to)} of ${numberWords(of)}`
    part(this.#root, '[data-rows]', HTMLElement).textContent = words
    for (const head of this.#root.querySelectorAll<HTMLElement>('th[data-by]')) {
      if (head.dataset.by === this.#by) head.setAttribute('aria-sort', this.#down ? 'descending' : 'ascending')
      else head.removeAttribute('aria-sort')
    }
    for (const button of this.#root.querySelectorAll<HTMLButtonElement>('[data-turn]')) {
      const back = button.dataset.turn === 'first' || button.dataset.turn === 'earlier'
      // Not "disabled", which would lose the focus of the button just pressed.
      button.setAttribute('aria-disabled', String(back ? this.#from === 0 : to >= of))
    }
    part(this.#root, '.pages', HTMLElement).hidden = of <= pageRows
    part(this.#root, '[data-act="save-shown"]', HTMLElement).hidden = of === 0 || !this.#isFiltered()
  }

  #isFiltered(): boolean {
    const { kinds: shown, words, by, down } = this.choice
    return shown.length < kinds.length || words.trim() !== '' || by !== 'line' || down
  }
}
