import type { WhatIfView } from './lesson.ts'

export interface WhatIfModule {
  readonly view: (setting: number, given: never) => WhatIfView
}

/** The slider: its models and its chart are loaded when it is first moved, and the page's own chart shows the start. */
export function defineWhatIf(load: () => Promise<WhatIfModule>): void {
  class WhatIfSlider extends HTMLElement {
    #asked = 0

    connectedCallback(): void {
      const slider = this.querySelector('input')
      if (slider === null) return
      slider.addEventListener('input', () => void this.#redraw(Number(slider.value)))
    }

    async #redraw(setting: number): Promise<void> {
      const asked = ++this.#asked
      const [{ view }, { lineChart }, { drawn }] = await Promise.all([load(), import('../../charts/lineChart.ts'), import('../../plan/dom.ts')])
      // A slow first load must not draw over a later setting.
      if (asked !== this.#asked) return
      const { spec, sentence } = view(setting, JSON.parse(this.dataset.given ?? 'null') as never)
      const chart = document.createElement('live-chart')
      chart.dataset.chart = JSON.stringify(spec)
      chart.append(drawn(lineChart(spec)))
      this.querySelector('live-chart')?.replaceWith(chart)
      const said = this.querySelector('output')
      if (said !== null) said.textContent = sentence
      const shown = this.querySelector('[data-setting]')
      if (shown !== null) shown.textContent = String(setting)
    }
  }
  if (customElements.get('what-if') === undefined) customElements.define('what-if', WhatIfSlider)
}
