import { DomainError, requireFiniteResult, requireNotNegative, requirePositive } from '../errors/index.ts'
import { lapDefaults } from './lapDefaults.ts'
import { mmPerM } from './lapPair.ts'

/**
 * Conductance between two conductors per metre of overlap, from the solder between them and a film if there is one.
 *
 * Even strip: solder and film in series, without spreading inside the conductors. A film alone (layerMm 0) is a dry contact of known specific resistance. For a solder fillet between round wires use filletConductanceSPerM; for a strip along a round wire add the wireSpreadingOhmM of each wire to 1/g.
 *
 * @equation g = w/(rho_s s + rho_c)
 * @symbol w - bondWidthMm - mm - width of the bond across the overlap: good fillet, not the wire's diameter
 * @symbol s - layerMm - mm - thickness of the layer between the conductors
 * @symbol rho_s - layerOhmM - ohm m - resistivity of the layer
 * @symbol rho_c - filmOhmM2 else lapDefaults.filmOhmM2 - ohm m2 - specific resistance of the film
 * @symbol g - result - S/m - conductance per metre of overlap
 * @domain bondWidthMm: above 0
 * @domain layerMm: at least 0
 * @domain layerOhmM: above 0
 * @domain optional filmOhmM2: at least 0
 * @throws DomainError outside the domain, and if layer and film are both 0
 * @example
 * interfaceConductanceSPerM({ bondWidthMm: 1, layerMm: 0.1, layerOhmM: 1.5e-7, filmOhmM2: 5e-12 }) // 50000000
 * @source derived: layer and film in series over the bond's width
 */
export function interfaceConductanceSPerM(i: {
  readonly bondWidthMm: number
  readonly layerMm: number
  readonly layerOhmM: number
  readonly filmOhmM2?: number
}): number {
  const w = requirePositive('bondWidthMm', i.bondWidthMm) / mmPerM
  const s = requireNotNegative('layerMm', i.layerMm) / mmPerM
  const ρs = requirePositive('layerOhmM', i.layerOhmM)
  const ρc = i.filmOhmM2 === undefined ? lapDefaults.filmOhmM2 : requireNotNegative('filmOhmM2', i.filmOhmM2)
  const crossed = ρs * s + ρc
  if (crossed === 0)
    throw new DomainError('layerMm', i.layerMm, 'above 0 where there is no film: nothing would stand between the conductors', undefined, 'contradiction')
  return requireFiniteResult('bondWidthMm', i.bondWidthMm, w / crossed)
}
