import { requireFiniteResult, requirePositive } from '../errors/index.ts'

/**
 * Gives the outside radius below which more insulation cools a wire better.
 *
 * The film coefficient is taken as the same at every radius.
 *
 * @equation r_c = k/h
 * @symbol k - insulationConductivityWPerMK - W/(m K) - conductivity of the insulation
 * @symbol h - filmWPerM2K - W/(m2 K) - film coefficient at the surface
 * @symbol r_c - result - mm - critical radius
 * @domain insulationConductivityWPerMK: above 0
 * @domain filmWPerM2K: above 0
 * @throws DomainError outside the domain
 * @example
 * criticalRadiusMm({ insulationConductivityWPerMK: 0.17, filmWPerM2K: 3 }) // 56.67
 * @source Holman, Heat Transfer, critical thickness of insulation
 */
export function criticalRadiusMm(i: { readonly insulationConductivityWPerMK: number; readonly filmWPerM2K: number }): number {
  const k = requirePositive('insulationConductivityWPerMK', i.insulationConductivityWPerMK)
  const h = requirePositive('filmWPerM2K', i.filmWPerM2K)
  return requireFiniteResult('filmWPerM2K', h, (k / h) * 1000)
}
