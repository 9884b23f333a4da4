import { type FormField, type FormGroup, JobError, parseRepairJob, type RepairJob } from '@strandwise/planner/job'
import type { QuantityKind } from '@strandwise/working/quantity'
import { type Answers, type AskedField as AskedOf, askedFields, isBlank, type Missing, missingAnswers, unitOf } from './answers.ts'
import { issueAtField } from './issueAtField.ts'
import { planForm } from './planForm.ts'
import { areaHeard, isSizeRefusal, readSize } from './readSize.ts'
import { isRefusal, type ReadAs, type ReadNumber, type Refusal, readTyped } from './readTyped.ts'
import { unitSystem } from './units.ts'

export interface Problem extends Refusal {
  readonly path: string
}

type AskedField = AskedOf<FormGroup>

/** A number as read, in its field's own unit. */
export interface Heard {
  readonly value: number
  readonly kind: QuantityKind
}

export interface ReadJob {
  /** The job in fixed units; null if anything is missing or refused. */
  readonly job: RepairJob | null
  /** The job as a job file has it, quantities as typed. */
  readonly typed: Readonly<Record<string, unknown>>
  readonly problems: readonly Problem[]
  readonly missing: readonly Missing[]
  readonly heard: Readonly<Record<string, Heard>>
  /** Area of each wire size, by the size's path. */
  readonly sizes: Readonly<Record<string, string>>
}

type Tree = Record<string, unknown>

/** Sets a value at a dotted path; a number in the path is a list index. */
function put(tree: Tree, path: string, value: unknown): void {
  const keys = path.split('.')
  const last = keys.pop() ?? ''
  let node: Tree = tree
  for (const [index, key] of keys.entries()) {
    const child = node[key] ?? (/^\d+$/.test(keys[index + 1] ?? '') ? [] : {})
    node[key] = child
    node = child as Tree
  }
  node[last] = value
}

const readingKinds: Readonly<Record<string, QuantityKind>> = { Ω: 'resistanceOhm', V: 'voltageV', A: 'currentA', '°C': 'temperatureC' }

/** How to read a number in this field; `null` for a reading without a kind. */
export function readAs(asked: AskedOf, answers: Answers): ReadAs | null {
  const { field } = asked
  const unit = unitOf(asked, answers)
  if (field.kind !== undefined) return { kind: field.kind, unit }
  const isReading = asked.group.at === 'readings' && (field.path === 'value' || field.path === 'resolution')
  if (!isReading) return { kind: 'ratio', unit }
  const kind = readingKinds[unit]
  return kind === undefined ? null : { kind, unit }
}

class Reader {
  readonly answers: Answers
  readonly fixed: Tree = { version: 1 }
  readonly typed: Tree = { version: 1 }
  readonly problems: Problem[] = []
  readonly heard: Record<string, Heard> = {}
  readonly sizes: Record<string, string> = {}

  constructor(answers: Answers) {
    this.answers = answers
  }

  #text(name: string): string {
    return (this.answers[name] ?? '').trim()
  }

  #both(path: string, value: unknown): void {
    put(this.fixed, path, value)
    put(this.typed, path, value)
  }

  #number(name: string, asked: AskedField, as: ReadAs): ReadNumber | null {
    const text = this.#text(name)
    const found = readTyped(as.unit === '%' ? text.replace(/\s*%$/, '') : text, asked.field, as)
    if (isRefusal(found)) {
      this.problems.push({ path: name, ...found })
      return null
    }
    if (as.kind !== 'ratio') this.heard[name] = { value: found.value, kind: as.kind }
    return found
  }

  field(asked: AskedField): void {
    const { field, path } = asked
    if (field.shape === 'interval' || field.shape === 'quantity' || field.shape === 'number') {
      const as = readAs(asked, this.answers)
      if (as !== null && field.shape === 'interval') this.#interval(asked, as)
      else if (as !== null) this.#quantity(asked, as)
      return
    }
    const text = this.#text(path)
    if (field.path === 'size') {
      this.#size(asked, text)
      return
    }
    const value = wordsOf(text, field)
    if (value !== undefined) this.#both(path, value)
    else this.problems.push({ path, read: `“${text.slice(0, 40)}”`, allowed: field.allowed, example: field.example.replaceAll('"', '') })
  }

  #size({ holder, path }: AskedField, text: string): void {
    const system = unitSystem(this.answers.units)
    const standard = this.#text(`${holder}.standard`)
    const found = readSize(text, standard, system)
    if (isSizeRefusal(found)) {
      this.problems.push({ path, ...found })
      return
    }
    for (const [name, value] of Object.entries(found)) this.#both(`${holder}.${name}`, value)
    this.sizes[path] = areaHeard(found, standard, system)
  }

  #quantity(asked: AskedField, as: ReadAs): void {
    const { field, path } = asked
    const found = this.#number(path, asked, as)
    if (found === null) return
    put(this.fixed, path, found.value)
    if (typeof found.typed === 'string' && field.written !== undefined) put(this.typed, pathBeside(path, field.written), found.typed)
    // `value` of a reading keeps its name with a unit.
    else put(this.typed, path, field.path === 'value' ? found.typed : found.value)
  }

  #interval(asked: AskedField, as: ReadAs): void {
    const { field, path } = asked
    const ends = ['low', 'high'] as const
    const absent = ends.filter((end) => this.#text(`${path}.${end}`) === '')
    if (absent.length > 0) return
    const [low, high] = ends.map((end) => this.#number(`${path}.${end}`, asked, as))
    if (!low || !high) return
    if (low.value > high.value) {
      const read = `${this.#text(`${path}.low`)} to ${this.#text(`${path}.high`)}`
      this.problems.push({
        path: `${path}.high`,
        read,
        allowed: 'low first, then high',
        example: `${this.#text(`${path}.high`)} to ${this.#text(`${path}.low`)}`,
      })
      return
    }
    put(this.fixed, path, { low: low.value, high: high.value })
    const asText = field.written !== undefined && (typeof low.typed === 'string' || typeof high.typed === 'string')
    const name = asText ? pathBeside(path, field.written ?? '') : path
    put(this.typed, name, asText ? { low: low.typed, high: high.typed } : { low: low.value, high: high.value })
  }
}

const pathBeside = (path: string, name: string): string => [...path.split('.').slice(0, -1), name].join('.')

/** A choice or text as in a job file; undefined if the field does not allow it. */
function wordsOf(text: string, field: FormField): unknown {
  const known = (word: string) => field.values?.includes(word) === true
  if (field.shape === 'yes-no') return text === 'true' || text === 'false' ? text === 'true' : undefined
  if (field.shape === 'choice') return known(text) ? text : undefined
  if (field.shape === 'choices') return text.split(',').every(known) ? text.split(',') : undefined
  return text.length <= (field.longest ?? text.length) ? text : undefined
}

/** Refuses the excess of mutually exclusive fields. */
function oneOfEach(reader: Reader, asked: readonly AskedField[]): void {
  const groups = new Map(asked.filter((item) => item.group.oneOf.length > 0).map((item) => [item.holder, item.group]))
  for (const [holder, group] of groups) {
    for (const names of group.oneOf) {
      const fields = names.flatMap((name) => asked.filter((item) => item.holder === holder && item.field.path === name))
      const [first, second] = fields.filter((item) => !isBlank(reader.answers, item.field, item.path))
      if (first === undefined || second === undefined) continue
      reader.problems.push({
        path: second.path,
        read: `both ${first.field.title.toLowerCase()} and ${second.field.title.toLowerCase()}`,
        allowed: `one of ${fields.map((item) => item.field.title.toLowerCase()).join(' or ')}`,
        example: `empty this field, and leave ${first.field.title.toLowerCase()}`,
      })
    }
  }
}

/** Reads the answers in the units typed, then checks the job by the schema. */
export function readJob(answers: Answers): ReadJob {
  const reader = new Reader(answers)
  const asked = askedFields(planForm, answers)
  for (const item of asked) if (!isBlank(answers, item.field, item.path)) reader.field(item)
  oneOfEach(reader, asked)
  const { typed, heard, sizes } = reader
  const missing = missingAnswers(planForm, answers)
  const so = { typed, missing, heard, sizes }
  if (reader.problems.length > 0 || missing.length > 0) return { job: null, problems: reader.problems, ...so }
  try {
    return { job: parseRepairJob(reader.fixed), problems: [], ...so }
  } catch (error) {
    if (!(error instanceof JobError)) throw error
    return { job: null, problems: error.issues.map((issue) => issueAtField(issue, asked, answers)), ...so }
  }
}
