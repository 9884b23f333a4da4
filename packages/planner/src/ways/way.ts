import type { MethodName } from '@strandwise/core'
import type { Finding, JobFacts, PlanOption, PlanSection, PlanVerdict } from '../facts/inner.ts'
import type { Covering } from './coveringSection.ts'
import type { CutBack } from './cutBack.ts'
import type { ToolHeat } from './heatTool.ts'
import type { JointLimits } from './jointGround.ts'

/** A judged way to mend, in its best variant, with the sections that depend on it. */
export interface Way {
  readonly method: MethodName
  readonly meant: boolean
  readonly chosen: boolean
  readonly verdict: PlanVerdict
  /** The deciding finding, for or against. */
  readonly decides: Finding
  readonly sections: readonly PlanSection[]
}

/** A way with the data for steps, parts and pictures. */
export interface JudgedWay {
  readonly method: MethodName
  readonly meant: boolean
  /** Facts of the wire that it uses. */
  readonly facts: JobFacts
  readonly verdict: PlanVerdict
  readonly decides: Finding
  readonly sections: readonly PlanSection[]
  /** The sections with advice on heating, computed when shown. */
  readonly advised: () => readonly PlanSection[]
  readonly options: readonly PlanOption[]
  readonly cut: CutBack
  /** null if nothing is joined. */
  readonly limits: JointLimits | null
  readonly covering: Covering
  /** The best tool; null if nothing is soldered or no tool can be computed. */
  readonly heat: ToolHeat | null
  readonly heatAll: readonly ToolHeat[]
  readonly toFetch: readonly string[]
  /** Values of the criteria in `rankNames`; lower is better. */
  readonly rank: readonly number[]
}
