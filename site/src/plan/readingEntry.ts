import { type Answers, askedFields, unitOf } from './answers.ts'
import { CircuitWireElement, type Probes } from './circuitWireElement.ts'
import { part } from './dom.ts'
import type { Workbench } from './workbench.ts'

/** Kind of a reading by the unit typed with it. */
const kindsByUnit: readonly (readonly [RegExp, string, readonly string[]])[] = [
  [/(?:ohm|Ω)s?\s*$/i, 'resistance', ['resistance', 'four-wire', 'insulation']],
  [/\d\s*[mk]?V\s*$/, 'drop', ['drop', 'voltage']],
  [/\d\s*m?A\s*$/, 'current', ['current']],
  [/°\s*[CF]\s*$/, 'temperature', ['temperature']],
]

/** Readings of a dead circuit, with the load unplugged. */
const dead = new Set(['resistance', 'four-wire', 'insulation'])

/** Entry of readings on the drawn wire: two places, then the value; typing ohms turns a voltage reading into ohms. */
export class ReadingEntry {
  readonly #root: HTMLElement
  readonly #bench: Workbench
  readonly #wire: CircuitWireElement

  constructor(root: HTMLElement, bench: Workbench) {
    this.#root = root
    this.#bench = bench
    this.#wire = part(root, 'circuit-wire', CircuitWireElement)
    bench.onRead = (answers) => this.draw(answers)
  }

  draw(answers: Answers): void {
    const values = askedFields(this.#bench.form.groups, answers).filter(({ group, field }) => group.at === 'readings' && field.path === 'value')
    this.#wire.draw(
      answers,
      values.map((asked) => unitOf(asked, answers)),
    )
  }

  /** Marks the first of two tapped places. */
  probing(first: string | null): void {
    const words = first === null ? '' : 'Now tap the other place; the same one again for a clamp or a thermometer.'
    part(this.#root, '[data-probing]', HTMLElement).textContent = words
  }

  /** Adds a reading between two places, ready for its value; by default a drop with the load on. */
  add({ from, to }: Probes, given: Answers = {}): void {
    const group = this.#bench.groupAt('readings')
    if (group === undefined) return
    const kind = from === to ? 'current' : 'drop'
    const index = this.#bench.addEntry(group, { kind, load: 'on', from, to, ...given })
    this.#bench.form.goTo(`readings.${index}.value`)
  }

  /** Adds the reading that the plan asks for next, from "kind from to load when". */
  addNext(words: string): void {
    const [kind = 'drop', from = '', to = '', load = 'on', when = ''] = words.split(' ')
    this.add({ from, to }, { kind, load, ...(when === '' ? {} : { when }) })
  }

  /** Sets the reading's kind by the unit typed with the value. */
  suitKind(control: HTMLInputElement | HTMLSelectElement): void {
    const at = /^(readings\.\d+)\.value$/.exec(control.name)?.[1]
    const kind = this.#bench.form.control(`${at}.kind`)
    const load = this.#bench.form.control(`${at}.load`)
    if (at === undefined || !(kind instanceof HTMLSelectElement)) return
    const found = kindsByUnit.find(([pattern]) => pattern.test(control.value))
    if (found === undefined || found[2].includes(kind.value)) return
    const [, word] = found
    kind.value = word
    if (dead.has(word)) this.#choose(`${at}.load`, load, 'unplugged')
  }

  #choose(name: string, control: HTMLInputElement | HTMLSelectElement | null, word: string): void {
    if (control instanceof HTMLSelectElement) control.value = word
    const radio = this.#root.querySelector<HTMLInputElement>(`input[type="radio"][name="${CSS.escape(name)}"][value="${word}"]`)
    if (radio !== null) radio.checked = true
  }
}
