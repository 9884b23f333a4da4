import { requireBetween, requireFiniteResult, requirePositive } from '../errors/index.ts'
import { airHighestC, airLowestC, airSpecificHeatJPerKgK, dryAirMolarMassKgPerMol, molarGasConstantJPerMolK, zeroCelsiusK } from './constants.ts'
import { heatDefaults } from './correlation.ts'

/** Sutherland's law for air: factor in kg/(m s K^0.5) and constant in K, as in the U.S. Standard Atmosphere. */
const sutherlandFactor = 1.458e-6
const sutherlandK = 110.4
/** Conductivity of air, U.S. Standard Atmosphere 1976: factor in W/(m K^1.5), constants in K. */
const conductivityFactor = 2.64638e-3
const conductivityK = 245.4
const conductivityExponentK = 12 * Math.LN10

/** Viscosity of air in Pa s at a temperature in K: unchecked, for solvers. */
export function airViscosityAtK(temperatureK: number): number {
  return (sutherlandFactor * temperatureK * Math.sqrt(temperatureK)) / (temperatureK + sutherlandK)
}

/** Conductivity of air in W/(m K) at a temperature in K: unchecked, for solvers. */
export function airConductivityAtK(temperatureK: number): number {
  return (conductivityFactor * temperatureK * Math.sqrt(temperatureK)) / (temperatureK + conductivityK * Math.exp(-conductivityExponentK / temperatureK))
}

/** Density of dry air in kg/m3 at a temperature in K: unchecked, for solvers. */
export function airDensityAtK(temperatureK: number, pressurePa: number): number {
  return (pressurePa * dryAirMolarMassKgPerMol) / (molarGasConstantJPerMolK * temperatureK)
}

/**
 * Gives density, viscosity, conductivity, Prandtl number and thermal expansion of dry air at a film temperature.
 *
 * @equation mu = 1.458e-6 T^1.5/(T + 110.4); k = 2.64638e-3 T^1.5/(T + 245.4*10^(-12/T)); rho = p M/(R T); Pr = mu cp/k; beta = 1/T
 * @symbol T - temperatureC - C - temperature of the film (K in the equation)
 * @symbol p - pressurePa - Pa - absolute pressure
 * @symbol rho - result - kg/m3 - density
 * @symbol mu - result - Pa s - dynamic viscosity
 * @symbol k - result - W/(m K) - thermal conductivity
 * @symbol Pr - result - 1 - Prandtl number
 * @symbol beta - result - 1/K - thermal expansion
 * @domain temperatureC: from -173.15 to 1626.85
 * @domain optional pressurePa: above 0
 * @throws DomainError outside the domain
 * @example
 * airProperties(26.85, 101325) // { densityKgPerM3: 1.1764, prandtl: 0.7074 }
 * @source U.S. Standard Atmosphere, 1976, viscosity and conductivity of air; ideal gas law
 */
export function airProperties(
  temperatureC: number,
  pressurePa: number = heatDefaults.pressurePa,
): {
  readonly densityKgPerM3: number
  readonly viscosityPaS: number
  readonly conductivityWPerMK: number
  readonly prandtl: number
  readonly expansionPerK: number
} {
  requireBetween('temperatureC', temperatureC, airLowestC, airHighestC, "Sutherland's law, 100 to 1900 K")
  requirePositive('pressurePa', pressurePa)
  const T = temperatureC + zeroCelsiusK
  const mu = airViscosityAtK(T)
  const k = airConductivityAtK(T)
  const rho = requireFiniteResult('pressurePa', pressurePa, airDensityAtK(T, pressurePa))
  return { densityKgPerM3: rho, viscosityPaS: mu, conductivityWPerMK: k, prandtl: (mu * airSpecificHeatJPerKgK) / k, expansionPerK: 1 / T }
}
