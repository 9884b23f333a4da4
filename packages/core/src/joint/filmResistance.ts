import { requireFiniteResult, requireNotNegative, requirePositive } from '../errors/index.ts'

/** Square millimetres in a square metre. */
const mm2PerM2 = 1e6

/**
 * Resistance of an even tarnish film over the real contact area.
 *
 * @equation R_f = sigma/A
 * @symbol sigma - filmOhmM2 - ohm m2 - resistance of a unit of area of the film
 * @symbol A - areaMm2 - mm2 - area that touches, far below the area that seems to
 * @symbol R_f - result - ohm - resistance of the film, in series with the constriction
 * @domain filmOhmM2: at least 0
 * @domain areaMm2: above 0
 * @throws DomainError outside the domain
 * @example
 * filmResistanceOhm({ filmOhmM2: 1e-11, areaMm2: 0.02 }) // 0.0005
 * @source Holm, Electric Contacts, 1967 (from memory)
 */
export function filmResistanceOhm(i: { readonly filmOhmM2: number; readonly areaMm2: number }): number {
  const σ = requireNotNegative('filmOhmM2', i.filmOhmM2)
  const A = requirePositive('areaMm2', i.areaMm2)
  return requireFiniteResult('areaMm2', A, (σ / A) * mm2PerM2)
}
