import type { Provenance } from '@strandwise/core'
import { type Finding, type PlanSection, type PlanValue, type PlanVerdict, type PlanWorking, planValue, type SectionId } from './finding.ts'
import type { Units } from './print.ts'
import { rule as ruleById } from './rule.ts'
import { bySeverity, worst } from './verdict.ts'
import { type Filling, filled, type SectionWords } from './words.ts'

/** Titles of the sections. */
export const sectionTitles: Readonly<Record<SectionId, string>> = {
  readings: 'The readings, as proof',
  'wire-and-protection': 'Wire, terminal and fuse',
  'cut-back': 'Cut back and slack',
  method: 'Way to join',
  joint: 'The joint',
  heating: 'Heat',
  covering: 'Covering',
  'strain-relief': 'Strain relief',
  proof: 'Proof',
}

interface Said extends Filling {
  /** The trade rule behind the finding, whose source is cited. */
  readonly rule?: string
  readonly sources?: readonly Provenance[]
}

/** A finding with its text in the job's units. */
export function findingOf(words: SectionWords, units: Units, code: string, verdict: PlanVerdict, said: Said = {}): Finding {
  const found = words[code]
  if (found === undefined) throw new Error(`no words for "${code}"`)
  return {
    code,
    verdict,
    values: said.values ?? {},
    ...(said.names === undefined ? {} : { names: said.names }),
    ...(said.rule === undefined ? {} : { rule: said.rule }),
    sources: [...(said.rule === undefined ? [] : [ruleById(said.rule).source]), ...(said.sources ?? [])],
    text: filled(found.text, said, units),
  }
}

/** A section under construction: findings in any order, values, workings. The worst finding gives verdict and heading. */
export class SectionDraft<W extends SectionWords> {
  readonly #id: SectionId
  readonly #words: W
  readonly #units: Units
  readonly #findings: { readonly finding: Finding; readonly says: string }[] = []
  readonly #values: PlanValue[] = []
  readonly #workings: PlanWorking[] = []
  readonly #sources = new Map<string, Provenance>()

  constructor(id: SectionId, words: W, units: Units = 'metric') {
    this.#id = id
    this.#words = words
    this.#units = units
  }

  get verdict(): PlanVerdict {
    return worst(...this.#findings.map(({ finding }) => finding.verdict))
  }

  /** Adds a finding by its code in the section's words; returns it. */
  say(code: keyof W & string, verdict: PlanVerdict, said: Said = {}): Finding {
    const finding = findingOf(this.#words, this.#units, code, verdict, said)
    this.#findings.push({ finding, says: filled((this.#words[code] as SectionWords[string]).says, said, this.#units) })
    this.cite(...finding.sources)
    return finding
  }

  /** Adds a finding worded elsewhere, with its heading. */
  add(finding: Finding, says: string): this {
    this.#findings.push({ finding, says })
    return this.cite(...finding.sources)
  }

  /** Adds a number to the section's list. */
  value(name: string, value: number, unit: string, provenance?: Provenance, band?: { readonly low: number; readonly high: number }): PlanValue {
    const found = planValue(name, value, unit, provenance, band)
    this.#values.push(found)
    this.cite(found.provenance)
    return found
  }

  /** Notes a formula with its inputs, and which of the section's values it gives. */
  working(id: string, inputs: object, gives?: string): this {
    this.#workings.push({ id, ...(gives === undefined ? {} : { gives }), inputs: { ...inputs } })
    return this
  }

  cite(...sources: readonly Provenance[]): this {
    for (const source of sources) this.#sources.set(`${source.status}|${source.source}|${source.clause ?? ''}`, source)
    return this
  }

  done(): PlanSection {
    const sorted = this.#findings.toSorted((one, other) => bySeverity(one.finding.verdict, other.finding.verdict))
    return {
      id: this.#id,
      title: sectionTitles[this.#id],
      says: sorted[0]?.says ?? 'nothing to judge',
      verdict: this.verdict,
      findings: sorted.map(({ finding }) => finding),
      values: this.#values,
      workings: this.#workings,
      sources: [...this.#sources.values()],
    }
  }
}
