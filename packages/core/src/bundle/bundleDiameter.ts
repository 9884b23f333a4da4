import { packBundle } from './packBundle.ts'

/**
 * Diameter of a well-packed bundle of round wires.
 *
 * @equation D = 2 max(|c_i| + d_i/2) with |c_i - c_j| >= (d_i + d_j)/2
 * @symbol d_i - diametersMm.0 - mm - outside diameter of each wire
 * @symbol c_i - result - mm - centre of each wire about the bundle's centre
 * @symbol D - result - mm - diameter of the circle that holds all
 * @domain diametersMm.0: above 0
 * @throws DomainError for an empty list, more than 500 wires, or a diameter that is not above 0 (diametersMm.2)
 * @example
 * bundleDiameterMm([2, 2, 2, 2, 2, 2, 2]) // 6.0000
 * @source the arrangement of packBundle
 */
export function bundleDiameterMm(diametersMm: readonly number[]): number {
  return packBundle(diametersMm).diameterMm
}
