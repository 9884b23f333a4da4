import { demoJobs } from '@strandwise/planner/demo'
import { type FormGroup, jobForm, type RepairJob } from '@strandwise/planner/job'
import type { RepairPlan } from '@strandwise/planner/report'
import { type Answers, askedFields, trimmed, withEntry, withoutEntry } from './answers.ts'
import { cardFacts } from './cardFacts.ts'
import { part } from './dom.ts'
import { FieldNotes } from './fieldNotes.ts'
import { FormView } from './formView.ts'
import { History } from './history.ts'
import { isStopped } from './isStopped.ts'
import { cardSize, jobCard } from './jobCard.ts'
import type { Planned } from './planning.ts'
import { PlanView } from './planView.ts'
import { type ReadJob, readJob } from './readJob.ts'
import { StatusBar } from './statusBar.ts'
import { type UnitSystem, unitSystem } from './units.ts'

type Planning = typeof import('./planning.ts')

const isEmpty = (answers: Answers): boolean => Object.entries(trimmed(answers)).every(([name, text]) => name === 'units' || text === '0')

/** Answers in, plan out: everything on the page follows from the form and the last good plan. */
export class Workbench {
  readonly form: FormView
  readonly #root: HTMLElement
  readonly #notes: FieldNotes
  readonly #plan: PlanView
  readonly #bar: StatusBar
  readonly #history: History
  #planning: Planning | null = null
  #loading: Promise<void> | null = null
  #read: ReadJob = readJob({})
  #last: Planned | null = null
  #refusal: RepairPlan | null = null
  #circuitSeen = ''
  /** Told of every change that a person made. */
  onChange: (answers: Answers) => void = () => {}

  constructor(root: HTMLElement) {
    this.#root = root
    this.form = new FormView(part(root, 'form', HTMLFormElement))
    this.#notes = new FieldNotes(this.form)
    this.#plan = new PlanView(root)
    this.#bar = new StatusBar(root)
    this.form.write({})
    this.#history = new History(this.form.read())
  }

  /** The models come with the first answer, so that the form is there at once. */
  load(): Promise<void> {
    this.#loading ??= import('./planning.ts').then((planning) => {
      this.#planning = planning
      this.refresh()
    })
    return this.#loading
  }

  get answers(): Answers {
    return this.form.read()
  }

  get reading(): ReadJob {
    return this.#read
  }

  /** The answers as last left: what is typed beyond them is not yet a change. */
  get committed(): Answers {
    return this.#history.now
  }

  /** The field to mend or to answer next. */
  get nextPath(): string | undefined {
    return this.#read.problems[0]?.path ?? this.#read.missing[0]?.path
  }

  get canUndo(): boolean {
    return this.#history.canUndo
  }

  get canRedo(): boolean {
    return this.#history.canRedo
  }

  /** A field was left, or a choice made. */
  commit(path: string): void {
    this.#notes.leave(path)
    const answers = this.form.read()
    const changed = this.#history.add(answers)
    this.refresh()
    if (changed) this.onChange(answers)
  }

  /** All answers at once: an example, a link, a file, or what was kept. */
  fill(answers: Answers): void {
    this.form.write(answers)
    this.#notes.forget()
    const now = this.form.read()
    if (!isEmpty(now)) {
      this.#notes.leaveAll(now)
      void this.load()
    }
    this.#history.add(now)
    this.refresh()
  }

  undo(): void {
    this.#step(this.#history.undo())
  }

  redo(): void {
    this.#step(this.#history.redo())
  }

  #step(answers: Answers): void {
    this.form.write(answers)
    this.refresh()
    this.onChange(answers)
  }

  addEntry(group: FormGroup): void {
    this.form.write(withEntry(this.form.read(), group))
    this.commit(group.at)
  }

  removeEntry(group: FormGroup, index: number): void {
    this.form.write(withoutEntry(this.form.read(), group, index))
    this.commit(group.at)
  }

  /** Reads the form, plans anew where it can, and says where it can't. */
  refresh(): void {
    const answers = this.form.read()
    const system = unitSystem(answers.units)
    this.form.arrange(answers)
    this.#read = readJob(answers)
    const trouble = this.#replan(answers)
    this.#notes.show(this.#read, answers, system)
    const titles = new Map(askedFields(answers).map((item) => [item.path, item.field.title]))
    const plan = this.#refusal ?? this.#last?.plan ?? null
    this.#bar.show({
      plan,
      stopped: plan !== null && isStopped(plan),
      old: this.#refusal === null && this.#read.job === null,
      missing: this.#read.missing,
      problems: this.#read.problems.map((item) => ({ ...item, title: titles.get(item.path.replace(/\.(low|high)$/, '')) ?? item.path })),
      trouble,
    })
  }

  #replan(answers: Answers): string | null {
    const planning = this.#planning
    const { job } = this.#read
    if (planning === null) return null
    if (isEmpty(answers)) {
      this.#last = null
      this.#refusal = null
      this.#circuitSeen = ''
      this.#plan.clear()
      this.#notes.assume([], 'metric')
      part(this.#root, '[data-card]', HTMLElement).replaceChildren()
      return null
    }
    if (job === null) {
      this.#stopAtCircuit(planning, answers)
      if (this.#refusal === null) this.#plan.markOld(true)
      return null
    }
    this.#refusal = null
    this.#circuitSeen = ''
    try {
      this.#showPlan(planning, job, answers)
      return null
    } catch (error) {
      // Should a model refuse what the checks let through: the plan on the page stays, and says that it is old.
      this.#plan.markOld(true)
      return error instanceof Error ? error.message : String(error)
    }
  }

  #showPlan(planning: Planning, job: RepairJob, answers: Answers): void {
    const system = unitSystem(answers.units)
    const done = planning.planned(job)
    this.#last = done
    this.#plan.show(done.plan, system)
    if (!isStopped(done.plan)) void this.#draw(done, system)
    this.#notes.assume(done.plan.assumptions, system)
    const card = part(this.#root, '[data-card]', HTMLElement)
    card.replaceChildren(...jobCard(done, cardFacts(answers), system))
    card.dataset.size = cardSize(card)
  }

  /** Drawings and charts come after the plan; one that was overtaken by a newer plan is dropped. */
  async #draw(done: Planned, system: UnitSystem): Promise<void> {
    const { picturesOf } = await import('./pictures.ts')
    if (this.#last === done) this.#plan.picture(picturesOf(done.job), system)
  }

  /** A circuit that the stop list names ends the wire before the rest is answered. */
  #stopAtCircuit(planning: Planning, answers: Answers): void {
    const circuit = this.#read.typed.circuit
    const seen = JSON.stringify([circuit, answers.units])
    if (seen === this.#circuitSeen) return
    this.#circuitSeen = seen
    const refusal = planning.refusedByCircuit(circuit, Object.values(demoJobs)[0] as RepairJob)
    if (refusal !== null) {
      this.#last = null
      this.#plan.refuse(refusal, unitSystem(answers.units))
      this.#notes.assume([], 'metric')
    } else if (this.#refusal !== null) this.#plan.clear()
    this.#refusal = refusal
  }
}

export const groupAt = (at: string): FormGroup | undefined => jobForm.find((group) => group.at === at && group.most !== undefined)
