export { type CurrentPicture, currentCurve } from './currentCurve.ts'
export { type HeatingCurve, type HeatingPicture, heatingCurves } from './heatingCurves.ts'
export { type JointPicture, jointPicture, type LayerPicture } from './jointPicture.ts'
