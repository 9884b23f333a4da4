import { codeOf, forms, judge, makeSheet, readCode, type Sheets, seeds, sheetMarkup } from './sheets.ts'

type Load = (lesson: string) => Promise<Sheets>

/** Prefix of the code in a link's fragment. */
const prefix = '#code='

/** Text of a link; one with a broken escape is read as it stands, and then refused as a code. */
function unescaped(text: string): string {
  try {
    return decodeURIComponent(text)
  } catch {
    return text
  }
}

/** The sheets of a lesson: number 1 is in the page, others are generated from a code, which the link carries. */
export function defineSheets(load: Load): void {
  class LessonSheets extends HTMLElement {
    #seed: number = seeds.first

    connectedCallback(): void {
      this.querySelector('form')?.addEventListener('submit', (event) => {
        event.preventDefault()
        void this.#read(this.querySelector('input')?.value ?? '')
      })
      this.querySelector('[data-next]')?.addEventListener('click', () => void this.#make(this.#seed === seeds.last ? seeds.first : this.#seed + 1))
      for (const button of this.querySelectorAll('[data-print]'))
        button.addEventListener('click', () => this.#print(button.getAttribute('data-print') ?? 'all'))
      this.addEventListener('change', (event) => void this.#judge(event.target))
      addEventListener('hashchange', () => this.#fromLink())
      this.#addJudges()
      this.#fromLink()
    }

    get #number(): number {
      return Number(this.dataset.number)
    }

    #say(words: string): void {
      const said = this.querySelector('[data-said]')
      if (said !== null) said.textContent = words
      this.querySelector('form input')?.setAttribute('aria-invalid', String(words !== ''))
    }

    #fromLink(): void {
      if (location.hash.startsWith(prefix)) void this.#read(unescaped(location.hash.slice(prefix.length)))
    }

    async #read(text: string): Promise<void> {
      const found = readCode(text, this.#number)
      if ('said' in found) this.#say(`${found.said} The sheets below are as they were.`)
      else await this.#make(found.seed)
    }

    async #make(seed: number): Promise<void> {
      const sheets = await load(this.dataset.lesson ?? '')
      for (const form of forms)
        for (const answers of [false, true]) {
          const place = this.querySelector(`[data-place="${form}-${answers}"]`)
          if (place !== null) place.innerHTML = sheetMarkup(makeSheet(sheets, this.#number, form, seed), answers)
        }
      this.#seed = seed
      this.#say('')
      const field = this.querySelector('input')
      if (field !== null) field.value = codeOf(this.#number, 'A', seed)
      this.#addJudges()
      history.replaceState(null, '', `${prefix}${codeOf(this.#number, 'A', seed)}`)
    }

    /** Adds a field beside each answer that marks a pupil's result. */
    #addJudges(): void {
      for (const task of this.querySelectorAll('[data-task]')) {
        const label = document.createElement('label')
        label.className = 'judge'
        const field = document.createElement('input')
        field.type = 'text'
        field.inputMode = 'decimal'
        field.autocomplete = 'off'
        const said = document.createElement('output')
        label.append('A pupil’s result ', field, said)
        task.append(label)
      }
    }

    async #judge(target: EventTarget | null): Promise<void> {
      const item = target instanceof HTMLInputElement ? target.closest('[data-task]') : null
      if (item === null || !(target instanceof HTMLInputElement)) return
      const [form = '', problem = '', task = ''] = item.getAttribute('data-task')?.split('-') ?? []
      const known = forms.find((one) => one === form)
      if (known === undefined) return
      const sheet = makeSheet(await load(this.dataset.lesson ?? ''), this.#number, known, this.#seed)
      const found = sheet.problems[Number(problem)]?.tasks[Number(task)]
      const said = item.querySelector('output')
      if (found !== undefined && said !== null) said.textContent = judge(found, target.value).says
    }

    /** Prints sheets, answers or both, each on its own page. */
    #print(which: string): void {
      document.documentElement.dataset.printing = which
      addEventListener('afterprint', () => delete document.documentElement.dataset.printing, { once: true })
      print()
    }
  }
  if (customElements.get('lesson-sheets') === undefined) customElements.define('lesson-sheets', LessonSheets)
}
