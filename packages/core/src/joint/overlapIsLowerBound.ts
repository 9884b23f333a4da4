import { requirePositive } from '../errors/index.ts'
import { couplingPerM, type LapPair, mmPerM, requireLapPair } from './lapPair.ts'

/**
 * Tells whether the resistance of an overlap is a lower bound only, because the current has no room to spread inside the wires as the model takes for granted.
 *
 * So it is where the overlap, or the transfer length, is below one wire diameter; of unlike wires the thicker one counts.
 *
 * @equation bound where L < d or 1/sqrt(g (r1 + r2)) < d; d is the larger of d1 and d2
 * @symbol L - overlapMm - mm - length of the overlap
 * @symbol r1 - conductorsOhmPerM.0 - ohm/m - first conductor
 * @symbol r2 - conductorsOhmPerM.1 - ohm/m - second conductor
 * @symbol g - interfaceSPerM - S/m - conductance of the interface per metre of overlap
 * @symbol d1 - diametersMm.0 - mm - first conductor's diameter
 * @symbol d2 - diametersMm.1 - mm - second conductor's diameter
 * @symbol bound - result - 1 - true where one dimension gives a lower bound
 * @domain overlapMm: above 0
 * @domain conductorsOhmPerM.0: at least 0
 * @domain conductorsOhmPerM.1: at least 0
 * @domain interfaceSPerM: above 0
 * @domain diametersMm.0: above 0
 * @domain diametersMm.1: above 0
 * @throws DomainError outside the domain
 * @example
 * overlapIsLowerBound({ overlapMm: 5, conductorsOhmPerM: [0.0172, 0.0172], interfaceSPerM: 6.7e7, diametersMm: [1.13, 1.13] }) // true
 * @source derived: spreading resistance inside the wires, left out by a model of one dimension
 */
export function overlapIsLowerBound(i: LapPair & { readonly diametersMm: readonly [number, number] }): boolean {
  requireLapPair(i)
  const d1 = requirePositive('diametersMm.0', i.diametersMm?.[0])
  const d2 = requirePositive('diametersMm.1', i.diametersMm?.[1])
  const d = Math.max(d1, d2)
  const λ = couplingPerM(i.interfaceSPerM, i.conductorsOhmPerM[0] + i.conductorsOhmPerM[1])
  return i.overlapMm < d || mmPerM < d * λ
}
