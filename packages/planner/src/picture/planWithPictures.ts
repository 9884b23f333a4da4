import { parseRepairJob, type RepairJob } from '../job/index.ts'
import type { RepairPlan } from '../report/index.ts'
import { planOf } from '../report/inner.ts'
import { type CurrentPicture, decidedCurrents } from './currentCurve.ts'
import { decidedHeating, type HeatingPicture } from './heatingCurves.ts'
import { type DecidedJoint, decidedJoint } from './jointPicture.ts'

/** The pictures of a plan as numbers. */
export interface PlanPictures {
  /** The chosen joint; null if nothing is joined. */
  readonly joint: DecidedJoint | null
  /** null if nothing is soldered, no tool is named, or the heating cannot be computed. */
  readonly heating: HeatingPicture | null
  readonly currents: CurrentPicture
}

/**
 * The plan of a job and its pictures in one pass, so that nothing is computed twice. The pictures are null if the job is refused.
 *
 * @throws JobError where the job is not one that parseRepairJob would return
 * @example
 * planWithPictures(trailerTailLamp) // { plan: { verdict: 'sound' }, pictures: { joint: { kind: 'barrel' } } }
 */
export function planWithPictures(job: RepairJob): { readonly plan: RepairPlan; readonly pictures: PlanPictures | null } {
  const { plan, worked } = planOf(parseRepairJob(job))
  if (worked === null) return { plan, pictures: null }
  return { plan, pictures: { joint: decidedJoint(worked), heating: decidedHeating(worked), currents: decidedCurrents(worked) } }
}
