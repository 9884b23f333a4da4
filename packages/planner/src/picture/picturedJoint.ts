import type { PlanInParts } from '../report/index.ts'
import { type DecidedJoint, decidedJoint } from './jointPicture.ts'

/**
 * The chosen joint of a plan, as it is drawn; null if nothing is joined or the job is refused.
 *
 * @throws nothing
 * @example
 * picturedJoint(planInParts(trailerTailLamp)) // { form: 'barrel' }
 */
export function picturedJoint({ worked }: PlanInParts): DecidedJoint | null {
  return worked === null ? null : decidedJoint(worked)
}
