import type { Provenance } from '@strandwise/core'

/** From best to worst. */
export const verdicts = ['sound', 'caution', 'cannot tell', 'unsound', 'refused'] as const
/** Verdict of a finding, a section or a plan. */
export type PlanVerdict = (typeof verdicts)[number]

export const sectionIds = ['readings', 'wire-and-protection', 'cut-back', 'method', 'joint', 'heating', 'covering', 'strain-relief', 'proof'] as const
/** The nine sections of a plan by name, in their order. */
export type SectionId = (typeof sectionIds)[number]

/** A number of the plan with unit, band if any, and provenance. */
export interface PlanValue {
  readonly name: string
  readonly value: number
  readonly unit: string
  readonly low?: number
  readonly high?: number
  readonly provenance: Provenance
}

/** A finding as data: a stable code, its values, its trade rule, and its sentence in the job's units. */
export interface Finding {
  readonly code: string
  readonly verdict: PlanVerdict
  readonly values: Readonly<Record<string, PlanValue>>
  /** Words in its sentence beside the values: a wire size, a place, a tool. */
  readonly names?: Readonly<Record<string, string>>
  readonly rule?: string
  readonly sources: readonly Provenance[]
  readonly text: string
}

/** A core function with its inputs, for `explain`. */
export interface PlanWorking {
  readonly id: string
  /** Name of the section's value that it computes, as the result or a step; absent if it feeds another working. */
  readonly gives?: string
  readonly inputs: Readonly<Record<string, unknown>>
}

/** One section of a plan: heading, verdict, findings worst first, values, formulas used, and sources. */
export interface PlanSection {
  readonly id: SectionId
  readonly title: string
  /** Heading, at most 60 characters. */
  readonly says: string
  /** That of the worst finding. */
  readonly verdict: PlanVerdict
  readonly findings: readonly Finding[]
  readonly values: readonly PlanValue[]
  readonly workings: readonly PlanWorking[]
  readonly sources: readonly Provenance[]
}

/** A tool, sleeve, barrel, wire or fuse that was considered. */
export interface PlanOption {
  readonly of: 'tool' | 'sleeve' | 'barrel' | 'wire' | 'fuse'
  readonly name: string
  readonly verdict: PlanVerdict
  readonly reasons: readonly string[]
}

/** One step of the work, and the check that it is right. */
export interface PlanStep {
  readonly code: string
  readonly text: string
  readonly values: readonly PlanValue[]
  readonly check: string
}

/** A part to fetch before beginning. */
export interface PlanPart {
  readonly name: string
  readonly quantity: number
  readonly unit: string
}

/** Provenance of values computed by core's models. */
export const derived: Provenance = { status: 'derived', source: 'computed by the models named in the workings' }

/** A value with its unit; its provenance is `derived` by default. */
export function planValue(
  name: string,
  value: number,
  unit: string,
  provenance: Provenance = derived,
  band?: { readonly low: number; readonly high: number },
): PlanValue {
  return { name, value, unit, ...(band === undefined ? {} : { low: band.low, high: band.high }), provenance }
}
