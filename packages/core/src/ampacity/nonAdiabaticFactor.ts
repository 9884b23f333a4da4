import { requireFiniteResult, requireNotNegative, requirePositive } from '../errors/index.ts'

/**
 * Gives the factor by which heat loss into the insulation raises the adiabatic short-circuit current. X and Y depend on metal, insulation and their contact and are inputs: the standard's tables are not shipped.
 *
 * @equation eps = sqrt(1 + X sqrt(t/S) + Y t/S)
 * @symbol S - areaMm2 - mm2 - area of the conductor
 * @symbol t - timeS - s - time until it is switched off
 * @symbol X - xMm2PerS - (mm2/s)^0.5 - constant of conductor and insulation
 * @symbol Y - yMm2PerS - mm2/s - constant of conductor and insulation
 * @symbol eps - result - 1 - factor on the adiabatic current
 * @domain areaMm2: above 0
 * @domain timeS: at least 0
 * @domain xMm2PerS: at least 0
 * @domain yMm2PerS: at least 0
 * @throws DomainError outside the domain
 * @example
 * nonAdiabaticFactor({ areaMm2: 1.5, timeS: 1, xMm2PerS: 0.29, yMm2PerS: 0.06 }) // 1.1299
 * @source IEC 60949:1988, simplified form of the non-adiabatic factor
 */
export function nonAdiabaticFactor(i: { readonly areaMm2: number; readonly timeS: number; readonly xMm2PerS: number; readonly yMm2PerS: number }): number {
  const S = requirePositive('areaMm2', i.areaMm2)
  const t = requireNotNegative('timeS', i.timeS)
  const X = requireNotNegative('xMm2PerS', i.xMm2PerS)
  const Y = requireNotNegative('yMm2PerS', i.yMm2PerS)
  return requireFiniteResult('timeS', t, Math.sqrt(1 + X * Math.sqrt(t / S) + Y * (t / S)))
}
