import type { PlanInParts } from '../report/index.ts'
import { type CurrentPicture, decidedCurrents } from './currentCurve.ts'
import { decidedHeating, type HeatingPicture } from './heatingCurves.ts'

/** Curves behind a plan: heating of the soldered way shown, and current of the wire. */
export interface PlanCurves {
  /** null if nothing is soldered, no tool is named, or the heating cannot be computed. */
  readonly heating: HeatingPicture | null
  readonly currents: CurrentPicture
}

/**
 * The curves behind a plan: heating and current; null if the job is refused.
 *
 * @throws nothing
 * @example
 * picturedCurves(planInParts(trailerTailLamp)) // { heating: null }
 */
export function picturedCurves({ worked }: PlanInParts): PlanCurves | null {
  return worked === null ? null : { heating: decidedHeating(worked), currents: decidedCurrents(worked) }
}
