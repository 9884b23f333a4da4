import type { JointPicture } from '@strandwise/planner/picture'
import { jointSide } from '../../drawings/jointSide.ts'
import { diameterMm, overlapMm } from './inCode.ts'

/** Wall of common PVC on a wire of 1 mm². */
const wallMm = 0.6
const outsideMm = diameterMm + 2 * wallMm

/** Bare wire of one outside diameter on each side, as the rule of the gap asks. */
const lap: JointPicture = {
  kind: 'lap',
  conductorMm: diameterMm,
  outsideMm,
  jointMm: overlapMm,
  stubMm: outsideMm,
  barrelMm: outsideMm,
  layers: [],
  strandMm: 0,
  strands: [],
  housingHoleMm: null,
}

/** The lap of the lesson from the side, to scale, its overlap still asked for. */
export const asked = jointSide(lap, true)
/** The same with the overlap that is made. */
export const made = jointSide(lap)
