import type { MethodName } from '@strandwise/core'
import type { Finding, JobFacts, PlanOption, PlanSection, PlanVerdict } from '../facts/inner.ts'
import type { Covering } from './coveringSection.ts'
import type { CutBack } from './cutBack.ts'
import type { ToolHeat } from './heatTool.ts'
import type { JointLimits } from './jointGround.ts'

/** A way to mend, judged in full, its best variant; its sections are those that depend on it. */
export interface Way {
  readonly method: MethodName
  readonly meant: boolean
  readonly chosen: boolean
  readonly verdict: PlanVerdict
  /** The finding that decides for or against it. */
  readonly decides: Finding
  readonly sections: readonly PlanSection[]
}

/** A way with what the steps, the parts and the pictures are made from. */
export interface JudgedWay {
  readonly method: MethodName
  readonly meant: boolean
  /** Of the wire that it uses. */
  readonly facts: JobFacts
  readonly verdict: PlanVerdict
  readonly decides: Finding
  readonly sections: readonly PlanSection[]
  /** The same with what would make its heat sound: reckoned where it is shown. */
  readonly advised: () => readonly PlanSection[]
  readonly options: readonly PlanOption[]
  readonly cut: CutBack
  /** null where nothing is joined. */
  readonly limits: JointLimits | null
  readonly covering: Covering
  /** The tool that does best; null where nothing is soldered or no tool can be reckoned. */
  readonly heat: ToolHeat | null
  readonly heatAll: readonly ToolHeat[]
  readonly toFetch: readonly string[]
  /** How it ranks, in the order of `rankNames`: lower is better. */
  readonly rank: readonly number[]
}
