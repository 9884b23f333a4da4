import { requirePositive, UnknownEntryError } from '../errors/index.ts'
import { type FusePoint, type FuseSeries, fuseBands } from '../tables/index.ts'
import { bandOfRating } from './fuseBand.ts'

/**
 * The operating-time band of one rating of a series of fuses.
 *
 * @equation row of fuseBands
 * @symbol series - series - 1 - standard with its type letter
 * @symbol I_r - ratedA - A - rating of the fuse
 * @symbol band - result - s - shortest and longest time by multiple of the rating
 * @domain ratedA: above 0
 * @throws DomainError outside the domain
 * @throws UnknownEntryError for a series or a rating that the table does not hold, with those that it does
 * @example
 * fuseBandOf({ series: 'ISO 8820-3', ratedA: 40 }) // [{ multiple: 1, shortestS: 360000 }, { multiple: 1.35, shortestS: 0.75, longestS: 600 }, { multiple: 2, longestS: 5 }, { multiple: 3.5, longestS: 0.5 }, { multiple: 6, longestS: 0.15 }]
 * @source fuseBands
 */
export function fuseBandOf(i: { readonly series: keyof typeof fuseBands; readonly ratedA: number }): readonly FusePoint[] {
  const series: FuseSeries | undefined = Object.hasOwn(fuseBands, i.series) ? fuseBands[i.series] : undefined
  if (series === undefined) throw new UnknownEntryError('series', i.series, Object.keys(fuseBands))
  if (!series.ratingsA.includes(requirePositive('ratedA', i.ratedA))) throw new UnknownEntryError('ratedA', i.ratedA, series.ratingsA.map(String))
  return bandOfRating(series, i.ratedA)
}
