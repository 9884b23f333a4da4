import type { ChartSpec } from './chartSpec.ts'

/**
 * A figure that shows its SVG until touched, then loads the live chart and draws it from the same numbers.
 * The element holds its numbers in `data-chart` as JSON, or gets them through `spec`.
 */
class LiveChart extends HTMLElement {
  #stop = new AbortController()
  #awake: { destroy(): void } | null = null

  connectedCallback(): void {
    this.#stop = new AbortController()
    const wake = () => void this.#wake()
    for (const event of ['pointerdown', 'focusin', 'keydown']) this.addEventListener(event, wake, { signal: this.#stop.signal, once: true })
  }

  disconnectedCallback(): void {
    this.#stop.abort()
    this.#awake?.destroy()
    this.#awake = null
  }

  async #wake(): Promise<void> {
    if (this.#awake !== null) return
    const spec = JSON.parse(this.dataset.chart ?? 'null') as ChartSpec | null
    const drawing = this.querySelector('svg')
    if (spec === null || drawing === null) return
    const { drawLive } = await import('./drawLive.ts')
    this.#awake = drawLive(drawing, spec)
  }
}

/** Registers the custom element, once. */
export function defineLiveChart(): void {
  if (customElements.get('live-chart') === undefined) customElements.define('live-chart', LiveChart)
}
