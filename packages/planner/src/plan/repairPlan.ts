import type { Provenance } from '@strandwise/core'

/** Best to worst. */
export const verdicts = ['sound', 'caution', 'cannot tell', 'unsound', 'refused'] as const
export type PlanVerdict = (typeof verdicts)[number]

export const sectionIds = ['readings', 'wire-and-protection', 'cut-back', 'method', 'joint', 'heating', 'covering', 'strain-relief', 'proof'] as const
export type SectionId = (typeof sectionIds)[number]

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

export interface PlanSection {
  readonly id: SectionId
  readonly title: string
  readonly verdict: PlanVerdict
  readonly values: readonly PlanValue[]
  readonly reasons: readonly string[]
  readonly workings: readonly PlanWorking[]
  readonly sources: readonly Provenance[]
}

export interface PlanAssumption {
  readonly field: string
  readonly value: unknown
  readonly why: string
  readonly changesVerdict?: boolean
}

export interface PlanOption {
  readonly of: 'method' | 'tool' | 'sleeve' | 'barrel'
  readonly name: string
  readonly verdict: PlanVerdict
  readonly reasons: readonly string[]
}

export interface PlanStep {
  readonly text: string
  readonly values: readonly PlanValue[]
  readonly check: string
}

export interface PlanPart {
  readonly name: string
  readonly quantity: number
  readonly unit: string
}

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
