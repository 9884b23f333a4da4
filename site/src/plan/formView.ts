import { type FormGroup, jobForm } from '@strandwise/planner/job'
import { type Answers, askedFields, countOf, isBlank, pathIn } from './answers.ts'
import { part } from './dom.ts'
import { entryWord, inTheOpen } from './formWords.ts'
import { readAs } from './readJob.ts'
import { unitSystem } from './units.ts'

type Control = HTMLInputElement | HTMLSelectElement
const isControl = (node: unknown): node is Control => node instanceof HTMLInputElement || node instanceof HTMLSelectElement

const listed = jobForm.filter((group) => group.most !== undefined)

/** The form on the page: its answers out of it and into it. What they mean is not its business. */
export class FormView {
  readonly form: HTMLFormElement

  constructor(form: HTMLFormElement) {
    this.form = form
  }

  #controls(): readonly Control[] {
    return [...this.form.elements].filter(isControl).filter((control) => control.name !== '')
  }

  #list(group: FormGroup): HTMLElement {
    return part(this.form, `[data-list="${group.at}"]`, HTMLElement)
  }

  read(): Answers {
    const answers: Record<string, string> = {}
    for (const control of this.#controls()) {
      const ticked = control instanceof HTMLInputElement && (control.type === 'radio' || control.type === 'checkbox')
      if (ticked && !control.checked) continue
      const before = answers[control.name]
      answers[control.name] = ticked && control.type === 'checkbox' && before !== undefined ? `${before},${control.value}` : control.value
    }
    for (const group of listed) answers[group.at] = String(this.#list(group).childElementCount)
    return answers
  }

  write(answers: Answers): void {
    for (const group of listed) this.#setCount(group, countOf(answers, group))
    for (const control of this.#controls()) {
      const text = answers[control.name] ?? ''
      if (control instanceof HTMLInputElement && control.type === 'radio') control.checked = control.value === text
      else if (control instanceof HTMLInputElement && control.type === 'checkbox') control.checked = text.split(',').includes(control.value)
      else control.value = text
    }
    const units = this.control('units')
    if (answers.units === undefined && units instanceof HTMLInputElement) units.checked = true
    this.arrange(this.read())
  }

  #setCount(group: FormGroup, count: number): void {
    const holder = this.#list(group)
    while (holder.childElementCount > count) holder.lastElementChild?.remove()
    const template = part(this.form, `template[data-entry="${group.at}"]`, HTMLTemplateElement)
    while (holder.childElementCount < count) {
      const entry = document.importNode(template.content, true)
      const index = String(holder.childElementCount)
      for (const node of entry.querySelectorAll('*')) {
        for (const attribute of node.attributes) attribute.value = attribute.value.replaceAll('#', index)
      }
      part(entry, '[data-number]', HTMLElement).textContent = String(holder.childElementCount + 1)
      part(entry, '[data-remove]', HTMLElement).textContent = `Take out ${entryWord(group)} ${holder.childElementCount + 1}`
      holder.append(entry)
    }
  }

  /** The first control of a field, to be focused. */
  control(path: string): Control | null {
    const named = this.#controls().filter((control) => control.name === path || control.name === `${path}.low`)
    return named.find((control) => !(control instanceof HTMLInputElement) || control.type !== 'radio' || control.checked) ?? named[0] ?? null
  }

  goTo(path: string): void {
    const control = this.control(path) ?? this.form.querySelector<HTMLElement>(`[data-add="${path}"]`)
    control?.closest('details')?.setAttribute('open', '')
    control?.focus()
    control?.closest('.ask')?.scrollIntoView({ block: 'center' })
  }

  /** What follows from the answers for the form itself: fields of the other kind of tool go, units and counts are set. */
  arrange(answers: Answers): void {
    const asked = askedFields(answers)
    const shown = new Set(asked.map((item) => item.path))
    for (const field of this.form.querySelectorAll<HTMLElement>('[data-only]')) field.hidden = !shown.has(field.dataset.ask ?? '')
    for (const item of asked) {
      const unit = document.getElementById(`ask-${item.path}-unit`)
      if (unit?.hasAttribute('data-of-kind')) unit.textContent = readAs(item, answers)?.unit ?? ''
    }
    // Digits alone are quicker to tap, but hold no letters for another unit.
    const digits = unitSystem(answers.units) === 'metric'
    const mode = digits ? 'decimal' : 'text'
    for (const input of this.form.querySelectorAll<HTMLInputElement>('input[data-digits]')) if (input.inputMode !== mode) input.inputMode = mode
    for (const group of listed) {
      const add = this.form.querySelector<HTMLButtonElement>(`[data-add="${group.at}"]`)
      if (add !== null) add.disabled = countOf(answers, group) >= (group.most ?? 0)
    }
    for (const group of jobForm) {
      const holders = group.most === undefined ? [group.at] : Array.from({ length: countOf(answers, group) }, (_, index) => `${group.at}.${index}`)
      for (const holder of holders) this.#countAnswered(group, holder, answers)
    }
  }

  #countAnswered(group: FormGroup, holder: string, answers: Answers): void {
    const kind = answers[pathIn(holder, 'kind')]
    const more = group.fields.filter((field) => !inTheOpen(group, field) && (field.onlyOf === undefined || field.onlyOf === kind))
    const first = more[0]
    if (first === undefined) return
    const count = more.filter((field) => !isBlank(answers, field, pathIn(holder, field.path))).length
    const details = this.form.querySelector(`[data-ask="${pathIn(holder, first.path)}"]`)?.closest('details')
    const words = details?.querySelector('[data-answered]')
    if (words) words.textContent = count === 0 ? '' : `: ${count} answered`
    const all = details?.querySelector('[data-count]')
    if (all && group.kinds.length > 0) all.textContent = `${more.length} more`
  }
}
