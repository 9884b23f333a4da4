import { requireFiniteResult, requireNotNegative, requirePositive } from '../errors/index.ts'
import type { FusePoint } from '../tables/index.ts'
import { openingTimeS, requireBand } from './fuseBand.ts'
import { protectionDefaults } from './protectionDefaults.ts'

/**
 * How soon a fuse may open at a current, and how long it may take.
 *
 * Between points, log(time) is linear in log(multiple). Below the first point the fuse never opens; next to a point at which it may never open it may never open either; above the last point the last times hold.
 *
 * @equation m = I/(I_r k); ln t = ln t_1 + (ln t_2 - ln t_1) ln(m/m_1)/ln(m_2/m_1)
 * @symbol I - currentA - A - through the fuse
 * @symbol I_r - ratedA - A - rating of the fuse
 * @symbol k - ambientFactor - 1 - share of the rating left at its ambient
 * @symbol m_1 - band.0.multiple - 1 - points of the operating-time band, as multiples of the rating
 * @symbol t_1 - band.0.shortestS - s - soonest it may open at that point; null is never
 * @symbol t_2 - band.0.longestS - s - latest it opens at that point; null is never
 * @symbol t - result - s - shortest and longest time, null is never
 * @domain ratedA: above 0
 * @domain optional ambientFactor: above 0
 * @domain band.0.multiple: above 0
 * @domain optional band.0.shortestS: above 0
 * @domain optional band.0.longestS: above 0
 * @domain currentA: at least 0
 * @throws DomainError outside the domain, and for a band that is empty, does not rise or opens at the latest before it does at the soonest
 * @example
 * fuseOpeningS({ ratedA: 10, ambientFactor: 0.95, band: [{ multiple: 1.35, shortestS: 0.75, longestS: 600 }, { multiple: 2, shortestS: 0.15, longestS: 5 }], currentA: 15.2 }) // { shortestS: 0.374042, longestS: 75.7515 }
 * @source log-log interpolation between the points of an operating-time band
 */
export function fuseOpeningS(i: { readonly ratedA: number; readonly ambientFactor?: number; readonly band: readonly FusePoint[]; readonly currentA: number }): {
  readonly shortestS: number | null
  readonly longestS: number | null
} {
  const { ambientFactor = protectionDefaults.ambientFactor, band } = i
  const atAmbientA = requirePositive('ratedA', i.ratedA) * requirePositive('ambientFactor', ambientFactor)
  requireBand(band)
  const multiple = requireFiniteResult('currentA', i.currentA, requireNotNegative('currentA', i.currentA) / atAmbientA)
  return { shortestS: openingTimeS(band, 'shortestS', multiple), longestS: openingTimeS(band, 'longestS', multiple) }
}
