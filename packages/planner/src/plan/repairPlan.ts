import type { Provenance } from '@strandwise/core'
import type { PlanAssumption } from '../job/assumption.ts'

export type { PlanAssumption } from '../job/assumption.ts'

/** Best to worst. */
export const verdicts = ['sound', 'caution', 'cannot tell', 'unsound', 'refused'] as const
/** How a section or a plan comes out, from sound to refused. */
export type PlanVerdict = (typeof verdicts)[number]

export const sectionIds = ['readings', 'wire-and-protection', 'cut-back', 'method', 'joint', 'heating', 'covering', 'strain-relief', 'proof'] as const
/** The nine sections of a plan by name, in their order. */
export type SectionId = (typeof sectionIds)[number]

/** A number of the plan with its unit, its band where it has one, and what it rests on. */
export interface PlanValue {
  readonly name: string
  readonly value: number
  readonly unit: string
  readonly low?: number
  readonly high?: number
  readonly provenance: Provenance
}

/** A core function with the inputs it ran on: what `explain` shows. */
export interface PlanWorking {
  readonly id: string
  readonly inputs: Readonly<Record<string, unknown>>
}

/** One section of a plan: its verdict, its numbers, why, the formulas that ran, and the sources. */
export interface PlanSection {
  readonly id: SectionId
  readonly title: string
  readonly verdict: PlanVerdict
  readonly values: readonly PlanValue[]
  readonly reasons: readonly string[]
  readonly workings: readonly PlanWorking[]
  readonly sources: readonly Provenance[]
}

/** A method, tool, sleeve or barrel that was weighed. */
export interface PlanOption {
  readonly of: 'method' | 'tool' | 'sleeve' | 'barrel'
  readonly name: string
  readonly verdict: PlanVerdict
  readonly reasons: readonly string[]
}

/** One step of the work, and what shows that it is right. */
export interface PlanStep {
  readonly text: string
  readonly values: readonly PlanValue[]
  readonly check: string
}

/** Something to fetch before beginning. */
export interface PlanPart {
  readonly name: string
  readonly quantity: number
  readonly unit: string
}

/** The plan of a repair: cautions first, nine sections, assumptions, what else was weighed, steps, parts and sources. */
export interface RepairPlan {
  readonly version: 1
  /** The worst section's. */
  readonly verdict: PlanVerdict
  /** First of all. */
  readonly cautions: readonly string[]
  readonly sections: readonly PlanSection[]
  readonly assumptions: readonly PlanAssumption[]
  readonly options: readonly PlanOption[]
  readonly sequence: readonly PlanStep[]
  readonly parts: readonly PlanPart[]
  readonly tables: readonly Provenance[]
}
