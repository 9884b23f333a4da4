import { type Answers, type Missing, missingAnswers, type PageGroup, trimmed, withEntry, withoutEntry } from './answers.ts'
import { part } from './dom.ts'
import { FieldNotes } from './fieldNotes.ts'
import { FormView } from './formView.ts'
import { History } from './history.ts'
import { refreshOpen } from './onRequest.ts'
import type { PlanClient } from './planClient.ts'
import { PlanPanel } from './planPanel.ts'
import type { PlanReply } from './planService.ts'
import type { PlanShown } from './showPlan.ts'
import { StatusBar } from './statusBar.ts'

export const isEmpty = (answers: Answers): boolean => Object.entries(trimmed(answers)).every(([name, text]) => name === 'units' || text === '0')

const nothing: PlanReply = { heard: {}, problems: [], shown: null, trouble: null }

/** Connects form and plan: everything on the page follows from the form's answers and the last good plan. */
export class Workbench {
  readonly form: FormView
  readonly #root: HTMLElement
  readonly #client: PlanClient
  readonly #notes: FieldNotes
  readonly #panel: PlanPanel
  readonly #bar: StatusBar
  readonly #history: History
  #reply: PlanReply = nothing
  #plan: PlanShown | null = null
  #missing: readonly Missing[] = []
  /** Called after every change by a person. */
  onChange: (answers: Answers) => void = () => {}
  /** Called when the form has been read, before the plan is ready. */
  onRead: (answers: Answers) => void = () => {}
  /** Called when the reply to the newest answers is on the page. */
  onShown: () => void = () => {}

  constructor(root: HTMLElement, client: PlanClient) {
    this.#root = root
    const groups = JSON.parse(part(root, '[data-form]', HTMLScriptElement).textContent ?? '[]') as readonly PageGroup[]
    this.form = new FormView(part(root, 'form', HTMLFormElement), groups)
    this.#client = client
    this.#notes = new FieldNotes(this.form)
    this.#panel = new PlanPanel(root)
    this.#bar = new StatusBar(root)
    this.form.write({})
    this.#history = new History(this.form.read())
  }

  get answers(): Answers {
    return this.form.read()
  }

  get plan(): PlanShown | null {
    return this.#plan
  }

  /** The committed answers; text being typed is not yet a change. */
  get committed(): Answers {
    return this.#history.now
  }

  /** The next field to correct or answer. */
  get nextPath(): string | undefined {
    const missing = missingAnswers(this.form.groups, this.form.read())
    return this.#reply.problems[0]?.path ?? missing[0]?.path
  }

  get missing(): readonly Missing[] {
    return this.#missing
  }

  get canUndo(): boolean {
    return this.#history.canUndo
  }

  get canRedo(): boolean {
    return this.#history.canRedo
  }

  groupAt(at: string): PageGroup | undefined {
    return this.form.groups.find((group) => group.at === at && group.most !== undefined)
  }

  /** Called when a field is left or a choice made. */
  commit(path: string): void {
    this.#notes.leave(path)
    const answers = this.form.read()
    const changed = this.#history.add(answers)
    void this.refresh()
    if (changed) this.onChange(answers)
  }

  /** Replaces all answers: by an example, a link, a file, or stored work. */
  fill(answers: Answers): Promise<void> {
    this.form.write(answers)
    this.#notes.forget()
    const now = this.form.read()
    if (!isEmpty(now)) this.#notes.leaveAll(now)
    this.#history.add(now)
    return this.refresh()
  }

  undo(): void {
    this.#step(this.#history.undo())
  }

  redo(): void {
    this.#step(this.#history.redo())
  }

  #step(answers: Answers): void {
    this.form.write(answers)
    void this.refresh()
    this.onChange(answers)
  }

  addEntry(group: PageGroup, given: Answers = {}): number {
    const index = Number(this.form.read()[group.at] ?? 0)
    const more = Object.fromEntries(Object.entries(given).map(([name, text]) => [`${group.at}.${index}.${name}`, text]))
    this.form.write({ ...withEntry(this.form.read(), group), ...more })
    this.commit(group.at)
    return index
  }

  removeEntry(group: PageGroup, index: number): void {
    this.form.write(withoutEntry(this.form.read(), group, index))
    this.commit(group.at)
  }

  /** Reads the form; the worker checks it and plans, or says why it cannot. */
  async refresh(): Promise<void> {
    const answers = this.form.read()
    this.form.arrange(answers)
    this.#missing = missingAnswers(this.form.groups, answers)
    this.onRead(answers)
    if (isEmpty(answers)) {
      this.#client.drop()
      delete this.#root.dataset.asking
      this.#reply = nothing
      this.#plan = null
      this.#panel.clear()
      this.#notes.assume({})
      this.#notes.show(nothing, answers)
      this.#tell(false)
      return
    }
    this.#tell(this.#plan !== null && this.#missing.length > 0)
    this.#root.dataset.asking = ''
    const reply = await this.#client.ask({ ask: 'plan', answers })
    // Newer answers are already being processed.
    if (reply === null) return
    delete this.#root.dataset.asking
    this.#show(reply, answers)
    this.onShown()
  }

  #show(reply: PlanReply, answers: Answers): void {
    this.#reply = reply
    this.#notes.show(reply, answers)
    if (reply.shown !== null) {
      this.#plan = reply.shown
      this.#panel.show(reply.shown)
      refreshOpen(this.#root, this.#client)
      this.#notes.assume(reply.shown.assumed)
    } else if (this.#plan?.kind === 'refused') {
      // The circuit is no longer refused, but there is no plan yet.
      this.#plan = null
      this.#panel.clear()
    } else if (this.#plan !== null) this.#panel.markOld(true)
    this.#tell(this.#plan !== null && reply.shown === null)
  }

  #tell(old: boolean): void {
    const { problems, trouble } = this.#reply
    this.#bar.show({ plan: this.#plan, old, missing: this.#missing, problems, trouble })
  }
}
