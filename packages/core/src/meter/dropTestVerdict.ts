import { requireFinite, requireFiniteResult, requireNotNegative, requirePositive } from '../errors/index.ts'
import { type ProofVerdict, proofVerdict } from './proofVerdict.ts'

/**
 * Whether a measured drop, scaled from the test current to the working current, stays within the allowed drop.
 *
 * Scaling takes the resistance as constant: a filmed or burnt contact gets worse with heat, so test near the working current.
 *
 * @equation V_low = (V - b) I/I_t; V_high = (V + b) I/I_t
 * @symbol V - measuredV - V - drop as measured, with its sign
 * @symbol b - uncertaintyV - V - half width of the measured drop
 * @symbol I_t - testA - A - current while it was measured
 * @symbol I - workingA - A - current that the joint will carry
 * @symbol V_high - result - V - drop at the working current, low and high, with the verdict on allowedDropV
 * @domain measuredV: finite
 * @domain uncertaintyV: at least 0
 * @domain testA: above 0
 * @domain workingA: at least 0
 * @domain allowedDropV: at least 0
 * @throws DomainError outside the domain
 * @example
 * dropTestVerdict({ measuredV: 0.012, uncertaintyV: 0.001, testA: 2, workingA: 4.2, allowedDropV: 0.05 }) // { verdict: "passes", dropLowV: 0.0231, dropHighV: 0.0273 }
 * @source Ohm's law; JCGM 106:2012, guarded acceptance and guarded rejection
 */
export function dropTestVerdict(i: {
  readonly measuredV: number
  readonly uncertaintyV: number
  readonly testA: number
  readonly workingA: number
  readonly allowedDropV: number
}): { readonly verdict: ProofVerdict; readonly dropLowV: number; readonly dropHighV: number } {
  const measured = requireFinite('measuredV', i.measuredV)
  const b = requireNotNegative('uncertaintyV', i.uncertaintyV)
  const test = requirePositive('testA', i.testA)
  const working = requireNotNegative('workingA', i.workingA)
  const allowed = requireNotNegative('allowedDropV', i.allowedDropV)
  // Adding 0 turns the -0 of a working current of 0 into 0.
  const dropLowV = requireFiniteResult('measuredV', measured, ((measured - b) * working) / test + 0)
  const dropHighV = requireFiniteResult('measuredV', measured, ((measured + b) * working) / test + 0)
  return { verdict: proofVerdict(dropLowV, dropHighV, allowed), dropLowV, dropHighV }
}
