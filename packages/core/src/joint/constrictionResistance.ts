import { requireFiniteResult, requirePositive, requireWhole } from '../errors/index.ts'
import { contactDefaults } from './contactDefaults.ts'
import { mmPerM } from './lapPair.ts'

/**
 * Constriction resistance: the current squeezes through the few round spots at which two metals really touch.
 *
 * Spots in a cluster hinder each other: the cluster then counts as one more, larger spot (Greenwood's simple form). For a single spot, or spots far apart, leave the cluster's radius out. Assumes spots small against the parts and their spacing.
 *
 * @equation R = (rho1 + rho2)/4 (1/(n a) + 1/alpha)
 * @symbol rho1 - resistivity1OhmM - ohm m - metal on one side
 * @symbol rho2 - resistivity2OhmM - ohm m - metal on the other
 * @symbol a - spotRadiusMm - mm - radius of one spot
 * @symbol n - spots - 1 - number of like spots
 * @symbol alpha - clusterRadiusMm - mm - radius of the patch in which they lie
 * @symbol R - result - ohm - constriction resistance
 * @domain resistivity1OhmM: above 0
 * @domain resistivity2OhmM: above 0
 * @domain spotRadiusMm: above 0
 * @domain optional spots: whole at least 1
 * @domain optional clusterRadiusMm: above 0
 * @throws DomainError outside the domain
 * @example
 * constrictionResistanceOhm({ resistivity1OhmM: 1.7241e-8, resistivity2OhmM: 1.7241e-8, spotRadiusMm: 0.01, spots: 10, clusterRadiusMm: 0.2 }) // 0.00012931
 * @source Holm, Electric Contacts, 1967 (spot); Greenwood 1966 (cluster); both from memory
 */
export function constrictionResistanceOhm(i: {
  readonly resistivity1OhmM: number
  readonly resistivity2OhmM: number
  readonly spotRadiusMm: number
  readonly spots?: number
  readonly clusterRadiusMm?: number
}): number {
  const ρ1 = requirePositive('resistivity1OhmM', i.resistivity1OhmM)
  const ρ2 = requirePositive('resistivity2OhmM', i.resistivity2OhmM)
  const a = requirePositive('spotRadiusMm', i.spotRadiusMm) / mmPerM
  const n = i.spots === undefined ? contactDefaults.spots : requireWhole('spots', i.spots, 1)
  const crowding = i.clusterRadiusMm === undefined ? 0 : mmPerM / requirePositive('clusterRadiusMm', i.clusterRadiusMm)
  return requireFiniteResult('spotRadiusMm', i.spotRadiusMm, 0.25 * (ρ1 + ρ2) * (1 / (n * a) + crowding))
}
