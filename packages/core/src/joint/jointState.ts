import { NoSteadyStateError, requireFiniteResult } from '../errors/index.ts'
import { stateByCorrelation } from './jointByCorrelation.ts'
import { largestJointCurrentA, settles } from './jointLinear.ts'
import { linearState } from './jointLinearState.ts'
import { jointModel } from './jointModel.ts'
import type { JointSite, JointState } from './jointSite.ts'
import { jointResistance } from './ownResistance.ts'

/**
 * Steady state of a joint in service: its temperature, that of its wires far away, the heat flow into each, and the largest current with a steady state.
 *
 * A heat source between two long wires, each heated by its own current, resistance rising with temperature, under an optional sleeve (thermal model of the joint in service). Linear if every film coefficient is given; else by natural convection and radiation. No ceiling: a temperature above the metal's melting point is returned as it is.
 *
 * @equation kA T'' = q_out(T) - I^2 R20 (1 + alpha (T - 20)); flow 1 + flow 2 = I^2 R_j (1 + a_j (T_j - 20))
 * @symbol I - currentA - A - current through the joint
 * @symbol T_a - ambientC - C - temperature of air and surroundings
 * @symbol R_j - jointResistanceOhm - ohm - resistance of the joint at 20 C
 * @symbol a_j - jointResistanceCoefficientPerK - 1/K - its temperature coefficient
 * @symbol A - conductors.0.areaMm2 - mm2 - area of a wire's conductor; the second wire's fields are alike
 * @symbol R20 - conductors.0.resistivity20OhmM - ohm m - its resistivity at 20 C, over its area
 * @symbol alpha - conductors.0.temperatureCoefficient20PerK - 1/K - its temperature coefficient
 * @symbol k - conductors.0.conductivityWPerMK - W/(m K) - its thermal conductivity
 * @symbol d - conductors.0.conductorDiameterMm - mm - its diameter
 * @symbol w - conductors.0.insulationThicknessMm - mm - thickness of its insulation
 * @symbol k_i - conductors.0.insulationConductivityWPerMK - W/(m K) - conductivity of its insulation
 * @symbol h - conductors.0.filmWPerM2K - W/(m2 K) - film coefficient at its outside, in place of convection and radiation
 * @symbol eps - conductors.0.emissivity - 1 - emissivity of its outside
 * @symbol L_s - sleeve.lengthMm - mm - length of the sleeve, half of it on each side
 * @symbol D_c - sleeve.coreDiameterMm - mm - inside of the sleeve
 * @symbol D_s - sleeve.outsideDiameterMm - mm - outside of the sleeve
 * @symbol k_s - sleeve.conductivityWPerMK - W/(m K) - conductivity of the sleeve
 * @symbol p - pressurePa - Pa - absolute pressure of the air
 * @symbol T_j - result - C - temperature of the joint, beside the other answers; residual is the joint's heat that was left over, in W
 * @domain currentA: at least 0
 * @domain ambientC: from -173.15 to 1626.85
 * @domain jointResistanceOhm: at least 0
 * @domain optional jointResistanceCoefficientPerK: at least 0
 * @domain conductors.0.areaMm2: above 0
 * @domain conductors.0.insulationThicknessMm: at least 0
 * @domain conductors.0.insulationConductivityWPerMK: above 0
 * @domain optional conductors.0.conductorDiameterMm: above 0
 * @domain optional conductors.0.conductivityWPerMK: above 0
 * @domain optional conductors.0.resistivity20OhmM: above 0
 * @domain optional conductors.0.temperatureCoefficient20PerK: at least 0
 * @domain optional conductors.0.emissivity: from 0 to 1
 * @domain optional conductors.0.filmWPerM2K: above 0
 * @domain sleeve.lengthMm: above 0
 * @domain sleeve.coreDiameterMm: above 0
 * @domain sleeve.outsideDiameterMm: above 0
 * @domain sleeve.conductivityWPerMK: above 0
 * @domain optional sleeve.emissivity: from 0 to 1
 * @domain optional sleeve.filmWPerM2K: above 0
 * @domain optional pressurePa: at least 1000
 * @throws DomainError outside the domain, and where film coefficients are given for some surfaces and not for others
 * @throws NoSteadyStateError with cause runaway and the largest current that has a steady joint
 * @throws UnknownEntryError for a metal that the table does not hold
 * @throws ConvergenceError where a steady joint exists and is not found
 * @example
 * jointState({
 *   currentA: 9, ambientC: 40, pressurePa: 101325, jointResistanceOhm: 0.02, jointResistanceCoefficientPerK: 0,
 *   conductors: [
 *     { areaMm2: 0.823, conductorDiameterMm: 1.2, insulationThicknessMm: 0.41, insulationConductivityWPerMK: 0.17, conductivityWPerMK: 391, resistivity20OhmM: 1.7241e-8, temperatureCoefficient20PerK: 0.00393, emissivity: 0.9 },
 *     { areaMm2: 0.823, conductorDiameterMm: 1.2, insulationThicknessMm: 0.41, insulationConductivityWPerMK: 0.17 },
 *   ],
 *   sleeve: { lengthMm: 30, coreDiameterMm: 2.4, outsideDiameterMm: 3.9, conductivityWPerMK: 0.2, emissivity: 0.92 },
 * }) // { jointC: 149.46, farC: [54.78, 54.78], wireFlowW: [0.81, 0.81], sleeveEndC: [120.17, 120.17], largestCurrentA: 157.84 }
 * @example
 * jointState({
 *   currentA: 25, ambientC: 50, jointResistanceOhm: 0.005,
 *   conductors: [
 *     { areaMm2: 2.5, conductorDiameterMm: 2.05, insulationThicknessMm: 0.8, insulationConductivityWPerMK: 0.17, filmWPerM2K: 12 },
 *     { areaMm2: 2.5, conductorDiameterMm: 2.05, insulationThicknessMm: 0.8, insulationConductivityWPerMK: 0.17, filmWPerM2K: 12 },
 *   ],
 *   sleeve: { lengthMm: 40, coreDiameterMm: 3.9, outsideDiameterMm: 6.2, conductivityWPerMK: 0.2, filmWPerM2K: 12 },
 * }) // { jointC: 219.76, farC: [93.353, 93.353], sleeveEndC: [193.3, 193.3], largestCurrentA: 68.74 }
 * @source derived: fins with their own heat; natural convection after Churchill and Chu 1975 or Morgan 1975
 */
export function jointState(i: JointSite & { readonly jointResistanceOhm: number; readonly jointResistanceCoefficientPerK?: number }): JointState {
  const model = jointModel(i)
  const { R, a } = jointResistance(i.jointResistanceOhm, i.jointResistanceCoefficientPerK, model.ambientC)
  // At high temperature radiation outgrows everything, so in the limit only the walls resist.
  if (!settles(model, R * a, model.currentA, !model.linear))
    throw new NoSteadyStateError('runaway', largestJointCurrentA(model, R * a, !model.linear) as number, model.ceilingC)
  const state = model.linear ? linearState(model, R, a) : stateByCorrelation(model, R, a)
  requireFiniteResult('jointResistanceOhm', R, state.jointC + state.wireFlowW[0] + state.wireFlowW[1] + state.farC[0] + state.farC[1])
  return state
}
