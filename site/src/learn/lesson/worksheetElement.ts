import { readSeed, type Sheet, seedFragment, seedIn, seeds, sheetMarkup } from './worksheet.ts'

export interface SheetModule {
  readonly sheet: (seed: number) => Sheet
}

/** The worksheet: sheet 1 is in the page, others are made when one asks for them; the link carries the number. */
export function defineWorksheet(load: () => Promise<SheetModule>): void {
  class Worksheet extends HTMLElement {
    #seed: number = seeds.first

    connectedCallback(): void {
      this.querySelector('form')?.addEventListener('submit', (event) => {
        event.preventDefault()
        this.#typed()
      })
      this.querySelector('[data-next]')?.addEventListener('click', () => void this.#make(this.#seed === seeds.last ? seeds.first : this.#seed + 1))
      this.querySelector('[data-print]')?.addEventListener('click', () => this.#print())
      addEventListener('hashchange', () => void this.#fromLink())
      void this.#fromLink()
    }

    async #fromLink(): Promise<void> {
      const seed = seedIn(location.hash)
      if (seed !== null && seed !== this.#seed) await this.#make(seed)
    }

    #typed(): void {
      const field = this.querySelector('input')
      const said = this.querySelector('[data-said]')
      if (field === null || said === null) return
      const seed = readSeed(field.value)
      said.textContent =
        seed === null
          ? `Read: ${field.value.trim() === '' ? 'nothing' : `“${field.value.slice(0, 20)}”`}. Allowed: a whole number from ${seeds.first} to ${seeds.last}. For example: ${this.#seed + 1}.`
          : ''
      field.setAttribute('aria-invalid', String(seed === null))
      if (seed !== null) void this.#make(seed)
    }

    async #make(seed: number): Promise<void> {
      const { sheet } = await load()
      const markup = sheetMarkup(sheet(seed))
      this.#seed = seed
      for (const part of ['tasks', 'answers'] as const) {
        const place = this.querySelector(`[data-place="${part}"]`)
        if (place !== null) place.innerHTML = markup[part]
      }
      const field = this.querySelector('input')
      if (field !== null) {
        field.value = String(seed)
        field.setAttribute('aria-invalid', 'false')
      }
      const said = this.querySelector('[data-said]')
      if (said !== null) said.textContent = ''
      history.replaceState(null, '', seedFragment(seed))
    }

    /** Prints worksheet and answers alone, each on pages of its own. */
    #print(): void {
      document.documentElement.dataset.printing = 'sheet'
      addEventListener('afterprint', () => delete document.documentElement.dataset.printing, { once: true })
      print()
    }
  }
  if (customElements.get('work-sheet') === undefined) customElements.define('work-sheet', Worksheet)
}
