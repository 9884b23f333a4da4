import { requireFiniteResult, requireNotNegative, requirePositive, requireWhole } from '../errors/index.ts'
import { contactDefaults } from './contactDefaults.ts'
import { mmPerM } from './lapPair.ts'

/**
 * Resistance between a crimped barrel and its conductor, from the remaining contact force.
 *
 * The force sets the contact area; the same area in more spots has less resistance. A film counts over that area only. The force is an input: relaxation by springback and over years is not computed here.
 *
 * @equation A = k F/H, a = sqrt(A/(n pi)); R = (rho1 + rho2)/4 (1/(n a) + 1/alpha) + sigma/A
 * @symbol F - forceN - N - force between the faces
 * @symbol H - hardnessMPa - MPa - indentation hardness of the softer metal
 * @symbol rho1 - resistivity1OhmM - ohm m - metal on one side
 * @symbol rho2 - resistivity2OhmM - ohm m - metal on the other
 * @symbol n - spots - 1 - number of like spots
 * @symbol alpha - clusterRadiusMm - mm - radius of the patch in which they lie
 * @symbol sigma - filmOhmM2 - ohm m2 - resistance of a unit of area of the film
 * @symbol k - realAreaFactor - 1 - touching area over force over hardness
 * @symbol R - result - ohm - interface resistance
 * @domain forceN: above 0
 * @domain hardnessMPa: above 0
 * @domain resistivity1OhmM: above 0
 * @domain resistivity2OhmM: above 0
 * @domain optional spots: whole at least 1
 * @domain optional clusterRadiusMm: above 0
 * @domain optional filmOhmM2: at least 0
 * @domain optional realAreaFactor: above 0
 * @throws DomainError outside the domain
 * @example
 * crimpInterfaceResistanceOhm({ forceN: 100, hardnessMPa: 500, resistivity1OhmM: 1.7241e-8, resistivity2OhmM: 1.7241e-8, spots: 20, clusterRadiusMm: 1, filmOhmM2: 1e-12, realAreaFactor: 1 }) // 0.00002126
 * @source Holm, Electric Contacts, 1967, and Greenwood 1966 (from memory)
 */
export function crimpInterfaceResistanceOhm(i: {
  readonly forceN: number
  readonly hardnessMPa: number
  readonly resistivity1OhmM: number
  readonly resistivity2OhmM: number
  readonly spots?: number
  readonly clusterRadiusMm?: number
  readonly filmOhmM2?: number
  readonly realAreaFactor?: number
}): number {
  const F = requirePositive('forceN', i.forceN)
  const H = requirePositive('hardnessMPa', i.hardnessMPa)
  const ρ = requirePositive('resistivity1OhmM', i.resistivity1OhmM) + requirePositive('resistivity2OhmM', i.resistivity2OhmM)
  const n = i.spots === undefined ? contactDefaults.spots : requireWhole('spots', i.spots, 1)
  const crowding = i.clusterRadiusMm === undefined ? 0 : mmPerM / requirePositive('clusterRadiusMm', i.clusterRadiusMm)
  const σ = i.filmOhmM2 === undefined ? contactDefaults.filmOhmM2 : requireNotNegative('filmOhmM2', i.filmOhmM2)
  const k = i.realAreaFactor === undefined ? contactDefaults.realAreaFactor : requirePositive('realAreaFactor', i.realAreaFactor)
  const areaM2 = (k * (F / H)) / mmPerM / mmPerM
  const a = Math.sqrt(areaM2 / (n * Math.PI))
  return requireFiniteResult('forceN', F, 0.25 * ρ * (1 / (n * a) + crowding) + σ / areaM2)
}
