import { DomainError, requireFiniteResult, requirePositive } from '../errors/index.ts'

/**
 * Gives the thermal resistance of a metre of round insulation, from the conductor to its outside.
 *
 * Heat flows straight outwards.
 *
 * @equation R = ln(D/d)/(2 pi k)
 * @symbol d - conductorDiameterMm - mm - inside diameter of the wall
 * @symbol D - outsideDiameterMm - mm - outside diameter of the wall, at least the inside one
 * @symbol k - conductivityWPerMK - W/(m K) - conductivity of the wall
 * @symbol R - result - m K/W - thermal resistance of one metre
 * @domain conductorDiameterMm: above 0
 * @domain outsideDiameterMm: above 0
 * @domain conductivityWPerMK: above 0
 * @throws DomainError outside the domain, and where the outside is below the inside
 * @example
 * insulationResistanceMKPerW({ conductorDiameterMm: 1.28, outsideDiameterMm: 2.48, conductivityWPerMK: 0.17 }) // 0.6192
 * @source Fourier's law in a cylindrical wall; IEC 60287-2-1 writes it with the resistivity 1/k
 */
export function insulationResistanceMKPerW(i: {
  readonly conductorDiameterMm: number
  readonly outsideDiameterMm: number
  readonly conductivityWPerMK: number
}): number {
  const d = requirePositive('conductorDiameterMm', i.conductorDiameterMm)
  const D = requirePositive('outsideDiameterMm', i.outsideDiameterMm)
  const k = requirePositive('conductivityWPerMK', i.conductivityWPerMK)
  if (D < d) throw new DomainError('outsideDiameterMm', D, `at least conductorDiameterMm, ${d}`, undefined, 'contradiction')
  return requireFiniteResult('conductivityWPerMK', k, (Math.log(D) - Math.log(d)) / (2 * Math.PI * k))
}
