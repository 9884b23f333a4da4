import { requireFiniteResult } from '../errors/index.ts'
import { couplingPerM, type LapPair, mmPerM, requireLapPair, shortestCoupling } from './lapPair.ts'

/**
 * Resistance of an overlap of two conductors, from its start, where the first carries all the current, to its end, where the second does.
 *
 * Not monotone in the overlap: it falls at first, then each further metre adds r1 r2/(r1 + r2). For like wires the minimum is at 2 asinh(1) = 1.763 transfer lengths.
 * One-dimensional. With the interface of filletConductanceSPerM it holds from one wire diameter of overlap on, within +4 and -0.4 % for any
 * solder layer and +7.5 % for a perfect one, so it errs high; at half a diameter it is 8 to 19 % high.
 * The equation is the usual hyperbolic form with cosh u - 1 and sinh u put together: all terms are positive and none overflows.
 *
 * @equation R = r1 r2 L/s + (r1^2 + r2^2)/(s lambda) tanh(u/2) + s/(lambda sinh u); s = r1 + r2, lambda = sqrt(g s), u = lambda L
 * @symbol L - overlapMm - mm - length of the overlap
 * @symbol r1 - conductorsOhmPerM.0 - ohm/m - conductor that brings the current
 * @symbol r2 - conductorsOhmPerM.1 - ohm/m - conductor that takes it away
 * @symbol g - interfaceSPerM - S/m - conductance of the interface per metre of overlap
 * @symbol R - result - ohm - resistance over the overlap
 * @domain overlapMm: above 0
 * @domain conductorsOhmPerM.0: at least 0
 * @domain conductorsOhmPerM.1: at least 0
 * @domain interfaceSPerM: above 0
 * @throws DomainError outside the domain
 * @example
 * lapJointResistanceOhm({ overlapMm: 10, conductorsOhmPerM: [0.0172, 0.0172], interfaceSPerM: 100000 }) // 0.0011145
 * @source derived: two conductors coupled by a conductance per length; with r2 = 0 the transfer-length result of Berger 1972 (from memory)
 */
export function lapJointResistanceOhm(i: LapPair): number {
  requireLapPair(i)
  const r1 = i.conductorsOhmPerM[0]
  const r2 = i.conductorsOhmPerM[1]
  const g = i.interfaceSPerM
  const L = i.overlapMm / mmPerM
  const s = r1 + r2
  const λ = couplingPerM(g, s)
  const u = λ * L
  if (u < shortestCoupling) return requireFiniteResult('overlapMm', i.overlapMm, 1 / (g * L))
  // d = 1 - e^-u gives tanh(u/2) = d/(2 - d) and 1/sinh u = 2 (1 - d)/(d (2 - d)).
  const d = -Math.expm1(-u)
  const shared = (r1 / s) * (r2 / s)
  return requireFiniteResult('overlapMm', i.overlapMm, s * shared * L + ((s / λ) * ((1 - 2 * shared) * d * d + 2 * (1 - d))) / (d * (2 - d)))
}
