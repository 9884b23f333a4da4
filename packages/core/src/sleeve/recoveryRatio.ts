import { DomainError, requireFiniteResult, requirePositive } from '../errors/index.ts'

/**
 * How many times narrower a heat-shrink tube becomes when nothing stops it: the "2" of a 2:1 tube.
 *
 * Free recovery: nothing inside holds the sleeve open.
 *
 * @equation n = ID_e/ID_r
 * @symbol ID_e - suppliedInsideMm - mm - inside as supplied, expanded
 * @symbol ID_r - recoveredInsideMm - mm - inside after free recovery, at most the supplied
 * @symbol n - result - 1 - recovery ratio
 * @domain suppliedInsideMm: above 0
 * @domain recoveredInsideMm: above 0
 * @throws DomainError outside the domain, or where the tube would recover to more than it was supplied at
 * @example
 * recoveryRatio({ suppliedInsideMm: 9, recoveredInsideMm: 3 }) // 3
 * @source definition; the classes of EN 4708-101 are 2:1, 3:1 and 4:1
 */
export function recoveryRatio(i: { readonly suppliedInsideMm: number; readonly recoveredInsideMm: number }): number {
  const ID_e = requirePositive('suppliedInsideMm', i.suppliedInsideMm)
  const ID_r = requirePositive('recoveredInsideMm', i.recoveredInsideMm)
  if (ID_r > ID_e) throw new DomainError('recoveredInsideMm', ID_r, `at most suppliedInsideMm, ${ID_e}`, undefined, 'contradiction')
  return requireFiniteResult('recoveredInsideMm', ID_r, ID_e / ID_r)
}
