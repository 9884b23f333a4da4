import { type Answers, askedFields } from './answers.ts'
import type { FormView } from './formView.ts'
import type { NotedProblem, PlanReply } from './planService.ts'

const holderOf = (path: string): string => path.replace(/\.(low|high)$/, '')

/** Notes under the fields: how an answer was read, or why it was refused. */
export class FieldNotes {
  readonly #view: FormView
  /** Fields left at least once; corrections are not shown while typing. */
  readonly #left = new Set<string>()

  constructor(view: FormView) {
    this.#view = view
  }

  leave(path: string): void {
    this.#left.add(holderOf(path))
  }

  leaveAll(answers: Answers): void {
    for (const item of askedFields(this.#view.groups, answers)) this.#left.add(item.path)
  }

  forget(): void {
    this.#left.clear()
  }

  show(reply: Pick<PlanReply, 'heard' | 'problems'>, answers: Answers): void {
    const byField = new Map(reply.problems.map((problem) => [holderOf(problem.path), problem]))
    for (const { path } of askedFields(this.#view.groups, answers)) {
      const problem = byField.get(path)
      this.#problem(path, this.#left.has(path) ? problem : undefined)
      this.#heard(path, reply.heard[path] ?? '')
    }
  }

  #problem(path: string, problem: NotedProblem | undefined): void {
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
    if (problem === undefined) return
    for (let details = field?.closest('details'); details; details = details.parentElement?.closest('details')) details.open = true
  }

  #heard(path: string, words: string): void {
    const note = document.getElementById(`ask-${path}-heard`)
    if (note === null) return
    if (note.textContent !== words) note.textContent = words
    note.hidden = words === ''
  }

  /** Shows assumptions under the groups whose answers would replace them. */
  assume(assumed: Readonly<Record<string, string>>): void {
    for (const place of this.#view.form.querySelectorAll<HTMLElement>('[data-assumed]')) {
      const markup = assumed[place.dataset.assumed ?? ''] ?? ''
      if (place.innerHTML !== markup) place.innerHTML = markup
      place.hidden = markup === ''
    }
  }
}
