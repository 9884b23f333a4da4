export type { CurrentPicture } from './currentCurve.ts'
export type { HeatingCurve, HeatingPicture } from './heatingCurves.ts'
export type { DecidedJoint, JointPicture, LayerPicture } from './jointPicture.ts'
export { type PlanPictures, planWithPictures } from './planWithPictures.ts'
