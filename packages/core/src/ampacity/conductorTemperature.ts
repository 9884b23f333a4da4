import { requireNotNegative } from '../errors/index.ts'
import { requireConductorC, resolveWire } from './resolveWire.ts'
import { conductorAtCurrent } from './steady.ts'
import type { WireHeat } from './wire.ts'

/**
 * Gives the steady temperature of the conductor of one wire in air at a given current.
 *
 * There is no steady state where I^2 R20 alpha times the thermal resistance reaches 1 (thermal runaway); the ceiling is at most the metal's melting point.
 *
 * @equation I^2 R20 (1 + alpha (Tc - 20)) = q = convection + radiation - sun; Tc = Ts + q ln(D/d)/(2 pi k)
 * @symbol I - currentA - A - steady current
 * @symbol A - areaMm2 - mm2 - area of the conductor
 * @symbol d - conductorDiameterMm - mm - diameter of the conductor, a solid round of the area if absent
 * @symbol K - layFactor - 1 - length of a strand over length of the wire, in R20
 * @symbol rho20 - resistivity20OhmM - ohm m - resistivity at 20 C, in R20 = rho20 K/A
 * @symbol alpha - temperatureCoefficient20PerK - 1/K - temperature coefficient at 20 C
 * @symbol w - insulationThicknessMm - mm - wall of the insulation, D = d + 2 w
 * @symbol k - insulationConductivityWPerMK - W/(m K) - conductivity of the wall
 * @symbol eps - emissivity - 1 - emissivity of the surface
 * @symbol Ta - ambientC - C - temperature of the air and the surroundings
 * @symbol v - airSpeedMPerS - m/s - speed of the air across the wire
 * @symbol p - pressurePa - Pa - absolute pressure of the air
 * @symbol sun - solarAbsorbedWPerM - W/m - sunshine that the surface absorbs
 * @symbol h - filmWPerM2K - W/(m2 K) - film coefficient in place of convection and radiation
 * @symbol Tm - ceilingC - C - temperature that the conductor must not pass
 * @symbol Tc - result - C - temperature of the conductor
 * @domain currentA: at least 0
 * @domain areaMm2: above 0
 * @domain optional conductorDiameterMm: above 0
 * @domain optional layFactor: at least 1
 * @domain optional resistivity20OhmM: above 0
 * @domain optional temperatureCoefficient20PerK: at least 0
 * @domain insulationThicknessMm: at least 0
 * @domain insulationConductivityWPerMK: above 0
 * @domain optional emissivity: from 0 to 1
 * @domain ambientC: from -173.15 to 1626.85
 * @domain optional airSpeedMPerS: at least 0
 * @domain optional pressurePa: at least 1000
 * @domain optional solarAbsorbedWPerM: at least 0
 * @domain optional filmWPerM2K: above 0
 * @domain optional ceilingC: at least -173.15
 * @throws DomainError outside the domain
 * @throws UnknownEntryError for a metal that the table does not hold
 * @throws NoSteadyStateError where nothing balances (runaway), or the answer passes the ceiling
 * @example
 * conductorTemperatureC({ areaMm2: 1, insulationThicknessMm: 0.6, insulationConductivityWPerMK: 0.17, ambientC: 30, currentA: 19 }) // 78.94
 * @source Heat balance of an insulated wire in air: Churchill and Chu 1975 or Morgan 1975, Churchill and Bernstein 1977, Stefan-Boltzmann law, Fourier in the wall
 */
export function conductorTemperatureC(i: WireHeat & { readonly currentA: number; readonly ceilingC?: number }): number {
  const b = resolveWire(i)
  requireNotNegative('currentA', i.currentA)
  return conductorAtCurrent(b, i.currentA, i.ceilingC === undefined ? b.meltingC : requireConductorC('ceilingC', i.ceilingC, b))
}
