import { DomainError, requirePositive } from '../errors/index.ts'
import { astmB33 } from './astmB33.ts'

/**
 * Largest resistivity at 20 degC that new tinned soft copper may have, by the diameter of its strands; a bound between two spans belongs to the thicker.
 *
 * @equation row of astmB33
 * @symbol d - strandDiameterMm - mm - diameter of one strand over its tin
 * @symbol rho - result - ohm m - largest resistivity at 20 C
 * @domain strandDiameterMm: from 0.076 to 11.7
 * @throws DomainError outside the spans that the standard lists
 * @example
 * maximumTinnedResistivityOhmM(0.25) // 1.8508e-8
 * @source ASTM B33-04, table 2, mass resistivity over 8.89 g/cm3
 */
export function maximumTinnedResistivityOhmM(strandDiameterMm: number): number {
  requirePositive('strandDiameterMm', strandDiameterMm)
  const row = astmB33.rows.findLast(({ thinnestMm, thickestMm }) => strandDiameterMm >= thinnestMm && strandDiameterMm <= thickestMm)
  if (row === undefined) throw new DomainError('strandDiameterMm', strandDiameterMm, 'from 0.076 to 11.7', 'ASTM B33-04, table 2')
  return row.resistivity20OhmM
}
