import { layFactor } from '../conductor/index.ts'
import { DomainError, requireFiniteResult, requirePositive } from '../errors/index.ts'
import { type UnrolledJoint, unrolled, type WoundJoint } from './woundJoint.ts'

/**
 * Bond width per length of joint where one wire is wrapped round another: fillet along the whole helix, at most the core's perimeter.
 *
 * In the limit of a straight wrap it is the fillet itself, as in a lap.
 *
 * @equation w' = min(w sqrt((pi D)^2 + p^2)/p, pi D)
 * @symbol w - filletWidthMm - mm - width of good fillet between core and wrap, across the wrapped wire
 * @symbol D - coreDiameterMm - mm - wire that goes straight through
 * @symbol p - pitchMm - mm - advance of one turn; close turns: the wrapped wire's diameter
 * @symbol w' - result - mm - bond area per length of joint
 * @domain coreDiameterMm: above 0
 * @domain pitchMm: above 0
 * @domain filletWidthMm: above 0
 * @throws DomainError outside the domain
 * @example
 * wrappedJointBondWidthMm({ coreDiameterMm: 1.13, pitchMm: 1.5, filletWidthMm: 0.5 }) // 1.2846
 * @source derived: geometry of a helix on the core's surface
 */
export function wrappedJointBondWidthMm(i: { readonly coreDiameterMm: number; readonly pitchMm: number; readonly filletWidthMm: number }): number {
  const D = requirePositive('coreDiameterMm', i.coreDiameterMm)
  const p = requirePositive('pitchMm', i.pitchMm)
  const w = requirePositive('filletWidthMm', i.filletWidthMm)
  return requireFiniteResult('coreDiameterMm', D, Math.min(w * layFactor({ layerDiameterMm: D, pitchMm: p }), Math.PI * D))
}

/**
 * One wire wrapped round another and soldered, unrolled into the equivalent straight overlap: input of lapJointResistanceOhm.
 *
 * The fillet is filletConductanceSPerM's with the thinner diameter for both, so filletWidthMm and layerMm are at most that diameter. conductorsOhmPerM.0 is the core, .1 the wrapped wire. A lineman's splice has such a wrap at either end: one of them alone, with the other's length of core, is an upper bound.
 *
 * @equation L = n p, w' = wrappedJointBondWidthMm, r2' = r2 sqrt(1 + (pi (D + d)/p)^2)
 * @symbol D - coreDiameterMm - mm - wire that goes straight through
 * @symbol d - wrapDiameterMm - mm - wrapped wire
 * @symbol n - turns - 1 - turns of the wrap
 * @symbol p - pitchMm - mm - advance of one turn, at least d
 * @symbol w - filletWidthMm - mm - width of good fillet between core and wrap
 * @symbol s - layerMm - mm - thickness of the solder between them
 * @symbol rho_s - layerOhmM - ohm m - resistivity of the solder
 * @symbol rho - resistivityOhmM - ohm m - resistivity across the wires
 * @symbol r1 - conductorsOhmPerM.0 - ohm/m - core
 * @symbol r2 - conductorsOhmPerM.1 - ohm/m - wrapped wire, straight
 * @symbol L - result - mm - overlap, beside the conductors per metre of it, the interface and the bond's width
 * @domain coreDiameterMm: above 0
 * @domain wrapDiameterMm: above 0
 * @domain turns: above 0
 * @domain pitchMm: above 0
 * @domain filletWidthMm: above 0
 * @domain layerMm: above 0
 * @domain layerOhmM: above 0
 * @domain resistivityOhmM: above 0
 * @domain optional filmOhmM2: at least 0
 * @domain conductorsOhmPerM.0: at least 0
 * @domain conductorsOhmPerM.1: at least 0
 * @throws DomainError outside the domain, and where turns would lie on each other (pitchMm below wrapDiameterMm)
 * @example
 * wrappedJointOverlap({ coreDiameterMm: 1.13, wrapDiameterMm: 1.13, turns: 5, pitchMm: 1.5, filletWidthMm: 0.5, layerMm: 0.05, layerOhmM: 1.5e-7, resistivityOhmM: 1.7241e-8, filmOhmM2: 1e-12, conductorsOhmPerM: [0.0172, 0.0172] }) // { overlapMm: 7.5, conductorsOhmPerM: [0.0172, 0.08321], bondWidthMm: 1.2846 }
 * @source derived: geometry of a helix
 */
export function wrappedJointOverlap(i: WoundJoint & { readonly coreDiameterMm: number; readonly wrapDiameterMm: number }): UnrolledJoint {
  const d = requirePositive('wrapDiameterMm', i.wrapDiameterMm)
  const width = wrappedJointBondWidthMm(i)
  if (i.pitchMm < d) throw new DomainError('pitchMm', i.pitchMm, `at least wrapDiameterMm, ${d}: turns lie side by side`, undefined, 'contradiction')
  return unrolled(i, Math.min(d, i.coreDiameterMm), width, [1, layFactor({ layerDiameterMm: i.coreDiameterMm + d, pitchMm: i.pitchMm })])
}
