import type { PlanAssumption } from '@strandwise/planner/job'
import { formatQuantity, parseQuantity, QuantityError } from '@strandwise/working/quantity'
import { type Answers, type AskedField, askedFields } from './answers.ts'
import { choiceWord } from './choiceWords.ts'
import { el } from './dom.ts'
import type { FormView } from './formView.ts'
import type { Problem, ReadJob } from './readJob.ts'
import { inUnits, type UnitSystem } from './units.ts'

const holderOf = (path: string): string => path.replace(/\.(low|high)$/, '')

/** What stands under each field: how it was read, or why it was not. */
export class FieldNotes {
  readonly #view: FormView
  /** Fields left at least once; nobody is corrected in the middle of a word. */
  readonly #left = new Set<string>()

  constructor(view: FormView) {
    this.#view = view
  }

  leave(path: string): void {
    this.#left.add(holderOf(path))
  }

  leaveAll(answers: Answers): void {
    for (const item of askedFields(answers)) this.#left.add(item.path)
  }

  forget(): void {
    this.#left.clear()
  }

  /** Problems that stand at their fields now. */
  show(read: ReadJob, answers: Answers, system: UnitSystem): readonly Problem[] {
    const byField = new Map(read.problems.map((problem) => [holderOf(problem.path), problem]))
    const shown: Problem[] = []
    for (const item of askedFields(answers)) {
      const problem = byField.get(item.path)
      const told = problem !== undefined && this.#left.has(item.path)
      if (told && problem !== undefined) shown.push(problem)
      this.#problem(item.path, told ? problem : undefined)
      this.#heard(item, read, answers, system)
    }
    return shown
  }

  #problem(path: string, problem: Problem | undefined): void {
    const note = document.getElementById(`ask-${path}-problem`)
    if (note === null) return
    const words = problem === undefined ? '' : `Read ${problem.read}. Allowed: ${problem.allowed}. For example ${problem.example}.`
    if (note.textContent !== words) note.textContent = words
    note.hidden = words === ''
    const field = note.closest('.ask')
    for (const control of field?.querySelectorAll('input, select') ?? []) {
      if (problem === undefined) control.removeAttribute('aria-invalid')
      else control.setAttribute('aria-invalid', 'true')
    }
    if (problem !== undefined) field?.closest('details')?.setAttribute('open', '')
  }

  #heard(item: AskedField, read: ReadJob, answers: Answers, system: UnitSystem): void {
    const note = document.getElementById(`ask-${item.path}-heard`)
    if (note === null) return
    const words = item.field.path === 'size' ? areaOf(answers, system) : heardWords(item, read, system)
    if (note.textContent !== words) note.textContent = words
    note.hidden = words === ''
    note.closest('.ask')?.toggleAttribute('data-answered', words !== '' || isAnswered(item, answers))
  }

  /** The assumptions of a plan, each under the group in which an answer would replace it. */
  assume(assumptions: readonly PlanAssumption[], system: UnitSystem): void {
    for (const place of this.#view.form.querySelectorAll<HTMLElement>('[data-assumed]')) {
      const here = assumptions.filter((item) => item.field.split('.')[0] === place.dataset.assumed)
      place.replaceChildren(...here.map((item) => this.#assumption(item, system)))
      place.hidden = here.length === 0
    }
  }

  #assumption(item: PlanAssumption, system: UnitSystem): HTMLElement {
    const control = this.#view.control(item.field)
    const ask = document.querySelector(`[data-ask="${CSS.escape(item.field)}"]`)
    const title =
      (ask?.querySelector('label, legend')?.firstChild?.textContent ?? '').trim() ||
      item.field
        .split('.')
        .at(-1)
        ?.replace(/([A-Z])/g, ' $1')
        .toLowerCase()
    const unit = ask?.querySelector('.unit')?.textContent ?? ''
    const value = typeof item.value === 'number' ? `${Number(item.value.toPrecision(3))}${unit === '' ? '' : ` ${unit}`}` : choiceWord(String(item.value))
    const line = el('li', {}, `Assumed: ${title}, ${inUnits(value, system)}. ${sentence(item.why)}`)
    if (item.changesVerdict === true) line.append(el('strong', {}, ' Known better, this could change the verdict.'))
    if (control !== null) line.append(' ', el('button', { type: 'button', 'data-goto': item.field }, 'Answer it'))
    return line
  }
}

const sentence = (text: string): string => `${text.slice(0, 1).toUpperCase()}${text.slice(1)}.`

const isAnswered = (item: AskedField, answers: Answers): boolean => (answers[item.path] ?? answers[`${item.path}.low`] ?? '').trim() !== ''

function heardWords(item: AskedField, read: ReadJob, system: UnitSystem): string {
  const names = item.field.shape === 'interval' ? [`${item.path}.low`, `${item.path}.high`] : [item.path]
  const numbers = names.flatMap((name) => read.heard[name] ?? [])
  return numbers.map((number) => formatQuantity(number.value, number.kind, { system })).join(' to ')
}

/** A wire's printed size as an area, where it says one by itself. */
function areaOf(answers: Answers, system: UnitSystem): string {
  const standard = answers['wire.standard'] ?? ''
  const size = (answers['wire.size'] ?? '').trim()
  if (size === '' || standard === 'SAE J1128') return ''
  const unit = standard === '' || standard === 'AWG' ? 'AWG' : 'mm²'
  for (const text of [size, `${size} ${unit}`]) {
    try {
      return formatQuantity(parseQuantity(text, 'areaMm2'), 'areaMm2', { system })
    } catch (error) {
      if (!(error instanceof QuantityError)) throw error
    }
  }
  return ''
}
