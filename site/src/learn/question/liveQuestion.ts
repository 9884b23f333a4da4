import { answerMarkup } from './answerMarkup.ts'
import { caseFromFragment, caseToFragment, isCaseFragment } from './caseLink.ts'
import { plainInputs } from './plainInputs.ts'
import { type Answer, type AskedField, type InputProblem, isProblem, markOf, type QuestionModel } from './question.ts'
import type { ReadInputs, Typed } from './readInputs.ts'

const problemText = (problem: InputProblem): string => `Read: ${problem.read}. Allowed: ${problem.allowed}. For example: ${problem.example}.`

/** Reads the form; the reader of quantities is loaded when bare numbers are not enough. */
async function read(fields: readonly AskedField[], typed: Typed): Promise<ReadInputs> {
  const inputs = plainInputs(fields, typed)
  return inputs === null ? (await import('./readInputs.ts')).readInputs(fields, typed) : { inputs, problems: [] }
}

/** A question that answers while one types. Loaded on first touch; until then the page shows its default case. */
export class LiveQuestion {
  readonly #root: HTMLElement
  readonly #model: QuestionModel<never>
  readonly #fields: readonly AskedField[]
  readonly #facts: never
  #asked = 0
  #answer: Answer | null = null
  /** The case shown in the open working; at first the default. */
  #worked: string

  constructor(root: HTMLElement, model: QuestionModel<never>) {
    const { fields, facts } = JSON.parse(root.dataset.question ?? '{}') as { fields: readonly AskedField[]; facts: never }
    this.#root = root
    this.#model = model
    this.#fields = fields
    this.#facts = facts
    this.#worked = caseToFragment(fields, Object.fromEntries(fields.map((field) => [field.id, field.typed])))
  }

  /** Answers the typed inputs; an unusable field keeps the last answer and marks it as old. */
  async ask(): Promise<void> {
    this.#asked += 1
    const asked = this.#asked
    const typed = this.#typed()
    const { inputs, problems } = await read(this.#fields, typed)
    // A later entry has its own answer.
    if (asked !== this.#asked) return
    const outcome = problems.length > 0 ? null : this.#model.answer(inputs, this.#facts)
    const found = outcome !== null && isProblem(outcome) ? [outcome] : problems
    this.#showProblems(found)
    this.#root.toggleAttribute('data-old', found.length > 0)
    if (outcome === null || isProblem(outcome)) return
    this.#answer = outcome
    this.#showAnswer(outcome)
    history.replaceState(null, '', `#${caseToFragment(this.#fields, typed)}`)
    await this.work()
  }

  /** The working of the present answer, where it is open and not shown yet. */
  async work(): Promise<void> {
    const details = this.#root.querySelector('details[data-working]')
    const place = details?.querySelector('[data-workings]') ?? null
    const wanted = caseToFragment(this.#fields, this.#typed())
    const stale = this.#root.hasAttribute('data-old') || this.#worked === wanted
    if (!(details instanceof HTMLDetailsElement) || !details.open || this.#answer === null || stale || place === null) return
    const { workings } = this.#answer
    this.#worked = wanted
    const { workingsMarkup } = await import('./workingsMarkup.ts')
    // If typing continued during the load, the later call draws.
    if (this.#worked === wanted) place.innerHTML = workingsMarkup(workings)
  }

  /** Loads the case of a link; an unusable link changes nothing and shows why. */
  async openLink(): Promise<void> {
    const fragment = location.hash.slice(1)
    const said = this.#root.querySelector('[data-said]')
    if (!isCaseFragment(fragment) || fragment === caseToFragment(this.#fields, this.#typed())) return
    const typed = caseFromFragment(this.#fields, fragment)
    const problem = typeof typed === 'string' ? typed : await this.#unusable(typed)
    if (said !== null) said.textContent = problem === null ? '' : `This link can’t be used: ${problem}. The case below is as it was.`
    if (problem !== null || typeof typed === 'string') return
    this.#fill(typed)
    await this.ask()
  }

  async copy(): Promise<void> {
    const address = new URL(location.href)
    address.hash = caseToFragment(this.#fields, this.#typed())
    const field = this.#root.querySelector('[data-link]')
    if (!(field instanceof HTMLInputElement)) return
    field.value = address.href
    field.hidden = false
    field.focus()
    field.select()
    const said = this.#root.querySelector('[data-copied]')
    await navigator.clipboard?.writeText(address.href).then(
      () => said?.replaceChildren('The link is copied.'),
      // If the clipboard is not accessible, the link stays selected.
      () => undefined,
    )
  }

  #typed(): Typed {
    const form = this.#root.querySelector('form')
    const data = form === null ? new FormData() : new FormData(form)
    return Object.fromEntries(this.#fields.map((field) => [field.id, data.getAll(field.id).map(String).join(',')]))
  }

  #showProblems(problems: readonly InputProblem[]): void {
    for (const field of this.#fields) {
      const problem = problems.find((item) => item.field === field.id)
      const place = this.#root.querySelector(`#${field.id}-problem`)
      if (place !== null) place.textContent = problem === undefined ? '' : problemText(problem)
      for (const input of this.#root.querySelectorAll(`[name="${field.id}"]`)) {
        if (problem === undefined) input.removeAttribute('aria-invalid')
        else input.setAttribute('aria-invalid', 'true')
      }
    }
    const old = this.#root.querySelector('[data-old-words]')
    if (old !== null) old.textContent = problems.length === 0 ? '' : 'The answer above is old: an entry below can’t be used.'
  }

  #showAnswer(answer: Answer): void {
    const bar = this.#root.querySelector('[data-bar]')
    if (bar !== null) bar.textContent = answer.parts[0]?.sentence ?? ''
    for (const place of this.#root.querySelectorAll('[data-part]'))
      place.toggleAttribute('hidden', !answer.parts.some((part) => part.id === place.getAttribute('data-part')))
    for (const part of answer.parts) {
      const place = this.#root.querySelector(`[data-part="${part.id}"]`)
      if (!(place instanceof HTMLElement)) continue
      place.dataset.verdict = markOf(part)
      const words = place.querySelector('[data-answer]')
      if (words !== null) words.innerHTML = answerMarkup(part)
      for (const mark of place.querySelectorAll('[data-mark]')) mark.toggleAttribute('hidden', mark.getAttribute('data-mark') !== markOf(part))
    }
  }

  async #unusable(typed: Typed): Promise<string | null> {
    const { inputs, problems } = await read(this.#fields, typed)
    const outcome = problems.length > 0 ? null : this.#model.answer(inputs, this.#facts)
    const problem = outcome !== null && isProblem(outcome) ? outcome : problems[0]
    return problem === undefined ? null : `${this.#fields.find((field) => field.id === problem.field)?.title ?? problem.field}, ${problem.read}`
  }

  #fill(typed: Typed): void {
    for (const field of this.#fields) {
      const text = typed[field.id] ?? ''
      const words = text.split(',')
      for (const input of this.#root.querySelectorAll(`[name="${field.id}"]`)) {
        if (input instanceof HTMLInputElement && input.type === 'checkbox') input.checked = words.includes(input.value)
        else if (input instanceof HTMLInputElement || input instanceof HTMLSelectElement) input.value = text
      }
    }
  }
}
