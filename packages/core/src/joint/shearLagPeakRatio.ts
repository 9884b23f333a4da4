import { requireFiniteResult, requireNotNegative, requirePositive } from '../errors/index.ts'

/**
 * Peak over mean shear stress of a lap under pull, while everything stays elastic: beyond a certain length a longer lap hardly lowers the peak.
 *
 * Like conductors; the same mathematics as the interface current of a lap of like wires. Soft solder yields and evens the peak out.
 *
 * @equation peak/mean = (m L/2) coth(m L/2)
 * @symbol L - lengthMm - mm - length of the lap
 * @symbol m - perMm - 1/mm - shear-lag coefficient, of shearLagPerMm
 * @symbol peak/mean - result - 1 - peak shear over mean shear
 * @domain lengthMm: above 0
 * @domain perMm: at least 0
 * @throws DomainError outside the domain
 * @example
 * shearLagPeakRatio({ lengthMm: 6, perMm: 0.5 }) // 1.6572
 * @source Volkersen 1938 (from memory)
 */
export function shearLagPeakRatio(i: { readonly lengthMm: number; readonly perMm: number }): number {
  const L = requirePositive('lengthMm', i.lengthMm)
  const m = requireNotNegative('perMm', i.perMm)
  const x = 0.5 * L * m
  return x === 0 ? 1 : requireFiniteResult('perMm', m, x / Math.tanh(x))
}
