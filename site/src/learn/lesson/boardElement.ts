import { nextSetting } from './whatIfElement.ts'

/** Keys of keyboards and presentation remotes, each moving by one card. */
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
/** Arrow up and down move the slider. */
const slides: Readonly<Record<string, number>> = { ArrowUp: 1, ArrowDown: -1 }
/** A tap within this left share of the board's width goes back. */
const backShare = 1 / 4
const letters = 'ABCD'
/** Enlargements tried on a card, the largest first; a card that fits at none scrolls at its own size. */
const enlargements = [1.75, 1.6, 1.45, 1.3, 1.2, 1.1, 1] as const
const prefix = '#card='

/** One card: a part of a turn, with the turn's title. */
interface Card {
  readonly turn: Element
  readonly part: Element
  readonly kind: string
}

/** The board: one card at a time in large type, by key or tap; only the present card is visible and exposed to screen readers. */
class BoardView extends HTMLElement {
  #at = 0
  readonly #votes = new Map<Element, string>()

  connectedCallback(): void {
    const dialog = this.#dialog
    const open = this.querySelector('[data-open]')
    if (!(open instanceof HTMLButtonElement) || dialog === null) return
    open.hidden = false
    open.addEventListener('click', () => this.#open(0))
    dialog.addEventListener('keydown', (event) => this.#key(event, dialog))
    dialog.addEventListener('click', (event) => this.#tap(event, dialog))
    dialog.addEventListener('close', () => this.#left())
    addEventListener('resize', () => this.#fit())
    addEventListener('hashchange', () => this.#fromLink())
    this.#fromLink()
  }

  get #dialog(): HTMLDialogElement | null {
    return this.querySelector('dialog')
  }

  get #cards(): readonly Card[] {
    return [...document.querySelectorAll('[data-card]')].map((part) => ({
      part,
      turn: part.closest('.turn-item') ?? part,
      kind: part.getAttribute('data-card') ?? '',
    }))
  }

  #fromLink(): void {
    if (!location.hash.startsWith(prefix)) return
    const wanted = location.hash.slice(prefix.length)
    const count = this.#cards.length
    const there = /^\d+$/.test(wanted) && Number(wanted) >= 1 && Number(wanted) <= count
    const said = this.querySelector('[data-said]')
    if (said !== null) said.textContent = there ? '' : `There is no card “${wanted.slice(0, 20)}”: this lesson has cards 1 to ${count}.`
    if (there) this.#open(Number(wanted) - 1)
  }

  #open(at: number): void {
    if (this.#dialog?.open === false) this.#dialog.showModal()
    this.#show(at)
  }

  #key(event: KeyboardEvent, dialog: HTMLDialogElement): void {
    if (event.ctrlKey || event.altKey || event.metaKey) return
    // Enter and space activate a focused button; typing stays in its field.
    if (event.target instanceof HTMLButtonElement && (event.key === ' ' || event.key === 'Enter')) return
    if (event.target instanceof HTMLInputElement && event.target.type === 'text') return
    const move = moves[event.key]
    const slide = slides[event.key]
    const letter = event.key.toUpperCase()
    if (move !== undefined) this.#show(this.#at + move)
    else if (slide !== undefined) nextSetting(dialog, slide)
    else if (letters.includes(letter)) this.#vote(letter)
    else if (letter === 'F') this.#fill(dialog)
    else return
    event.preventDefault()
  }

  #tap(event: MouseEvent, dialog: HTMLDialogElement): void {
    const target = event.target as Element
    const act = target.closest('[data-go]')?.getAttribute('data-go')
    const vote = target.closest('[data-vote]')?.getAttribute('data-vote')
    if (act === 'leave') dialog.close()
    else if (act === 'fill') this.#fill(dialog)
    else if (act !== undefined && act !== null) this.#show(this.#at + Number(act))
    else if (vote !== undefined && vote !== null) this.#vote(vote)
    // Selecting text by dragging is no tap.
    else if (target.closest('a, button, input, label, .turn') === null && getSelection()?.isCollapsed !== false)
      this.#show(this.#at + (event.clientX < dialog.clientWidth * backShare ? -1 : 1))
  }

  /** Makes the dialog's content full-screen, as the dialog itself may not be. */
  #fill(dialog: HTMLDialogElement): void {
    if (document.fullscreenElement === null)
      dialog
        .querySelector('[data-screen]')
        ?.requestFullscreen()
        .catch(() => undefined)
    else void document.exitFullscreen()
  }

  /** Records the class's vote; the next card repeats it. */
  #vote(letter: string): void {
    const card = this.#cards[this.#at]
    if (card?.kind !== 'ask' || card.part.querySelectorAll('.options li').length <= letters.indexOf(letter)) return
    this.#votes.set(card.turn, letter)
    this.#marks(card)
  }

  #marks(card: Card): void {
    const vote = this.#votes.get(card.turn)
    for (const button of this.querySelectorAll('[data-vote]')) button.setAttribute('aria-pressed', String(button.getAttribute('data-vote') === vote))
  }

  #show(wanted: number): void {
    const cards = this.#cards
    this.#at = Math.max(0, Math.min(cards.length - 1, wanted))
    const card = cards[this.#at]
    const stage = this.querySelector('[data-stage]')
    const count = this.querySelector('[data-count]')
    if (card === undefined || !(stage instanceof HTMLElement) || count === null) return
    stage.replaceChildren(this.#copyOf(card))
    stage.dataset.kind = card.kind
    this.#fit()
    stage.scrollTop = 0
    stage.focus({ preventScroll: true })
    this.#marks(card)
    count.textContent = `${this.#at + 1} of ${cards.length}`
    for (const [go, off] of [
      ['-1', this.#at === 0],
      ['1', this.#at === cards.length - 1],
    ] as const) {
      this.querySelector(`[data-go="${go}"]`)?.toggleAttribute('disabled', off)
    }
    history.replaceState(null, '', `${prefix}${this.#at + 1}`)
  }

  /** Enlarges the card as far as the board has room; not under a slider, whose words change in length. */
  #fit(): void {
    const stage = this.querySelector('[data-stage]')
    if (!(stage instanceof HTMLElement)) return
    const tried = stage.querySelector('[data-part="move"]') === null ? enlargements : ([1] as const)
    stage.toggleAttribute('data-tight', false)
    const fits = tried.some((size) => {
      stage.style.setProperty('--fit', String(size))
      return stage.scrollHeight <= stage.clientHeight && stage.scrollWidth <= stage.clientWidth
    })
    // Many words: they take from the drawing's room.
    stage.toggleAttribute('data-tight', !fits)
  }

  /** Copy of a card for the board, without ids, which must stay unique. */
  #copyOf(card: Card): Element {
    const copy = document.createElement('div')
    copy.setAttribute('role', 'listitem')
    copy.className = 'card'
    const heading = document.createElement('h2')
    heading.textContent = card.turn.querySelector('h2')?.textContent?.trim() ?? ''
    copy.append(heading)
    const vote = this.#votes.get(card.turn)
    if (vote !== undefined && card.kind !== 'ask') {
      const said = document.createElement('p')
      said.className = 'voted'
      said.textContent = `The class said ${vote}.`
      copy.append(said)
    }
    const part = card.part.cloneNode(true) as Element
    part.removeAttribute('data-card')
    for (const node of part.querySelectorAll('[id]')) node.removeAttribute('id')
    for (const letter of part.querySelectorAll('.options .letter')) {
      const button = document.createElement('button')
      button.type = 'button'
      button.className = 'letter'
      button.dataset.vote = letter.textContent?.trim() ?? ''
      button.setAttribute('aria-label', `The class says ${button.dataset.vote}`)
      button.textContent = button.dataset.vote
      letter.replaceWith(button)
    }
    copy.append(part)
    return copy
  }

  #left(): void {
    this.querySelector('[data-stage]')?.replaceChildren()
    if (document.fullscreenElement !== null) void document.exitFullscreen()
    history.replaceState(null, '', location.pathname + location.search)
    this.#cards[this.#at]?.turn.scrollIntoView({ block: 'start' })
  }
}

/** Registers the custom element, once. */
export function defineBoard(): void {
  if (customElements.get('board-view') === undefined) customElements.define('board-view', BoardView)
}
