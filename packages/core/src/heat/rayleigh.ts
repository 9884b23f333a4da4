import { requireFiniteResult } from '../errors/index.ts'
import { airConductivityAtK, airDensityAtK, airViscosityAtK } from './airProperties.ts'
import { airSpecificHeatJPerKgK, standardGravityMPerS2, zeroCelsiusK } from './constants.ts'

/**
 * Gives the Rayleigh number of a horizontal wire in air: how strongly the warmed air rises against its own stiffness.
 *
 * @equation Ra = g beta |Ts - Ta| D^3 Pr/nu^2, air at (Ts + Ta)/2
 * @symbol Ts - surfaceC - C - temperature of the surface
 * @symbol Ta - ambientC - C - temperature of the air
 * @symbol D - diameterM - m - outside diameter
 * @symbol p - pressurePa - Pa - absolute pressure, in nu
 * @symbol Ra - result - 1 - Rayleigh number on the diameter
 * @domain surfaceC: finite
 * @domain ambientC: finite
 * @domain diameterM: finite
 * @domain pressurePa: finite
 * @throws DomainError where the result is no finite number
 * @example
 * rayleighNumber(60, 20, 0.0024, 101325) // 42.54
 * @source definition of the Rayleigh number, ideal gas
 */
export function rayleighNumber(surfaceC: number, ambientC: number, diameterM: number, pressurePa: number): number {
  const T = 0.5 * (surfaceC + ambientC) + zeroCelsiusK
  const mu = airViscosityAtK(T)
  const inverseNu = airDensityAtK(T, pressurePa) / mu
  const Pr = (mu * airSpecificHeatJPerKgK) / airConductivityAtK(T)
  const Ra = (standardGravityMPerS2 / T) * Math.abs(surfaceC - ambientC) * diameterM * diameterM * diameterM * Pr * inverseNu * inverseNu
  return requireFiniteResult('diameterM', diameterM, Ra)
}
