import { jointSide } from '../../drawings/jointSide.ts'
import type { LessonPicture } from '../lesson/lesson.ts'

/** A soldered lap from the side, to scale, with one outside diameter of bare wire on each side; with isAsked the overlap is a question mark. */
export function lapSide(conductorMm: number, wallMm: number, overlapMm: number, isAsked = false): LessonPicture {
  const outsideMm = conductorMm + 2 * wallMm
  return jointSide(
    {
      kind: 'lap',
      conductorMm,
      outsideMm,
      jointMm: overlapMm,
      stubMm: outsideMm,
      barrelMm: outsideMm,
      layers: [],
      strandMm: 0,
      strands: [],
      housingHoleMm: null,
    },
    isAsked,
  )
}
