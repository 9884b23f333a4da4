import type { RepairJob } from '../job/index.ts'
import { planInParts, type RepairPlan, rulesTold } from '../report/index.ts'
import type { DecidedJoint } from './jointPicture.ts'
import { type PlanCurves, picturedCurves } from './picturedCurves.ts'
import { picturedJoint } from './picturedJoint.ts'

/** The pictures of a plan as numbers. */
export interface PlanPictures extends PlanCurves {
  /** The chosen joint; null if nothing is joined. */
  readonly joint: DecidedJoint | null
}

/**
 * The plan of a job and its pictures in one pass, so that nothing is computed twice. The pictures are null if the job is refused.
 *
 * @throws JobError where the job is not one that parseRepairJob would return
 * @example
 * planWithPictures(trailerTailLamp) // { plan: { verdict: 'sound' }, pictures: { joint: { form: 'barrel' } } }
 */
export function planWithPictures(job: RepairJob): { readonly plan: RepairPlan; readonly pictures: PlanPictures | null } {
  const parts = planInParts(job)
  const curves = picturedCurves(parts)
  return { plan: { ...parts.plan, rules: rulesTold(parts) }, pictures: curves === null ? null : { joint: picturedJoint(parts), ...curves } }
}
