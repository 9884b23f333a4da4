import { rooms } from 'virtual:handbook-rooms'
import type { HandField } from './facts.ts'
import { type FieldProblem, hasUnits, readFields } from './readFields.ts'
import type { ReadUnit } from './readUnit.ts'
import { refusalOf } from './refusal.ts'
import { gathered, resultMarkup } from './resultMarkup.ts'

interface Told {
  readonly name: string
  readonly room: string
  /** Address of the function's file; null if it comes with its room. */
  readonly code: string | null
  readonly unit: string
  readonly fields: readonly HandField[]
  readonly inputs: readonly unknown[]
  /** Names of positional parameters; null for one object. */
  readonly names: readonly string[] | null
}

/** Bare numbers need no reader of units. */
const noUnits: ReadUnit = () => null

/** A form that computes while one types; loaded on first touch. */
export class LiveFunction {
  readonly #root: HTMLElement
  readonly #told: Told
  #call = 0
  #inputs: readonly unknown[] | null = null

  constructor(root: HTMLElement) {
    this.#root = root
    this.#told = JSON.parse(root.dataset.function ?? '{}') as Told
  }

  /** The function itself, fetched once. */
  async load(): Promise<(...inputs: readonly unknown[]) => unknown> {
    const { code, room, name } = this.#told
    const module: Readonly<Record<string, unknown>> | undefined = code === null ? await rooms[room]?.() : await import(/* @vite-ignore */ code)
    const run = module?.[name]
    if (typeof run !== 'function') throw new Error(`${name} is not in ${code ?? room}`)
    return run as (...inputs: readonly unknown[]) => unknown
  }

  async compute(): Promise<void> {
    this.#call += 1
    const call = this.#call
    const { fields, inputs, unit } = this.#told
    const typed = this.#typed()
    const read = readFields(fields, inputs, typed, hasUnits(fields, typed) ? (await import('./readUnit.ts')).readUnit : noUnits)
    if (call !== this.#call) return
    if (read.problems.length > 0) return this.#refuse(read.problems, '')
    const run = await this.load()
    try {
      const result = await gathered(await run(...read.inputs))
      if (call !== this.#call) return
      this.#refuse([], '')
      const place = this.#root.querySelector('[data-result]')
      if (place !== null) place.innerHTML = resultMarkup(result, unit)
      this.#inputs = read.inputs
      await this.work()
    } catch (error) {
      if (call !== this.#call) return
      const problem = refusalOf(error as Error, fields)
      this.#refuse(typeof problem === 'string' ? [] : [problem], typeof problem === 'string' ? problem : '')
    }
  }

  /** Shows the working with the form's numbers, if it is open. */
  async work(): Promise<void> {
    const details = this.#root.querySelector('details[data-working]')
    const place = details?.querySelector('[data-workings]')
    if (!(details instanceof HTMLDetailsElement) || !details.open || place === undefined || place === null || this.#inputs === null) return
    const inputs = this.#inputs
    const [{ explain }, { workingMarkup }] = await Promise.all([import('@strandwise/working/formulas'), import('../learn/workingMarkup.ts')])
    if (inputs !== this.#inputs) return
    const { names, name } = this.#told
    const given = names === null ? inputs[0] : Object.fromEntries(names.map((one, at) => [one, inputs[at]]))
    place.innerHTML = workingMarkup(explain(name, given as Readonly<Record<string, unknown>>))
  }

  #typed(): Readonly<Record<string, string>> {
    const typed: Record<string, string> = {}
    for (const { id } of this.#told.fields) {
      const input = this.#root.querySelector(`[id="${id}"]`)
      if (input instanceof HTMLInputElement) typed[id] = input.type === 'checkbox' ? String(input.checked) : input.value
      else if (input instanceof HTMLSelectElement) typed[id] = input.value
    }
    return typed
  }

  #refuse(problems: readonly FieldProblem[], words: string): void {
    for (const { id } of this.#told.fields) {
      const problem = problems.find((one) => one.id === id)
      const place = this.#root.querySelector(`[id="${id}-problem"]`)
      if (place !== null) place.textContent = problem === undefined ? '' : `Read: ${problem.read}. Allowed: ${problem.allowed}.`
      this.#root.querySelector(`[id="${id}"]`)?.toggleAttribute('aria-invalid', problem !== undefined)
    }
    const said = this.#root.querySelector('[data-said]')
    const old = problems.length > 0 || words !== ''
    if (said !== null) said.textContent = words !== '' ? words : old ? 'The result is that of the last entries that could be used.' : ''
    this.#root.toggleAttribute('data-old', old)
  }
}
