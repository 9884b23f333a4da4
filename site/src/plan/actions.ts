import type { Answers } from './answers.ts'
import { part } from './dom.ts'
import { isJobFragment } from './jobFragment.ts'
import { type PlanClient, Refused } from './planClient.ts'
import { ProofActions } from './proofActions.ts'
import { SavedWork } from './savedWork.ts'
import { saveText } from './saveText.ts'
import { type View, Views } from './views.ts'
import type { Workbench } from './workbench.ts'

/** Actions of the buttons: example, undo, keep, open, save, share, print. */
export class Actions {
  readonly #root: HTMLElement
  readonly #bench: Workbench
  readonly #client: PlanClient
  readonly #saved: SavedWork
  readonly #said: HTMLElement
  readonly #file: HTMLInputElement
  readonly #proof: ProofActions
  readonly #views: Views

  constructor(root: HTMLElement, bench: Workbench, client: PlanClient) {
    this.#root = root
    this.#bench = bench
    this.#client = client
    this.#saved = new SavedWork(bench.form.groups)
    this.#said = part(root, '[data-said]', HTMLElement)
    this.#file = part(root, '#file', HTMLInputElement)
    this.#proof = new ProofActions(root, bench, client)
    this.#views = new Views(root)
  }

  start(signal: AbortSignal): void {
    const left = this.#saved.read()
    if (left !== null) void this.#bench.fill(left)
    this.#views.start(signal, left !== null)
    void this.#openLink()
    this.#bench.onChange = (answers) => {
      this.#say('')
      this.#hideLink()
      // The link in the address no longer matches this job.
      if (isJobFragment(location.hash.slice(1))) history.replaceState(history.state, '', location.pathname + location.search)
      this.#save(answers)
      this.#buttons()
    }
    // Half-typed text is saved too, at each key.
    this.#root.addEventListener('input', () => this.#save(this.#bench.answers), { signal })
    this.#file.addEventListener('change', () => void this.#openFile(), { signal })
    // A step between the page's own views opens no link again.
    window.addEventListener('hashchange', () => history.state === null && void this.#openLink(), { signal })
    this.#buttons()
  }

  act(name: string): void {
    const bench = this.#bench
    if (name === 'undo' && bench.canUndo) bench.undo()
    if (name === 'redo' && bench.canRedo) bench.redo()
    if (name === 'example') void this.#example()
    if (name === 'forget') this.#forget()
    if (name === 'keep-this') this.#keepThis()
    if (name === 'back-to-mine') this.#backToMine()
    if (name === 'open') this.#file.click()
    if (name === 'print') window.print()
    if (name === 'save') void this.#saveFile()
    if (name === 'link') void this.#link()
    this.#proof.act(name)
    if (name === 'see-plan') this.show('plan')
    if (name === 'see-answers') this.show('answers')
    this.#buttons()
  }

  /** On a phone, plan and answers are separate views; a wide window shows both. */
  show(view: View): void {
    this.#views.show(view)
  }

  /** After Enter in a field: the button to the plan comes next, if nothing is missing and the person has not gone elsewhere. */
  offerPlan(field: HTMLElement): void {
    if (this.#bench.missing.length === 0 && document.activeElement === field) part(this.#root, '[data-act="see-plan"]', HTMLButtonElement).focus()
  }

  async #example(): Promise<void> {
    const answers = await this.#client.ask({ ask: 'example', name: part(this.#root, '#example', HTMLSelectElement).value })
    if (answers !== null) this.#take(answers)
    this.#buttons()
  }

  #take(answers: Answers): void {
    const { units } = this.#bench.answers
    void this.#bench.fill(units === undefined || answers.units !== undefined ? answers : { ...answers, units })
    this.#bench.onChange(this.#bench.answers)
  }

  #buttons(): void {
    const able = { undo: this.#bench.canUndo, redo: this.#bench.canRedo }
    for (const [name, can] of Object.entries(able)) {
      const button = part(this.#root, `[data-act="${name}"]`, HTMLButtonElement)
      // Disabling the focused button would lose the focus.
      if (!can && document.activeElement === button) part(this.#root, '[data-act="example"]', HTMLButtonElement).focus()
      button.disabled = !can
    }
  }

  /** Shows a message; trouble is marked as such. */
  #say(words: string, trouble = true): void {
    this.#said.textContent = words
    this.#said.hidden = words === ''
    this.#said.toggleAttribute('data-trouble', trouble)
    if (words !== '' && trouble) this.#said.scrollIntoView({ block: 'nearest' })
  }

  #save(answers: Answers): void {
    if (!this.#saved.save(answers)) this.#say('This browser keeps nothing. Save the job as a file instead.')
  }

  #forget(): void {
    this.#take({})
    this.#saved.forget()
    this.#lent()
    this.show('answers')
    this.#say('Your answers are forgotten. Until you close this page, “Undo” brings them back.', false)
  }

  #keepThis(): void {
    this.#saved.own()
    this.#save(this.#bench.answers)
    this.#lent()
    this.#say('')
  }

  #backToMine(): void {
    const kept = this.#saved.kept() ?? {}
    this.#saved.own()
    this.#take(kept)
    this.#lent()
  }

  /** A job from a link while other work is kept: the person chooses which to keep. */
  #lent(): void {
    part(this.#root, '[data-borrowed]', HTMLElement).hidden = !this.#saved.borrowed
  }

  /** Asks the worker; a refusal is shown and changes nothing. */
  async #refusing(asked: Promise<Answers | null>, use: (answers: Answers) => void): Promise<void> {
    try {
      const answers = await asked
      if (answers === null) return
      this.#say('')
      use(answers)
    } catch (error) {
      if (!(error instanceof Refused)) throw error
      this.#say(`${error.message} Your answers here are as they were.`)
    }
  }

  /** Opens the link's job in place of the answers, with undo; an unusable link changes nothing. */
  async #openLink(): Promise<void> {
    const fragment = location.hash.slice(1)
    if (!isJobFragment(fragment)) return
    await this.#refusing(this.#client.ask({ ask: 'fragment', fragment }), (answers) => {
      void this.#bench.fill(answers)
      this.#saved.borrow(this.#bench.answers)
      this.#views.begin('plan')
    })
    this.#lent()
    this.#buttons()
  }

  async #openFile(): Promise<void> {
    const file = this.#file.files?.[0]
    // Cleared so that the same file can be chosen again after a correction.
    this.#file.value = ''
    if (file === undefined) return
    await this.#refusing(this.#client.ask({ ask: 'file', text: await file.text() }), (answers) => this.#take(answers))
  }

  #hideLink(): void {
    part(this.#root, '[data-link]', HTMLElement).hidden = true
  }

  #notYet(): void {
    const title = this.#bench.missing[0]?.title
    this.#say(`There is no whole job yet: ${title === undefined ? 'an answer can’t be used' : `${title} is missing`}.`)
  }

  async #saveFile(): Promise<void> {
    const job = await this.#client.ask({ ask: 'job', answers: this.#bench.answers })
    if (job === null) this.#notYet()
    else saveText(job.text, job.title, { ending: 'json', type: 'application/json', name: 'repair-job' })
  }

  async #link(): Promise<void> {
    try {
      const fragment = await this.#client.ask({ ask: 'link', answers: this.#bench.answers })
      if (fragment === null) {
        this.#notYet()
        return
      }
      const address = new URL(location.href)
      address.hash = fragment
      const field = part(this.#root, '#link', HTMLInputElement)
      const note = part(this.#root, '[data-copied]', HTMLElement)
      field.value = address.href
      part(this.#root, '[data-link]', HTMLElement).hidden = false
      field.focus()
      field.select()
      note.textContent = ''
      // If the clipboard is not accessible, the link stays selected.
      await navigator.clipboard?.writeText(address.href).then(
        () => {
          note.textContent = 'Copied.'
        },
        () => undefined,
      )
    } catch (error) {
      if (!(error instanceof Refused)) throw error
      this.#say(error.message)
    }
  }
}
