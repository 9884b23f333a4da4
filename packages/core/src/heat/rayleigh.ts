import { requireFiniteResult, requirePositive, requireTemperature } from '../errors/index.ts'
import { surfaceRayleigh } from './surfaceFlow.ts'

/**
 * Gives the Rayleigh number of a horizontal wire in air: the buoyancy of the warmed air against viscosity and conduction.
 *
 * @equation Ra = g beta |Ts - Ta| D^3 Pr/nu^2, air at (Ts + Ta)/2
 * @symbol Ts - surfaceC - C - temperature of the surface
 * @symbol Ta - ambientC - C - temperature of the air
 * @symbol D - diameterM - m - outside diameter
 * @symbol p - pressurePa - Pa - absolute pressure, in nu
 * @symbol Ra - result - 1 - Rayleigh number on the diameter
 * @domain surfaceC: above -273.15
 * @domain ambientC: above -273.15
 * @domain diameterM: above 0
 * @domain pressurePa: above 0
 * @throws DomainError outside the domain
 * @example
 * rayleighNumber(60, 20, 0.0024, 101325) // 42.54
 * @source definition of the Rayleigh number, ideal gas
 */
export function rayleighNumber(surfaceC: number, ambientC: number, diameterM: number, pressurePa: number): number {
  requireTemperature('surfaceC', surfaceC)
  requireTemperature('ambientC', ambientC)
  requirePositive('diameterM', diameterM)
  requirePositive('pressurePa', pressurePa)
  return requireFiniteResult('diameterM', diameterM, surfaceRayleigh(surfaceC, ambientC, diameterM, pressurePa))
}
