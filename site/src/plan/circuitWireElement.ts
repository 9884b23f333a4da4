import type { Answers } from './answers.ts'

export interface Probes {
  readonly from: string
  readonly to: string
}

const namespace = 'http://www.w3.org/2000/svg'
/** Width of a lane; readings are drawn in lanes side by side. */
const laneWidth = 76
const lanes = 2

/** The circuit as one line: tapping two places adds a reading; each reading is two marks with its value between them. */
export class CircuitWireElement extends HTMLElement {
  #first: string | null = null

  connectedCallback(): void {
    this.addEventListener('click', ({ target }) => {
      const place = target instanceof Element ? target.closest<HTMLElement>('[data-place]')?.dataset.place : undefined
      if (place !== undefined) this.#tap(place)
    })
    this.addEventListener('keydown', (event) => {
      if (event.key === 'Escape') this.#mark(null)
    })
  }

  #buttons(): readonly HTMLButtonElement[] {
    return [...this.querySelectorAll<HTMLButtonElement>('[data-place]')]
  }

  #mark(first: string | null): void {
    this.#first = first
    for (const button of this.#buttons()) button.setAttribute('aria-pressed', String(button.dataset.place === first))
    this.dispatchEvent(new CustomEvent('probing', { bubbles: true, detail: first }))
  }

  #tap(place: string): void {
    if (this.#first === null) {
      this.#mark(place)
      return
    }
    const order = this.#buttons().map((button) => button.dataset.place)
    const [from, to] = order.indexOf(this.#first) <= order.indexOf(place) ? [this.#first, place] : [place, this.#first]
    this.#mark(null)
    this.dispatchEvent(new CustomEvent<Probes>('probes', { bubbles: true, detail: { from, to } }))
  }

  /** Draws the readings beside their places. */
  draw(answers: Answers, units: readonly string[]): void {
    const marks = this.querySelector('[data-marks]')
    const first = this.#buttons()[0]
    if (marks === null || first === undefined) return
    const middle = new Map(this.#buttons().map((button) => [button.dataset.place ?? '', button.offsetTop + button.offsetHeight / 2]))
    const count = Number(answers.readings ?? 0)
    marks.replaceChildren(
      ...Array.from({ length: count }, (_, index) => {
        const at = (name: string) => middle.get(answers[`readings.${index}.${name}`] ?? '')
        const [y1, y2] = [at('from'), at('to')]
        if (y1 === undefined || y2 === undefined) return []
        const text = (answers[`readings.${index}.value`] ?? '').trim()
        const unit = units[index] ?? ''
        return reading(y1, y2, 6 + (index % lanes) * laneWidth, text === '' ? '…' : /[a-zΩ°]/i.test(text) ? text : `${text} ${unit}`.trim())
      }).flat(),
    )
  }
}

function shape(name: string, attributes: Readonly<Record<string, string | number>>, text = ''): SVGElement {
  const node = document.createElementNS(namespace, name)
  for (const [key, value] of Object.entries(attributes)) node.setAttribute(key, String(value))
  node.textContent = text
  return node
}

function reading(y1: number, y2: number, x: number, words: string): readonly SVGElement[] {
  return [
    shape('path', { class: 'bracket', d: `M${x} ${y1}H${x + 8}V${y2}H${x}` }),
    shape('circle', { class: 'mark', cx: x, cy: y1, r: 3.5 }),
    shape('circle', { class: 'mark', cx: x, cy: y2, r: 3.5 }),
    shape('text', { class: 'label', x: x + 13, y: (y1 + y2) / 2 + 5 }, words.slice(0, 12)),
  ]
}
