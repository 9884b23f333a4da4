/** Keys of a board and of the remote controls that trainers hold; up and down scroll a long card. */
const moves: Readonly<Record<string, number>> = {
  ArrowRight: 1,
  PageDown: 1,
  ' ': 1,
  Enter: 1,
  ArrowLeft: -1,
  PageUp: -1,
  Backspace: -1,
  Home: Number.NEGATIVE_INFINITY,
  End: Number.POSITIVE_INFINITY,
}
/** A tap on this share of the board's width, from the left, goes back. */
const backShare = 1 / 3

/** A step as it stands on the page, for the board: without ids, which would stand twice. */
function copyOf(card: Element): Element {
  const copy = card.cloneNode(true) as Element
  copy.removeAttribute('id')
  copy.removeAttribute('data-card')
  for (const node of copy.querySelectorAll('[id]')) node.removeAttribute('id')
  for (const node of copy.querySelectorAll('.wire')) node.remove()
  return copy
}

/** The board view: the page's cards, one at a time in large type, by key or tap; Escape leaves it where the page is at that card. */
class BoardView extends HTMLElement {
  #at = 0

  connectedCallback(): void {
    const open = this.querySelector('[data-open]')
    const dialog = this.#dialog
    if (!(open instanceof HTMLButtonElement) || dialog === null) return
    open.hidden = false
    open.addEventListener('click', () => {
      dialog.showModal()
      this.#show(0)
    })
    dialog.addEventListener('keydown', (event) => this.#key(event))
    dialog.addEventListener('click', (event) => this.#tap(event, dialog))
    dialog.addEventListener('close', () => this.#left())
  }

  get #dialog(): HTMLDialogElement | null {
    return this.querySelector('dialog')
  }

  get #cards(): readonly Element[] {
    return [...document.querySelectorAll('[data-card]')]
  }

  #key(event: KeyboardEvent): void {
    const move = moves[event.key]
    if (move === undefined || event.ctrlKey || event.altKey || event.metaKey) return
    // Enter and space on a button do what the button says.
    if (event.target instanceof HTMLButtonElement && (event.key === ' ' || event.key === 'Enter')) return
    event.preventDefault()
    this.#show(this.#at + move)
  }

  #tap(event: MouseEvent, dialog: HTMLDialogElement): void {
    const target = event.target as Element
    const act = target.closest('[data-go]')?.getAttribute('data-go')
    if (act === 'leave') dialog.close()
    else if (act !== undefined && act !== null) this.#show(this.#at + Number(act))
    // A drag that marked some text is no tap.
    else if (target.closest('a, button') === null && getSelection()?.isCollapsed !== false) {
      this.#show(this.#at + (event.clientX < dialog.clientWidth * backShare ? -1 : 1))
    }
  }

  #show(wanted: number): void {
    const cards = this.#cards
    this.#at = Math.max(0, Math.min(cards.length - 1, wanted))
    const card = cards[this.#at]
    const stage = this.querySelector('[data-stage]')
    const count = this.querySelector('[data-count]')
    if (card === undefined || !(stage instanceof HTMLElement) || count === null) return
    stage.replaceChildren(copyOf(card))
    stage.scrollTop = 0
    stage.focus()
    count.textContent = `${this.#at + 1} of ${cards.length}`
    for (const [go, off] of [
      ['-1', this.#at === 0],
      ['1', this.#at === cards.length - 1],
    ] as const) {
      this.querySelector(`[data-go="${go}"]`)?.toggleAttribute('disabled', off)
    }
  }

  #left(): void {
    this.querySelector('[data-stage]')?.replaceChildren()
    const card = this.#cards[this.#at]
    card?.scrollIntoView({ block: 'start' })
  }
}

/** Makes the element known to the page, once. */
export function defineBoard(): void {
  if (customElements.get('board-view') === undefined) customElements.define('board-view', BoardView)
}
