import { requireFiniteResult, requirePositive } from '../errors/index.ts'
import { couplingPerM, mmPerM, requireConductors } from './lapPair.ts'

/**
 * Length over which the current goes from one conductor to the other: an overlap of a few of them is as good as any longer one.
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
 * @source derived with lapJointResistanceOhm; transfer length of a contact, Berger 1972 (from memory)
 */
export function transferLengthMm(i: { readonly conductorsOhmPerM: readonly [number, number]; readonly interfaceSPerM: number }): number {
  const [r1, r2] = requireConductors(i.conductorsOhmPerM)
  requirePositive('interfaceSPerM', i.interfaceSPerM)
  return requireFiniteResult('conductorsOhmPerM', i.conductorsOhmPerM, mmPerM / couplingPerM(i.interfaceSPerM, r1 + r2))
}
