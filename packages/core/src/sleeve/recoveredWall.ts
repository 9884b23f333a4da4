import { DomainError, requireFiniteResult, requirePositive } from '../errors/index.ts'

/**
 * The wall of a heat-shrink tube that has shrunk onto a core instead of all the way: the thicker the core, the thinner the wall.
 *
 * The volume of the wall is kept and its change of length on the core is taken as that of free recovery; the 1 to 2 % by which it gets denser on cooling is left out.
 *
 * @equation w_D = [-D + sqrt(D^2 + 4 (ID_r + w_r) w_r)]/2
 * @symbol D - ontoMm - mm - diameter of the core, at least the recovered inside
 * @symbol ID_r - recoveredInsideMm - mm - inside after free recovery
 * @symbol w_r - recoveredWallMm - mm - wall after free recovery
 * @symbol w_D - result - mm - wall on the core
 * @domain recoveredWallMm: above 0
 * @domain recoveredInsideMm: above 0
 * @domain ontoMm: above 0
 * @throws DomainError outside the domain, or where ontoMm is below recoveredInsideMm: there the tube hangs loose
 * @example
 * recoveredWallMm({ recoveredWallMm: 1, recoveredInsideMm: 2, ontoMm: 4 }) // 0.6458
 * @source derived: kept volume of an incompressible wall; published guidance says only that the wall follows the degree of recovery
 */
export function recoveredWallMm(i: { readonly recoveredWallMm: number; readonly recoveredInsideMm: number; readonly ontoMm: number }): number {
  const w_r = requirePositive('recoveredWallMm', i.recoveredWallMm)
  const ID_r = requirePositive('recoveredInsideMm', i.recoveredInsideMm)
  const D = requirePositive('ontoMm', i.ontoMm)
  if (D < ID_r) throw new DomainError('ontoMm', D, `at least recoveredInsideMm, ${ID_r}`)
  // The root in a form without cancellation, exact even for a thick core.
  const s = requireFiniteResult('recoveredWallMm', w_r, 2 * Math.sqrt(ID_r + w_r) * Math.sqrt(w_r))
  return requireFiniteResult('ontoMm', D, (s * (s / (D + Math.hypot(D, s)))) / 2)
}
