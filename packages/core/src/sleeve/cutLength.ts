import { requireFiniteResult, requireNotNegative } from '../errors/index.ts'
import type { Interval } from '../materials/index.ts'
import { requireChange } from './requireSleeve.ts'

/**
 * How long to cut a heat-shrink tube so that it still covers the joint and its overlaps when it has changed length.
 *
 * @equation L = (L_j + 2 o)/(1 + s)
 * @symbol L_j - jointMm - mm - length of the bare joint, from one cut edge of insulation to the other
 * @symbol o - overlapEachSideMm - mm - cover past each edge, after shrinking
 * @symbol s - longitudinalChange - 1 - change of length in shrinking as a signed share, -0.1 is 10 % shorter; of a range the low end
 * @symbol L - result - mm - length to cut
 * @domain jointMm: at least 0
 * @domain overlapEachSideMm: at least 0
 * @domain longitudinalChange: above -1
 * @domain longitudinalChange.low: above -1
 * @domain longitudinalChange.high: above -1
 * @throws DomainError outside the domain
 * @example
 * cutLengthMm({ jointMm: 12, overlapEachSideMm: 12, longitudinalChange: { low: -0.1, high: 0.05 } }) // 40
 * @example
 * cutLengthMm({ jointMm: 12, overlapEachSideMm: 12, longitudinalChange: -0.1 }) // 40
 * @source derived: length after shrinking is length before times one plus the change, as sleeving specifications define the change
 */
export function cutLengthMm(i: { readonly jointMm: number; readonly overlapEachSideMm: number; readonly longitudinalChange: number | Interval }): number {
  const L_j = requireNotNegative('jointMm', i.jointMm)
  const o = requireNotNegative('overlapEachSideMm', i.overlapEachSideMm)
  const s = requireChange('longitudinalChange', i.longitudinalChange).low
  return requireFiniteResult('jointMm', L_j, (L_j + 2 * o) / (1 + s))
}
