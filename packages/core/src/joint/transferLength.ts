import { requireFiniteResult, requirePositive } from '../errors/index.ts'
import { couplingPerM, mmPerM, requireConductors, smallestNormal } from './lapPair.ts'

/**
 * Length over which the current transfers from one conductor to the other: an overlap of a few of them is as good as any longer one.
 *
 * One-dimensional: for round wires use filletConductanceSPerM for the interface, which includes the spreading inside the wires.
 *
 * @equation L_T = 1/sqrt(g (r1 + r2))
 * @symbol r1 - conductorsOhmPerM.0 - ohm/m - first conductor
 * @symbol r2 - conductorsOhmPerM.1 - ohm/m - second conductor
 * @symbol g - interfaceSPerM - S/m - conductance of the interface per metre of overlap
 * @symbol L_T - result - mm - transfer length
 * @domain conductorsOhmPerM.0: at least 0
 * @domain conductorsOhmPerM.1: at least 0
 * @domain interfaceSPerM: above 0
 * @throws DomainError outside the domain, and where both conductors are perfect: the transfer length is then endless
 * @example
 * transferLengthMm({ conductorsOhmPerM: [0.0172, 0.0172], interfaceSPerM: 66666666.7 }) // 0.66034
 * @source derived: two conductors coupled by a conductance per length, as in lapJointResistanceOhm
 */
export function transferLengthMm(i: { readonly conductorsOhmPerM: readonly [number, number]; readonly interfaceSPerM: number }): number {
  const pair = i.conductorsOhmPerM
  const g = i.interfaceSPerM
  // One combined check keeps the common case fast; on failure the checks below find the wrong parameter.
  // Comparing the constructor, unlike Array.isArray, lets the engine elide the caller's array; other array-likes take the slow path.
  const made: unknown = pair?.constructor
  if (made === Array && pair.length === 2) {
    const r1: unknown = pair[0]
    const r2: unknown = pair[1]
    if (typeof r1 === 'number' && typeof r2 === 'number' && typeof g === 'number' && r1 >= 0 && r2 >= 0) {
      const coupling = g * (r1 + r2)
      if (coupling >= smallestNormal && coupling < Infinity) return mmPerM / Math.sqrt(coupling)
    }
  }
  requireConductors(pair)
  requirePositive('interfaceSPerM', g)
  const s = requireFiniteResult('conductorsOhmPerM', pair, pair[0] + pair[1])
  return requireFiniteResult('conductorsOhmPerM', pair, mmPerM / couplingPerM(g, s))
}
