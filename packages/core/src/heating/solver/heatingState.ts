import type { EdgeStep } from './edgeStep.ts'
import type { HeatingRecord } from './heatingRecord.ts'
import type { HeatedWire } from './heatingWires.ts'
import type { HeatingStep } from './stepState.ts'
import type { StepTable } from './stepTable.ts'

/** A run that is under way. */
export interface HeatingState {
  readonly step: HeatingStep
  readonly record: HeatingRecord
  wires: readonly HeatedWire[]
  /** Each wire's edge within the step in hand. */
  edges: readonly EdgeStep[]
  /** The tables of the step in hand, one a wire. */
  readonly tables: StepTable[]
  /** Error allowed within a step. */
  readonly toleranceK: number
  /** The next step lasts 2^level seconds. */
  level: number
  nowS: number
  toolOn: boolean
  /** Integral of the joint's rise since the modes last changed, and when that was. */
  riseKS: number
  sinceS: number
  /** The modes at that time. */
  readonly atChange: readonly Float64Array[]
  /** Room for the modes at a step's end. */
  readonly next: readonly Float64Array[]
  lossJ: number
  heatInJ: number
}
