import { layFactor } from '../conductor/index.ts'
import { DomainError, requirePositive } from '../errors/index.ts'
import { type UnrolledJoint, unrolled, type WoundJoint } from './woundJoint.ts'

/**
 * Two wires twisted together and soldered, unrolled into the equivalent straight overlap: input of lapJointResistanceOhm.
 *
 * The wires touch along the axis, so the bond is as long as the joint and as wide as the fillet; both wires are longer than the joint. The fillet is filletConductanceSPerM's with the thinner diameter for both, so filletWidthMm and layerMm are at most that diameter. Each wire turns about the line of contact. At a pitch below pi times the thicker diameter they would no longer touch along it.
 *
 * @equation L = n p, w' = w, r' = r sqrt(1 + (pi d/p)^2) for each wire
 * @symbol d - diametersMm.0 - mm - first wire; the second is diametersMm.1
 * @symbol n - turns - 1 - full turns of the pair
 * @symbol p - pitchMm - mm - length of one full turn, at least pi d of the thicker wire
 * @symbol w - filletWidthMm - mm - width of good fillet between the wires
 * @symbol s - layerMm - mm - thickness of the solder between them
 * @symbol rho_s - layerOhmM - ohm m - resistivity of the solder
 * @symbol rho - resistivityOhmM - ohm m - resistivity across the wires
 * @symbol r - conductorsOhmPerM.0 - ohm/m - first wire, straight; the second is conductorsOhmPerM.1
 * @symbol L - result - mm - overlap, beside the conductors per metre of it, the interface and the bond's width
 * @domain diametersMm.0: above 0
 * @domain diametersMm.1: above 0
 * @domain turns: above 0
 * @domain pitchMm: above 0
 * @domain filletWidthMm: above 0
 * @domain layerMm: above 0
 * @domain layerOhmM: above 0
 * @domain resistivityOhmM: above 0
 * @domain optional filmOhmM2: at least 0
 * @domain conductorsOhmPerM.0: at least 0
 * @domain conductorsOhmPerM.1: at least 0
 * @throws DomainError outside the domain, and where the pitch is below pi times the thicker wire
 * @example
 * twistedJointOverlap({ diametersMm: [1.13, 0.8], turns: 2, pitchMm: 5, filletWidthMm: 0.6, layerMm: 0.05, layerOhmM: 1.5e-7, resistivityOhmM: 1.7241e-8, filmOhmM2: 1e-12, conductorsOhmPerM: [0.0172, 0.0343] }) // { overlapMm: 10, bondWidthMm: 0.6, conductorsOhmPerM: [0.021094, 0.038389] }
 * @source derived: geometry of a helix
 */
export function twistedJointOverlap(i: WoundJoint & { readonly diametersMm: readonly [number, number] }): UnrolledJoint {
  const d1 = requirePositive('diametersMm.0', i.diametersMm?.[0])
  const d2 = requirePositive('diametersMm.1', i.diametersMm?.[1])
  const p = requirePositive('pitchMm', i.pitchMm)
  const tightest = Math.PI * Math.max(d1, d2)
  if (p < tightest)
    throw new DomainError('pitchMm', p, `at least ${tightest}, pi times the thicker wire: tighter, they don't touch along the axis`, undefined, 'contradiction')
  return unrolled(i, Math.min(d1, d2), requirePositive('filletWidthMm', i.filletWidthMm), [
    layFactor({ layerDiameterMm: d1, pitchMm: p }),
    layFactor({ layerDiameterMm: d2, pitchMm: p }),
  ])
}
