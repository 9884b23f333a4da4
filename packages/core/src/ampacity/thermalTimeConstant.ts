import { DomainError, requireFiniteResult, requireNotNegative } from '../errors/index.ts'
import { flowAtConductor } from './balance.ts'
import { capacityJPerMK } from './motion.ts'
import { requireConductorC, resolveWire } from './resolveWire.ts'
import { failSteady } from './steady.ts'
import { type WireHeat, type WireStore, wireDefaults } from './wire.ts'

/**
 * Gives the time constant of a wire: how long its conductor takes for 63 % of a small step, without sun.
 *
 * @equation tau = C'/(q(T)/(T - Ta) - I^2 R20 alpha); C' = A rho_c c_c + s rho_i c_i pi w (d + w)
 * @symbol I - currentA - A - current in the wire, 0 if absent
 * @symbol T - atC - C - temperature of the conductor, 1 K above the air if absent
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
 * @symbol tau - result - s - time constant
 * @domain optional currentA: at least 0
 * @domain optional atC: at least -173.15
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
 * @throws DomainError outside the domain, and where atC is the temperature of the air
 * @throws UnknownEntryError for a metal that the table does not hold
 * @throws NoSteadyStateError where the rising resistance makes heat faster than the air takes it
 * @example
 * thermalTimeConstantS({ areaMm2: 1, insulationThicknessMm: 0.6, insulationConductivityWPerMK: 0.17, ambientC: 30, currentA: 0, atC: 50 }) // 53.18
 * @source Lumped wire: tau = C R, lengthened by the rising resistance
 */
export function thermalTimeConstantS(i: WireHeat & WireStore & { readonly currentA?: number; readonly atC?: number }): number {
  const b = { ...resolveWire(i), sunWPerM: 0 }
  const capacity = capacityJPerMK(i)
  const currentA = requireNotNegative('currentA', i.currentA ?? wireDefaults.currentA)
  const atC = requireConductorC('atC', i.atC ?? b.ambientC + wireDefaults.riseK, b)
  if (atC === b.ambientC) throw new DomainError('atC', atC, 'a temperature other than ambientC')
  const perK = flowAtConductor(b, atC) / (atC - b.ambientC) - currentA * currentA * b.resistance20OhmPerM * b.coefficientPerK
  if (!(perK > 0)) return failSteady(b, 'runaway', b.meltingC)
  return requireFiniteResult('areaMm2', i.areaMm2, capacity / perK)
}
