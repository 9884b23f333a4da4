import { DomainError, requirePositive } from '../errors/index.ts'
import type { FusePoint, FuseSeries } from '../tables/index.ts'

/** Relative difference below which two currents are equal, so that rounding does not move a fuse off its own point. */
export const sameCurrentShare = 1e-12

/** Requires points with rising multiples, times above 0 or null, the shortest never after the longest. */
export function requireBand(band: readonly FusePoint[]): void {
  const allowed = 'at least one point, multiples rising'
  if (!Array.isArray(band) || band.length === 0) throw new DomainError('band', band, allowed, undefined, band === undefined ? 'missing' : 'wrong-choice')
  let before = 0
  for (let k = 0; k < band.length; k += 1) {
    const point: FusePoint = band[k]
    requirePositive(`band.${k}.multiple`, point?.multiple)
    if (!(point.multiple > before))
      throw new DomainError(`band.${k}.multiple`, point.multiple, `above ${before}, the multiple before it`, undefined, 'contradiction')
    before = point.multiple
    if (point.shortestS !== null) requirePositive(`band.${k}.shortestS`, point.shortestS)
    if (point.longestS !== null) requirePositive(`band.${k}.longestS`, point.longestS)
    if (point.longestS !== null && !((point.shortestS ?? Infinity) <= point.longestS)) {
      throw new DomainError(`band.${k}.shortestS`, point.shortestS, `at most longestS, ${point.longestS}`, undefined, 'contradiction')
    }
  }
}

/** Time of one edge of the band at a multiple of the rating; null means never. */
export function openingTimeS(band: readonly FusePoint[], edge: 'shortestS' | 'longestS', multiple: number): number | null {
  let before: FusePoint | null = null
  for (const point of band) {
    if (Math.abs(multiple - point.multiple) <= sameCurrentShare * point.multiple) return point[edge]
    if (multiple < point.multiple) return before === null ? null : between(before.multiple, before[edge], point.multiple, point[edge], multiple)
    before = point
  }
  return before === null ? null : before[edge]
}

/** Linear interpolation of log(time) against log(multiple). */
function between(lowMultiple: number, lowS: number | null, highMultiple: number, highS: number | null, multiple: number): number | null {
  if (lowS === null || highS === null) return null
  const from = Math.log(lowMultiple)
  const share = (Math.log(multiple) - from) / (Math.log(highMultiple) - from)
  return Math.exp(Math.log(lowS) + (Math.log(highS) - Math.log(lowS)) * share)
}

/** Smallest multiple from which the fuse is sure to open. */
export function sureMultiple(band: readonly FusePoint[]): number {
  let sure: number | null = null
  for (const { multiple, longestS } of band) {
    if (longestS === null) sure = null
    else sure ??= multiple
  }
  if (sure === null) throw new DomainError('band', band, 'a band whose last point is sure to open', undefined, 'out-of-range')
  return sure
}

/** The band of one rating of a series. */
export function bandOfRating({ band, ownBands }: FuseSeries, ratedA: number): readonly FusePoint[] {
  return ownBands?.find(({ ratingsA }) => ratingsA.includes(ratedA))?.band ?? band
}
