import { DomainError, requireFiniteResult, requireNotNegative } from '../errors/index.ts'
import { motionOf, requireInitialC } from './motion.ts'
import { changeAfterK } from './passage.ts'
import type { WireHeat, WireStore } from './wire.ts'

/**
 * Gives the temperature of the conductor some time after a steady current is switched on, its resistance rising with it.
 *
 * The conductor and a share of its insulation are one lump: for times below about wall^2 rho_i c_i/k take insulationShare 0, the safe side.
 *
 * @equation C' dT/dt = I^2 R20 (1 + alpha (T - 20)) - q(T); C' = A rho_c c_c + s rho_i c_i pi w (d + w)
 * @symbol I - currentA - A - current, steady from the start
 * @symbol t - timeS - s - time since it was switched on
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
 * @symbol T - result - C - temperature of the conductor
 * @domain currentA: at least 0
 * @domain timeS: at least 0
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
 * @throws DomainError outside the domain, and where the metal melts before the end
 * @throws UnknownEntryError for a metal that the table does not hold
 * @example
 * temperatureAfterC({ areaMm2: 1, insulationThicknessMm: 0.6, insulationConductivityWPerMK: 0.17, ambientC: 30, currentA: 25, timeS: 60, initialC: 30 }) // 89.87
 * @source Lumped wire: heat balance of one conductor, q as if steady at each temperature
 */
export function temperatureAfterC(i: WireHeat & WireStore & { readonly currentA: number; readonly timeS: number; readonly initialC?: number }): number {
  const m = motionOf(i, i.currentA)
  const timeS = requireNotNegative('timeS', i.timeS)
  const initialC = requireInitialC(m.b, i.initialC)
  const changeK = changeAfterK(m, initialC, timeS)
  if (!(changeK < Infinity)) throw new DomainError('timeS', timeS, `times before the conductor reaches ${m.b.meltingC} °C, where its metal melts`)
  return requireFiniteResult('timeS', timeS, initialC + changeK)
}
