import type { HeatModel, HeatSource } from '../heatModel.ts'
import type { Lump } from './lump.ts'
import type { WireModes } from './wireModes.ts'

/** Everything that one step needs, and what it finds; one object serves a whole run. */
export interface HeatingStep {
  readonly model: HeatModel
  source: HeatSource
  limited: boolean
  readonly joint: Lump
  /** The tool's own mass, or null. */
  body: Lump | null
  modes: readonly WireModes[]
  /** Modes' values at the start, one list a wire. */
  readonly values: Float64Array[]
  /** Half elements of the wires that sit on the joint. */
  jointStoreJPerK: number
  /** Admittance and drive of all tails as the joint sees them. */
  admittanceWPerK: number
  drivenW: number
  // Found by solveStep: rises at the first stage and the end, and what moves there (the rise or, on a plateau, the share).
  joint1: number
  joint2: number
  jointMoves1: number
  jointMoves2: number
  body1: number
  body2: number
  bodyMoves1: number
  bodyMoves2: number
  heatInJ: number
  surfaceJ: number
  /** Estimate of the largest error of the joint's rise within the step, in K. */
  errorK: number
  readonly matrix: Float64Array
  readonly right: Float64Array
  readonly flows1: Float64Array
  readonly flows2: Float64Array
}

/** A step of a run that begins with these lumps; the wires are linked to it later. */
export function newStep(model: HeatModel, joint: Lump, body: Lump | null, limited: boolean, values: Float64Array[]): HeatingStep {
  return {
    model,
    source: model.source,
    limited,
    joint,
    body,
    modes: [],
    values,
    jointStoreJPerK: 0,
    admittanceWPerK: 0,
    drivenW: 0,
    joint1: 0,
    joint2: 0,
    jointMoves1: 0,
    jointMoves2: 0,
    body1: 0,
    body2: 0,
    bodyMoves1: 0,
    bodyMoves2: 0,
    heatInJ: 0,
    surfaceJ: 0,
    errorK: 0,
    matrix: new Float64Array(16),
    right: new Float64Array(4),
    flows1: new Float64Array(8),
    flows2: new Float64Array(8),
  }
}
