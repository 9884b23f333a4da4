import { requireFiniteResult, requirePositive } from '../errors/index.ts'

/**
 * Radius of the single round spot that a force presses into the softer of two metals.
 *
 * The metal yields until contact area times hardness equals the force; 1 N / 1 MPa = 1 mm2.
 *
 * @equation a = sqrt(F/(pi H))
 * @symbol F - forceN - N - force that presses the faces together
 * @symbol H - hardnessMPa - MPa - indentation hardness of the softer metal
 * @symbol a - result - mm - radius of the spot
 * @domain forceN: above 0
 * @domain hardnessMPa: above 0
 * @throws DomainError outside the domain
 * @example
 * contactSpotRadiusMm({ forceN: 10, hardnessMPa: 500 }) // 0.079788
 * @source Holm, Electric Contacts, 1967: plastic contact (from memory)
 */
export function contactSpotRadiusMm(i: { readonly forceN: number; readonly hardnessMPa: number }): number {
  const F = requirePositive('forceN', i.forceN)
  const H = requirePositive('hardnessMPa', i.hardnessMPa)
  return requireFiniteResult('forceN', F, Math.sqrt(F / H / Math.PI))
}
