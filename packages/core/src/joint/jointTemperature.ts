import type { JointSite } from './jointSite.ts'
import { jointState } from './jointState.ts'

/**
 * Temperature of a joint in service, between two long wires that the current heats too.
 *
 * jointState returns the full state and describes the model. Linear if every film coefficient is given, else by natural convection and radiation. No ceiling: a result above the insulation's limit or the metal's melting point is returned as it is.
 *
 * @equation kA T'' = q_out(T) - I^2 R20 (1 + alpha (T - 20)); flow 1 + flow 2 = I^2 R_j (1 + a_j (T_j - 20))
 * @symbol I - currentA - A - current through the joint
 * @symbol T_a - ambientC - C - temperature of air and surroundings
 * @symbol R_j - jointResistanceOhm - ohm - resistance of the joint at 20 C
 * @symbol a_j - jointResistanceCoefficientPerK - 1/K - its temperature coefficient
 * @symbol A - conductors.0.areaMm2 - mm2 - area of a wire's conductor; its other data and the second wire's as in jointState
 * @symbol h - conductors.0.filmWPerM2K - W/(m2 K) - film coefficient at a wire's outside; for the other and the sleeve too, or for none
 * @symbol p - pressurePa - Pa - absolute pressure of the air
 * @symbol T_j - result - C - temperature of the joint
 * @domain as jointState
 * @throws DomainError outside the domain, and where film coefficients are given for some surfaces and not for others
 * @throws NoSteadyStateError with cause runaway and the largest current that has a steady joint
 * @throws UnknownEntryError for a metal that the table does not hold
 * @throws ConvergenceError where a steady joint exists and is not found
 * @example
 * jointTemperatureC({
 *   currentA: 9, ambientC: 40, pressurePa: 101325, jointResistanceOhm: 0.02, jointResistanceCoefficientPerK: 0,
 *   conductors: [
 *     { areaMm2: 0.823, conductorDiameterMm: 1.2, insulationThicknessMm: 0.41, insulationConductivityWPerMK: 0.17, conductivityWPerMK: 391, resistivity20OhmM: 1.7241e-8, temperatureCoefficient20PerK: 0.00393, emissivity: 0.9 },
 *     { areaMm2: 0.823, conductorDiameterMm: 1.2, insulationThicknessMm: 0.41, insulationConductivityWPerMK: 0.17 },
 *   ],
 *   sleeve: { lengthMm: 30, coreDiameterMm: 2.4, outsideDiameterMm: 3.9, conductivityWPerMK: 0.2, emissivity: 0.92 },
 * }) // 149.46
 * @example
 * jointTemperatureC({
 *   currentA: 25, ambientC: 50, jointResistanceOhm: 0.005,
 *   conductors: [
 *     { areaMm2: 2.5, conductorDiameterMm: 2.05, insulationThicknessMm: 0.8, insulationConductivityWPerMK: 0.17, filmWPerM2K: 12 },
 *     { areaMm2: 2.5, conductorDiameterMm: 2.05, insulationThicknessMm: 0.8, insulationConductivityWPerMK: 0.17, filmWPerM2K: 12 },
 *   ],
 *   sleeve: { lengthMm: 40, coreDiameterMm: 3.9, outsideDiameterMm: 6.2, conductivityWPerMK: 0.2, filmWPerM2K: 12 },
 * }) // 219.76
 * @source derived: fins with their own heat; natural convection after Churchill and Chu 1975 or Morgan 1975
 */
export function jointTemperatureC(i: JointSite & { readonly jointResistanceOhm: number; readonly jointResistanceCoefficientPerK?: number }): number {
  return jointState(i).jointC
}
