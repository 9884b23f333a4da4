import { DomainError, requirePositive } from '../errors/index.ts'

/**
 * The fraction by which a crimp has reduced the strands' area.
 *
 * Both areas are metal alone, without the voids between strands. The displaced metal has moved along the wire.
 *
 * @equation c = 1 - A_c/A_l
 * @symbol A_l - looseAreaMm2 - mm2 - strands before the crimp
 * @symbol A_c - crimpedAreaMm2 - mm2 - strands in the crimped section
 * @symbol c - result - 1 - share removed
 * @domain looseAreaMm2: above 0
 * @domain crimpedAreaMm2: above 0
 * @throws DomainError outside the domain, and where the crimped area is above the loose one
 * @example
 * compressionFraction({ looseAreaMm2: 1, crimpedAreaMm2: 0.82 }) // 0.18
 * @source derived: definition, as crimp makers use it; 0.15 to 0.20 is common practice on copper
 */
export function compressionFraction(i: { readonly looseAreaMm2: number; readonly crimpedAreaMm2: number }): number {
  const loose = requirePositive('looseAreaMm2', i.looseAreaMm2)
  const crimped = requirePositive('crimpedAreaMm2', i.crimpedAreaMm2)
  if (crimped > loose) throw new DomainError('crimpedAreaMm2', crimped, `at most looseAreaMm2, ${loose}: a crimp adds no conductor`)
  return 1 - crimped / loose
}
