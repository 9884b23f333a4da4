import type { Provenance } from '@strandwise/core'
import type { PlanSection, PlanValue, PlanVerdict, PlanWorking, SectionId } from './repairPlan.ts'
import { bySeverity, worst } from './verdict.ts'

const sectionTitles: Readonly<Record<SectionId, string>> = {
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

const derived: Provenance = { status: 'derived', source: 'computed by the models named in the workings' }

/** A section while it is written: verdicts only get worse, and the reasons that decide it come first, else as they were found. */
export class SectionDraft {
  readonly #id: SectionId
  #verdict: PlanVerdict = 'sound'
  readonly #values: PlanValue[] = []
  readonly #reasons = new Map<string, PlanVerdict>()
  readonly #workings: PlanWorking[] = []
  readonly #sources = new Map<string, Provenance>()

  constructor(id: SectionId) {
    this.#id = id
  }

  get verdict(): PlanVerdict {
    return this.#verdict
  }

  /** What, by how much, why, what to do. */
  say(verdict: PlanVerdict, reason: string, ...sources: readonly Provenance[]): this {
    this.#verdict = worst(this.#verdict, verdict)
    this.#reasons.set(reason, worst(verdict, this.#reasons.get(reason) ?? 'sound'))
    return this.cite(...sources)
  }

  value(name: string, value: number, unit: string, provenance: Provenance = derived, band?: { readonly low: number; readonly high: number }): PlanValue {
    const found: PlanValue = { name, value, unit, ...(band === undefined ? {} : { low: band.low, high: band.high }), provenance }
    this.#values.push(found)
    this.cite(provenance)
    return found
  }

  working(id: string, inputs: object): this {
    this.#workings.push({ id, inputs: { ...inputs } })
    return this
  }

  cite(...sources: readonly Provenance[]): this {
    for (const source of sources) this.#sources.set(`${source.status}|${source.source}|${source.clause ?? ''}`, source)
    return this
  }

  done(): PlanSection {
    return {
      id: this.#id,
      title: sectionTitles[this.#id],
      verdict: this.#verdict,
      values: this.#values,
      reasons: [...this.#reasons].sort(([, one], [, other]) => bySeverity(one, other)).map(([reason]) => reason),
      workings: this.#workings,
      sources: [...this.#sources.values()],
    }
  }
}
