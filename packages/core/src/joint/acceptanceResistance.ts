import { DomainError, requireFiniteResult, requirePositive, requireTemperature } from '../errors/index.ts'
import { takenByCorrelation } from './jointByCorrelation.ts'
import { settles } from './jointLinear.ts'
import { takenLinear } from './jointLinearState.ts'
import { type JointModel, jointModel } from './jointModel.ts'
import type { JointSite } from './jointSite.ts'
import { mmPerM } from './lapPair.ts'

/** Criterion that sets the limit of a joint. */
export type AcceptanceLimit = 'temperature' | 'drop' | 'plain-wire'

/**
 * The largest resistance a joint may have at 20 C: below it the joint stays cool, drops no more than its share of the voltage and is no worse than plain wire.
 *
 * Only the limits given count; the smallest governs. The temperature limit gives 0 if a wire alone, or a joint of 0 ohm, is already at the limit. The joint's own temperature coefficient is left out: if its resistance rises when hot, it must be lower at 20 C. Plain wire is the mean of both wires at 20 C.
 *
 * @equation R_T = (flow 1 + flow 2)/I^2 with the joint at T_max; R_V = V/I; R_w = n L (r1 + r2)/2
 * @symbol I - currentA - A - current through the joint
 * @symbol T_a - ambientC - C - temperature of air and surroundings
 * @symbol T_max - limitC - C - temperature that the joint may reach
 * @symbol V - allowedDropV - V - voltage that the joint may take
 * @symbol n - plainWireMultiple - 1 - how many times its own length of wire it may resist: 1 as new
 * @symbol L - jointLengthMm - mm - length of the joint
 * @symbol A - conductors.0.areaMm2 - mm2 - area of a wire's conductor; its other data and the second wire's as in jointState
 * @symbol R - result - ohm - the smallest of the three, beside which limit governs and each candidate
 * @domain currentA: above 0
 * @domain jointLengthMm: above 0
 * @domain optional limitC: above -273.15
 * @domain optional allowedDropV: above 0
 * @domain optional plainWireMultiple: above 0
 * @domain as jointState
 * @throws DomainError outside the domain, and where no limit is given
 * @throws UnknownEntryError for a metal that the table does not hold
 * @throws ConvergenceError where the heat that the sides take with the joint at limitC is not found
 * @example
 * acceptanceResistanceOhm({
 *   currentA: 9, ambientC: 40, pressurePa: 101325, jointLengthMm: 10, limitC: 90, allowedDropV: 0.05, plainWireMultiple: 1,
 *   conductors: [
 *     { areaMm2: 0.823, conductorDiameterMm: 1.2, insulationThicknessMm: 0.41, insulationConductivityWPerMK: 0.17, conductivityWPerMK: 391, resistivity20OhmM: 1.7241e-8, temperatureCoefficient20PerK: 0.00393, emissivity: 0.9 },
 *     { areaMm2: 0.823, conductorDiameterMm: 1.2, insulationThicknessMm: 0.41, insulationConductivityWPerMK: 0.17 },
 *   ],
 *   sleeve: { lengthMm: 30, coreDiameterMm: 2.4, outsideDiameterMm: 3.9, conductivityWPerMK: 0.2, emissivity: 0.92 },
 * }) // { resistanceOhm: 0.00020949, governedBy: "plain-wire" }
 * @example
 * acceptanceResistanceOhm({
 *   currentA: 25, ambientC: 50, jointLengthMm: 10, limitC: 105,
 *   conductors: [
 *     { areaMm2: 2.5, conductorDiameterMm: 2.05, insulationThicknessMm: 0.8, insulationConductivityWPerMK: 0.17, filmWPerM2K: 12 },
 *     { areaMm2: 2.5, conductorDiameterMm: 2.05, insulationThicknessMm: 0.8, insulationConductivityWPerMK: 0.17, filmWPerM2K: 12 },
 *   ],
 *   sleeve: { lengthMm: 40, coreDiameterMm: 3.9, outsideDiameterMm: 6.2, conductivityWPerMK: 0.2, filmWPerM2K: 12 },
 * }) // { resistanceOhm: 0.00065633, governedBy: "temperature" }
 * @source derived: the joint in service solved for its resistance; the limits themselves are the caller's
 */
export function acceptanceResistanceOhm(
  i: JointSite & { readonly jointLengthMm: number; readonly limitC?: number; readonly allowedDropV?: number; readonly plainWireMultiple?: number },
): {
  readonly resistanceOhm: number
  readonly governedBy: AcceptanceLimit
  readonly candidates: readonly { readonly limit: AcceptanceLimit; readonly resistanceOhm: number }[]
} {
  const I = requirePositive('currentA', i.currentA)
  const model = jointModel(i)
  const lengthM = requirePositive('jointLengthMm', i.jointLengthMm) / mmPerM
  const candidates: { readonly limit: AcceptanceLimit; readonly resistanceOhm: number }[] = []
  if (i.limitC !== undefined) {
    const taken = takenW(model, requireTemperature('limitC', i.limitC))
    candidates.push({ limit: 'temperature', resistanceOhm: requireFiniteResult('limitC', i.limitC, Math.max(0, taken / I / I)) })
  }
  if (i.allowedDropV !== undefined) {
    const V = requirePositive('allowedDropV', i.allowedDropV)
    candidates.push({ limit: 'drop', resistanceOhm: requireFiniteResult('allowedDropV', V, V / I) })
  }
  if (i.plainWireMultiple !== undefined) {
    const n = requirePositive('plainWireMultiple', i.plainWireMultiple)
    const mean = 0.5 * (model.sides[0].r20 + model.sides[1].r20)
    candidates.push({ limit: 'plain-wire', resistanceOhm: requireFiniteResult('plainWireMultiple', n, n * mean * lengthM) })
  }
  let governing = candidates[0]
  if (governing === undefined) throw new DomainError('limitC', undefined, 'at least one of limitC, allowedDropV and plainWireMultiple', undefined, 'missing')
  for (const candidate of candidates) if (candidate.resistanceOhm < governing.resistanceOhm) governing = candidate
  return { resistanceOhm: governing.resistanceOhm, governedBy: governing.limit, candidates }
}

/** Heat that both wires remove with the joint at a temperature; 0 if a wire alone is that hot already, or there is no steady state. */
function takenW(model: JointModel, jointC: number): number {
  if (!settles(model, 0, model.currentA, !model.linear)) return 0
  return model.linear ? takenLinear(model, jointC) : takenByCorrelation(model, jointC)
}
