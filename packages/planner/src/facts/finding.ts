import type { Provenance } from '@strandwise/core'

/** Best to worst. */
export const verdicts = ['sound', 'caution', 'cannot tell', 'unsound', 'refused'] as const
/** How a finding, a section or a plan comes out, from sound to refused. */
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

/** What was found, as data: a stable code, the figures it speaks with, the trade rule it rests on, and its sentence in the job's units. */
export interface Finding {
  readonly code: string
  readonly verdict: PlanVerdict
  readonly values: Readonly<Record<string, PlanValue>>
  /** Words that its sentence names beside the figures: a wire size, a place, a tool. */
  readonly names?: Readonly<Record<string, string>>
  readonly rule?: string
  readonly sources: readonly Provenance[]
  readonly text: string
}

/** A core function with the inputs it ran on: what `explain` shows. */
export interface PlanWorking {
  readonly id: string
  readonly inputs: Readonly<Record<string, unknown>>
}

/** One section of a plan: what it found, its verdict, its findings worst first, its numbers, the formulas that ran, and the sources. */
export interface PlanSection {
  readonly id: SectionId
  readonly title: string
  /** What it found, in at most 60 characters. */
  readonly says: string
  /** The worst finding's. */
  readonly verdict: PlanVerdict
  readonly findings: readonly Finding[]
  readonly values: readonly PlanValue[]
  readonly workings: readonly PlanWorking[]
  readonly sources: readonly Provenance[]
}

/** A tool, sleeve, barrel, wire or fuse that was weighed. */
export interface PlanOption {
  readonly of: 'tool' | 'sleeve' | 'barrel' | 'wire' | 'fuse'
  readonly name: string
  readonly verdict: PlanVerdict
  readonly reasons: readonly string[]
}

/** One step of the work, and what shows that it is right. */
export interface PlanStep {
  readonly code: string
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

/** Provenance of what the models of core computed. */
export const derived: Provenance = { status: 'derived', source: 'computed by the models named in the workings' }

/** A value with its unit; computed unless it says otherwise. */
export function planValue(
  name: string,
  value: number,
  unit: string,
  provenance: Provenance = derived,
  band?: { readonly low: number; readonly high: number },
): PlanValue {
  return { name, value, unit, ...(band === undefined ? {} : { low: band.low, high: band.high }), provenance }
}
