import { DomainError, requireFiniteResult, requirePositive } from '../errors/index.ts'
import { requireInsides } from './requireSleeve.ts'

/** Whether a tube slides on and grips, with the margins. */
export interface SleeveFit {
  readonly slidesOver: boolean
  readonly grips: boolean
  readonly marginSupplied: number
  readonly marginRecovered: number
  readonly unresolvedOfRecovered: number
  readonly unresolvedOfRange: number
}

/**
 * Whether a tube slides over the largest thing in its way and grips the smallest thing that it must hold, and how much shrink is left unused there.
 *
 * A negative margin is the fraction by which it fails. Unused shrink is given in both usual measures: relative to the recovered inside, and to the whole shrink from supplied to recovered. Much unused shrink means a thin wall under tension that may split at an edge.
 *
 * @equation m_e = ID_e/D_max - 1; m_r = D_min/ID_r - 1; u_r = (D_min - ID_r)/ID_r; u_t = (D_min - ID_r)/(ID_e - ID_r)
 * @symbol ID_e - suppliedInsideMm - mm - inside as supplied
 * @symbol ID_r - recoveredInsideMm - mm - inside after free recovery
 * @symbol D_max - largestMm - mm - largest diameter that it must pass over
 * @symbol D_min - smallestMm - mm - smallest diameter that it must grip
 * @symbol m_e - result.marginSupplied - 1 - margin of sliding over; above 0 it slides
 * @symbol m_r - result.marginRecovered - 1 - margin of gripping; above 0 it grips
 * @symbol u_r - result.unresolvedOfRecovered - 1 - shrink left, of the recovered inside
 * @symbol u_t - result.unresolvedOfRange - 1 - shrink left, of the range
 * @domain suppliedInsideMm: above 0
 * @domain recoveredInsideMm: above 0
 * @domain largestMm: above 0
 * @domain smallestMm: above 0
 * @throws DomainError outside the domain, where smallest is above largest, or where the tube would not shrink
 * @example
 * fitSleeve({ suppliedInsideMm: 6, recoveredInsideMm: 2, largestMm: 5, smallestMm: 2.5 }) // { slidesOver: true, grips: true, marginSupplied: 0.2, marginRecovered: 0.25, unresolvedOfRange: 0.125 }
 * @source NASA-STD-8739.4, 2011 change 6, para 9.8.1 for the rule; both measures of unresolved shrink are common practice
 */
export function fitSleeve(i: {
  readonly suppliedInsideMm: number
  readonly recoveredInsideMm: number
  readonly largestMm: number
  readonly smallestMm: number
}): SleeveFit {
  requireInsides('', i.suppliedInsideMm, i.recoveredInsideMm)
  const ID_e = i.suppliedInsideMm
  const ID_r = i.recoveredInsideMm
  const D_max = requirePositive('largestMm', i.largestMm)
  const D_min = requirePositive('smallestMm', i.smallestMm)
  if (D_min > D_max) throw new DomainError('smallestMm', D_min, `at most largestMm, ${D_max}`, undefined, 'contradiction')
  const unresolved = requireFiniteResult('smallestMm', D_min, (D_min - ID_r) / ID_r)
  return {
    slidesOver: ID_e > D_max,
    grips: ID_r < D_min,
    marginSupplied: requireFiniteResult('suppliedInsideMm', ID_e, ID_e / D_max - 1),
    marginRecovered: requireFiniteResult('smallestMm', D_min, D_min / ID_r - 1),
    unresolvedOfRecovered: unresolved,
    unresolvedOfRange: requireFiniteResult('smallestMm', D_min, (D_min - ID_r) / (ID_e - ID_r)),
  }
}
