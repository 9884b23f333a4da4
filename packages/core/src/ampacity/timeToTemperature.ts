import { requireFiniteResult } from '../errors/index.ts'
import { motionOf, requireInitialC } from './motion.ts'
import { reaches, timeTo } from './passage.ts'
import { requireConductorC } from './resolveWire.ts'
import type { WireHeat, WireStore } from './wire.ts'

/**
 * Gives the time in which the conductor goes from its start to a wanted temperature at a steady current.
 *
 * @equation t = integral of C' dT/(I^2 R20 (1 + alpha (T - 20)) - q(T)) from T0 to T
 * @symbol I - currentA - A - current, steady from the start
 * @symbol T - wantedC - C - temperature to reach
 * @symbol T0 - initialC - C - temperature at the start, that of the air if absent
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
 * @symbol rho_c - conductorDensityKgPerM3 - kg/m3 - density of the conductor
 * @symbol c_c - conductorSpecificHeatJPerKgK - J/(kg K) - specific heat of the conductor
 * @symbol rho_i - insulationDensityKgPerM3 - kg/m3 - density of the insulation
 * @symbol c_i - insulationSpecificHeatJPerKgK - J/(kg K) - specific heat of the insulation
 * @symbol s - insulationShare - 1 - share of the insulation that follows the conductor
 * @symbol t - result - s - time; null where it only tends to the wanted temperature or moves away
 * @domain currentA: at least 0
 * @domain wantedC: at least -173.15
 * @domain optional initialC: at least -173.15
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
 * @domain optional conductorDensityKgPerM3: above 0
 * @domain optional conductorSpecificHeatJPerKgK: above 0
 * @domain optional insulationDensityKgPerM3: at least 0
 * @domain optional insulationSpecificHeatJPerKgK: at least 0
 * @domain optional insulationShare: from 0 to 1
 * @throws DomainError outside the domain, and above the melting point of the metal
 * @throws UnknownEntryError for a metal that the table does not hold
 * @example
 * timeToTemperatureS({ areaMm2: 1, insulationThicknessMm: 0.6, insulationConductivityWPerMK: 0.17, ambientC: 30, currentA: 25, wantedC: 70, initialC: 30 }) // 32.62
 * @source Lumped wire: heat balance of one conductor, q as if steady at each temperature
 */
export function timeToTemperatureS(
  i: WireHeat & WireStore & { readonly currentA: number; readonly wantedC: number; readonly initialC?: number },
): number | null {
  const m = motionOf(i, i.currentA)
  const timeS = timeTo(m, requireInitialC(m.b, i.initialC), requireConductorC('wantedC', i.wantedC, m.b))
  return timeS === null ? null : requireFiniteResult('currentA', i.currentA, timeS)
}

/** False where timeToTemperatureS is null; takes a small part of its time. */
export function reachesTemperature(i: Parameters<typeof timeToTemperatureS>[0]): boolean {
  const m = motionOf(i, i.currentA)
  return reaches(m, requireInitialC(m.b, i.initialC), requireConductorC('wantedC', i.wantedC, m.b))
}
