import type { WhatIf } from './whatIf.ts'

type Load = (lesson: string) => Promise<WhatIf>

/** Prediction and slider position, shared by page and board. */
const state: { predicted: number | null; setting: number | null } = { predicted: null, setting: null }

/** Moves the slider within `root` by so many steps, as its keys do; false without a slider. */
export function nextSetting(root: ParentNode, steps: number): boolean {
  const slider = root.querySelector('what-if input[type="range"]')
  if (!(slider instanceof HTMLInputElement)) return false
  if (steps > 0) slider.stepUp(steps)
  else slider.stepDown(-steps)
  slider.dispatchEvent(new Event('input', { bubbles: true }))
  return true
}

/** Registers the two sliders, for the prediction and for the setting with its curve and picture. Models and chart are loaded on first use. */
export function defineWhatIf(load: Load): void {
  class WhatIfSlider extends HTMLElement {
    #asked = 0

    connectedCallback(): void {
      const { slider, field } = this
      if (slider === null) return
      const known = this.#predicts ? state.predicted : state.setting
      if (known !== null) slider.value = String(known)
      slider.addEventListener('input', () => void this.#moved(Number(slider.value)))
      field?.addEventListener('change', () => void this.#typed(field.value))
      if (known !== null || (!this.#predicts && state.predicted !== null)) void this.#moved(Number(slider.value))
    }

    get slider(): HTMLInputElement | null {
      return this.querySelector('input[type="range"]')
    }

    get field(): HTMLInputElement | null {
      return this.querySelector('input[type="text"]')
    }

    get #predicts(): boolean {
      return this.dataset.part === 'predict'
    }

    async #typed(text: string): Promise<void> {
      const [whatIf, { readSetting }] = await Promise.all([load(this.dataset.lesson ?? ''), import('./whatIf.ts')])
      const read = readSetting(this.#predicts ? whatIf.result : whatIf.setting, text)
      const said = this.querySelector('[data-said]')
      if (said !== null) said.textContent = 'said' in read ? read.said : ''
      this.field?.setAttribute('aria-invalid', String('said' in read))
      if ('said' in read || this.slider === null) return
      this.slider.value = String(read.value)
      await this.#moved(read.value)
    }

    async #moved(value: number): Promise<void> {
      if (this.#predicts) state.predicted = value
      else state.setting = value
      const asked = ++this.#asked
      const [whatIf, { onScale, whatIfChart }, { lineChart }, { drawn }] = await Promise.all([
        load(this.dataset.lesson ?? ''),
        import('./whatIf.ts'),
        import('../../charts/lineChart.ts'),
        import('../../plan/dom.ts'),
      ])
      // A slow first load must not overwrite a later setting.
      if (asked !== this.#asked) return
      const shown = this.querySelector('[data-setting]')
      if (shown !== null) shown.textContent = onScale(this.#predicts ? whatIf.result : whatIf.setting, value)
      if (this.field !== null && document.activeElement !== this.field) this.field.value = String(value)
      const chart = this.querySelector('[data-chart]')
      const picture = this.querySelector('[data-picture]')
      const said = this.querySelector('output')
      if (chart === null || picture === null || said === null) return
      chart.replaceChildren(drawn(lineChart(whatIfChart(whatIf, value, state.predicted))))
      picture.replaceChildren(drawn(whatIf.picture(value).svg))
      said.textContent = whatIf.says(value)
    }
  }
  if (customElements.get('what-if') === undefined) customElements.define('what-if', WhatIfSlider)
}
