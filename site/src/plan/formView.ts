import { type Answers, askedFields, countOf, type PageGroup, unitOf } from './answers.ts'
import { part } from './dom.ts'
import { entryWord } from './formWords.ts'

type Control = HTMLInputElement | HTMLSelectElement
const isControl = (node: unknown): node is Control => node instanceof HTMLInputElement || node instanceof HTMLSelectElement

/** Reads and writes the form's answers, without interpreting them. */
export class FormView {
  readonly form: HTMLFormElement
  readonly groups: readonly PageGroup[]

  constructor(form: HTMLFormElement, groups: readonly PageGroup[]) {
    this.form = form
    this.groups = groups
  }

  get #listed(): readonly PageGroup[] {
    return this.groups.filter((group) => group.most !== undefined)
  }

  #controls(): readonly Control[] {
    return [...this.form.elements].filter(isControl).filter((control) => control.name !== '')
  }

  #list(group: PageGroup): HTMLElement {
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
    for (const group of this.#listed) answers[group.at] = String(this.#list(group).childElementCount)
    return answers
  }

  write(answers: Answers): void {
    for (const group of this.#listed) this.#setCount(group, countOf(answers, group))
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

  #setCount(group: PageGroup, count: number): void {
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

  /** The first control of a field, for focusing. */
  control(path: string): Control | null {
    const named = this.#controls().filter((control) => control.name === path || control.name === `${path}.low`)
    return named.find((control) => !(control instanceof HTMLInputElement) || control.type !== 'radio' || control.checked) ?? named[0] ?? null
  }

  goTo(path: string): void {
    const control = this.control(path) ?? this.form.querySelector<HTMLElement>(`[data-add="${path}"]`)
    for (let details = control?.closest('details'); details; details = details.parentElement?.closest('details')) details.open = true
    control?.focus()
    control?.closest('.ask')?.scrollIntoView({ block: 'center' })
  }

  /** Adapts the form to the answers: fields of another kind of tool are hidden, units and counts updated. */
  arrange(answers: Answers): void {
    const asked = askedFields(this.groups, answers)
    const shown = new Set(asked.map((item) => item.path))
    for (const field of this.form.querySelectorAll<HTMLElement>('[data-only]')) field.hidden = !shown.has(field.dataset.ask ?? '')
    for (const item of asked) {
      const unit = document.getElementById(`ask-${item.path}-unit`)
      if (unit?.hasAttribute('data-of-kind')) unit.textContent = unitOf(item, answers)
    }
    // A numeric keyboard is faster, but has no letters for another unit.
    const digits = answers.units !== 'inch' && answers.units !== 'both'
    const mode = digits ? 'decimal' : 'text'
    for (const input of this.form.querySelectorAll<HTMLInputElement>('input[data-digits]')) if (input.inputMode !== mode) input.inputMode = mode
    for (const group of this.#listed) {
      const add = this.form.querySelector<HTMLButtonElement>(`[data-add="${group.at}"]`)
      if (add !== null) add.disabled = countOf(answers, group) >= (group.most ?? 0)
    }
    for (const details of this.form.querySelectorAll('details')) countAnswered(details)
    for (const entry of this.form.querySelectorAll<HTMLElement>('.reading')) nameProbes(entry, answers)
  }
}

const given = (control: Element): boolean => {
  if (control instanceof HTMLInputElement && (control.type === 'radio' || control.type === 'checkbox')) return control.checked && control.value !== ''
  return isControl(control) && control.value.trim() !== ''
}

/** Shows the number of answers inside a collapsed section. */
function countAnswered(details: HTMLDetailsElement): void {
  const words = details.querySelector(':scope > summary .count')
  if (words === null) return
  const names = new Set([...details.querySelectorAll('[name]')].filter(given).map((control) => control.getAttribute('name')))
  words.textContent = names.size === 0 ? '' : `: ${names.size} answered`
}

/** Shows a reading's places in its heading. */
function nameProbes(entry: HTMLElement, answers: Answers): void {
  const holder = entry.dataset.holder ?? ''
  const word = (name: string) =>
    entry.querySelector(`[name="${holder}.${name}"] option[value="${CSS.escape(answers[`${holder}.${name}`] ?? '')}"]`)?.textContent ?? ''
  const [from, to] = [word('from'), word('to')]
  const between = part(entry, '[data-between]', HTMLElement)
  between.textContent = from === '' || to === '' ? '' : from === to ? `: at ${from}` : `: ${from} to ${to}`
}
