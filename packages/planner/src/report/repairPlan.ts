import type { Provenance } from '@strandwise/core'
import type { Decision } from '../decision/index.ts'
import type { Diagnosis } from '../diagnosis/index.ts'
import type { PlanOption, PlanPart, PlanSection, PlanStep, PlanVerdict } from '../facts/index.ts'
import type { PlanAssumption } from '../job/index.ts'
import type { Way } from '../ways/index.ts'
import type { RulesTold } from './rulesTold.ts'

/** The plan of a repair: what is decided, its grounds, the steps, the parts, and what was weighed. */
export interface RepairPlan {
  readonly version: 2
  readonly title: string | null
  readonly units: 'metric' | 'inch' | 'both'
  readonly decision: Decision
  /** Of the repair as decided: what is left when the steps are done. */
  readonly verdict: PlanVerdict
  /** Of this job, each once. */
  readonly cautions: readonly string[]
  readonly diagnosis: Diagnosis
  /** Nine, of the decided way; readings, wire-and-protection and proof where nothing is joined; none where refused. */
  readonly sections: readonly PlanSection[]
  /** Best first, the chosen one first; none for leave it, measure first, refused. */
  readonly ways: readonly Way[]
  readonly assumptions: readonly PlanAssumption[]
  readonly options: readonly PlanOption[]
  readonly sequence: readonly PlanStep[]
  readonly parts: readonly PlanPart[]
  /** The rules of the trade that hold for this job, by topic, those that bind first. */
  readonly rules: readonly RulesTold[]
  readonly tables: readonly Provenance[]
}
