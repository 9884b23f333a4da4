import type { Provenance } from '@strandwise/core'
import type { Decision } from '../decision/index.ts'
import type { Diagnosis } from '../diagnosis/index.ts'
import type { PlanOption, PlanPart, PlanSection, PlanStep, PlanVerdict } from '../facts/index.ts'
import type { PlanAssumption } from '../job/index.ts'
import type { Way } from '../ways/index.ts'
import type { RulesTold } from './rulesTold.ts'

/** The plan of a repair: decision, reasons, steps, parts, and alternatives considered. */
export interface RepairPlan {
  readonly version: 2
  readonly title: string | null
  readonly units: 'metric' | 'inch' | 'both'
  readonly decision: Decision
  /** Verdict on the repair as decided: its state once the steps are done. */
  readonly verdict: PlanVerdict
  /** Cautions for this job, each once. */
  readonly cautions: readonly string[]
  readonly diagnosis: Diagnosis
  /** Nine sections of the chosen way; only readings, wire-and-protection and proof if nothing is joined; none if refused. */
  readonly sections: readonly PlanSection[]
  /** Best first, the chosen one at the head; none for leave it, measure first, refused. */
  readonly ways: readonly Way[]
  readonly assumptions: readonly PlanAssumption[]
  readonly options: readonly PlanOption[]
  readonly sequence: readonly PlanStep[]
  readonly parts: readonly PlanPart[]
  /** Rules of the trade that hold for this job, by topic, binding ones first. */
  readonly rules: readonly RulesTold[]
  readonly tables: readonly Provenance[]
}

/** A plan without the rules of the trade that stand under its sections: enough for card, cautions, steps and findings. */
export type PlanBeforeRules = Omit<RepairPlan, 'rules'>
