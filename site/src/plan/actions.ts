import { demoJobs } from '@strandwise/planner/demo'
import { answersFrom } from './answersFrom.ts'
import { isJobFragment, LinkError } from './checkedJob.ts'
import { part } from './dom.ts'
import { jobFromFile, saveJob } from './jobFile.ts'
import { SavedWork } from './savedWork.ts'
import type { Workbench } from './workbench.ts'

const notYet = 'There is no whole job yet: '

/** What the buttons do: start from an example, take back, keep, open, save, hand on, print. */
export class Actions {
  readonly #root: HTMLElement
  readonly #bench: Workbench
  readonly #said: HTMLElement
  readonly #saved = new SavedWork()
  readonly #file: HTMLInputElement

  constructor(root: HTMLElement, bench: Workbench) {
    this.#root = root
    this.#bench = bench
    this.#said = part(root, '[data-said]', HTMLElement)
    this.#file = part(root, '#file', HTMLInputElement)
  }

  start(signal: AbortSignal): void {
    const left = this.#saved.read()
    if (left !== null) this.#bench.fill(left)
    void this.#openLink()
    this.#bench.onChange = (answers) => {
      this.#say('')
      this.#hideLink()
      // The link in the address is no longer this job.
      if (isJobFragment(location.hash.slice(1))) history.replaceState(null, '', location.pathname + location.search)
      this.#save(answers)
      this.#buttons()
    }
    // Half-typed text is kept too, key by key.
    this.#root.addEventListener('input', () => this.#save(this.#bench.answers), { signal })
    this.#file.addEventListener('change', () => void this.#openFile(), { signal })
    window.addEventListener('hashchange', () => void this.#openLink(), { signal })
    this.#buttons()
  }

  act(name: string): void {
    const bench = this.#bench
    if (name === 'undo' && bench.canUndo) bench.undo()
    if (name === 'redo' && bench.canRedo) bench.redo()
    if (name === 'example') this.#take(answersFrom(demoJobs[part(this.#root, '#example', HTMLSelectElement).value]))
    if (name === 'forget') this.#forget()
    if (name === 'keep-this') this.#keepThis()
    if (name === 'back-to-mine') this.#backToMine()
    if (name === 'open') this.#file.click()
    if (name === 'print') window.print()
    if (name === 'save') this.#withJob((job) => saveJob(job, bench.reading.job?.title))
    if (name === 'link') this.#withJob((job) => void this.#link(job))
    this.#buttons()
  }

  #take(answers: Readonly<Record<string, string>>): void {
    const { units } = this.#bench.answers
    this.#bench.fill(units === undefined || answers.units !== undefined ? answers : { ...answers, units })
    this.#bench.onChange(this.#bench.answers)
  }

  #buttons(): void {
    const able = { undo: this.#bench.canUndo, redo: this.#bench.canRedo }
    for (const [name, can] of Object.entries(able)) {
      const button = part(this.#root, `[data-act="${name}"]`, HTMLButtonElement)
      // A button that goes dead under the finger would drop the focus.
      if (!can && document.activeElement === button) part(this.#root, '[data-act="example"]', HTMLButtonElement).focus()
      button.disabled = !can
    }
  }

  #say(words: string): void {
    this.#said.textContent = words
    this.#said.hidden = words === ''
    if (words !== '') this.#said.scrollIntoView({ block: 'nearest' })
  }

  #save(answers: Readonly<Record<string, string>>): void {
    if (!this.#saved.save(answers)) this.#say('This browser keeps nothing. Save the job as a file instead.')
  }

  #forget(): void {
    this.#take({})
    this.#saved.forget()
    this.#lent()
    this.#say('Your answers are forgotten. Until you close this page, “Undo” brings them back.')
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

  /** A job from a link leaves other kept work waiting: the person says which of them to keep. */
  #lent(): void {
    part(this.#root, '[data-borrowed]', HTMLElement).hidden = !this.#saved.borrowed
  }

  #withJob(use: (job: unknown) => void): void {
    const { job, typed, missing, problems } = this.#bench.reading
    if (job !== null) use(typed)
    else this.#say(`${notYet}${problems.length > 0 ? 'an answer can’t be used' : `${missing[0]?.title ?? 'an answer'} is missing`}.`)
  }

  /** What came from outside replaces the answers, and can be taken back; what can't be used changes nothing. */
  async #openLink(): Promise<void> {
    const fragment = location.hash.slice(1)
    if (!isJobFragment(fragment)) return
    const { jobFromFragment } = await import('./jobLink.ts')
    this.#refusing(() => {
      const answers = answersFrom(jobFromFragment(fragment))
      this.#bench.fill(answers)
      this.#saved.borrow(this.#bench.answers)
    })
    this.#lent()
    this.#buttons()
  }

  #refusing(open: () => void): void {
    try {
      open()
      this.#say('')
    } catch (error) {
      if (!(error instanceof LinkError)) throw error
      this.#say(`${error.message} Your answers here are as they were.`)
    }
  }

  async #openFile(): Promise<void> {
    const file = this.#file.files?.[0]
    // The same file may be chosen again after it was mended.
    this.#file.value = ''
    if (file === undefined) return
    const text = await file.text()
    this.#refusing(() => this.#take(answersFrom(jobFromFile(text))))
  }

  #hideLink(): void {
    part(this.#root, '[data-link]', HTMLElement).hidden = true
  }

  async #link(job: unknown): Promise<void> {
    const { jobToFragment } = await import('./jobLink.ts')
    try {
      const address = new URL(location.href)
      address.hash = jobToFragment(job)
      const field = part(this.#root, '#link', HTMLInputElement)
      field.value = address.href
      part(this.#root, '[data-link]', HTMLElement).hidden = false
      field.focus()
      field.select()
      await navigator.clipboard?.writeText(address.href).then(
        () => this.#say('The link is copied.'),
        // Where the clipboard is closed to the page, the link stands selected.
        () => undefined,
      )
    } catch (error) {
      if (!(error instanceof LinkError)) throw error
      this.#say(error.message)
    }
  }
}
