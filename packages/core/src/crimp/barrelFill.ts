import { DomainError, requireFiniteResult, requirePositive } from '../errors/index.ts'

/**
 * Metal area of the conductors over the area of a barrel's bore; above 1 they cannot fit.
 *
 * Round strands leave voids: even a bundle that just slides in is well below 1.
 *
 * @equation f = sum(A)/(pi d^2/4)
 * @symbol A - conductorAreasMm2 - mm2 - metal area of each conductor in the barrel
 * @symbol d - barrelInsideMm - mm - bore of the barrel
 * @symbol f - result - 1 - metal area over bore area
 * @domain conductorAreasMm2.0: above 0
 * @domain barrelInsideMm: above 0
 * @throws DomainError outside the domain, and for an empty list
 * @example
 * barrelFill({ conductorAreasMm2: [1, 0.75], barrelInsideMm: 1.9 }) // 0.61722
 * @source definition; area of a circle
 */
export function barrelFill(i: { readonly conductorAreasMm2: readonly number[]; readonly barrelInsideMm: number }): number {
  const { conductorAreasMm2 } = i
  const d = requirePositive('barrelInsideMm', i.barrelInsideMm)
  if (!Array.isArray(conductorAreasMm2) || conductorAreasMm2.length === 0) {
    throw new DomainError(
      'conductorAreasMm2',
      conductorAreasMm2,
      'at least one area in mm2',
      undefined,
      conductorAreasMm2 === undefined ? 'missing' : 'wrong-choice',
    )
  }
  let metalMm2 = 0
  for (let k = 0; k < conductorAreasMm2.length; k += 1) metalMm2 += requirePositive(`conductorAreasMm2.${k}`, conductorAreasMm2[k])
  return requireFiniteResult('barrelInsideMm', d, metalMm2 / ((Math.PI / 4) * d * d))
}
