import { DomainError, requireFiniteResult, requireNotNegative, requirePositive } from '../errors/index.ts'
import { lapDefaults } from './lapDefaults.ts'
import { mmPerM } from './lapPair.ts'
import { acrossHalfAngle, spreadingFactor } from './wireSpreading.ts'

/**
 * Conductance per metre of overlap of a solder fillet between two like round wires side by side, spreading inside both included.
 *
 * Use this for overlaps of round wires: an even strip (interfaceConductanceSPerM) overestimates two to five times.
 * The current crosses the solder straight; the gap grows away from the line where the wires are closest. Within -2 to +6 % of the
 * section's field for solder of 7 to 21 times the wire's resistivity and gaps of 0.02 to 0.4 diameters; the film's part is not checked.
 * For unlike wires use the thinner diameter for both. Strands count as a uniform section only if they are wetted through.
 *
 * @equation g = 1/(rho_s/G + rho_c/w_e + 2 rho (1/8 - ln(sin(a_e/2)))/pi)
 * @equation a_e = asin(sqrt(w w_e)/d)
 * @equation w_e = s G
 * @equation G = 2 (1 + c) atan(sqrt((2 + c)/c) tan(a/2))/sqrt(c (2 + c)) - a
 * @equation c = s/d
 * @equation a = asin(w/d)
 * @symbol d - diameterMm - mm - diameter of each wire
 * @symbol rho - resistivityOhmM - ohm m - resistivity across the wires
 * @symbol s - gapMm - mm - gap between the wires where they are closest, at most d
 * @symbol w - bondWidthMm - mm - width of the fillet, measured across, at most d
 * @symbol rho_s - solderOhmM - ohm m - resistivity of the solder
 * @symbol rho_c - filmOhmM2 else lapDefaults.filmOhmM2 - ohm m2 - specific resistance of a film between solder and wire
 * @symbol a - step - 1 - half angle of the fillet
 * @symbol c - step - 1 - gap over diameter
 * @symbol G - step - 1 - width over gap of an even strip that conducts as well
 * @symbol w_e - step - mm - width of that strip
 * @symbol a_e - step - 1 - half angle from which the current spreads
 * @symbol g - result - S/m - conductance per metre of overlap
 * @domain diameterMm: above 0
 * @domain resistivityOhmM: above 0
 * @domain gapMm: above 0
 * @domain bondWidthMm: above 0
 * @domain solderOhmM: above 0
 * @domain optional filmOhmM2: at least 0
 * @throws DomainError outside the domain, and for a fillet wider or a gap larger than the wire
 * @example
 * filletConductanceSPerM({ diameterMm: 1.13, resistivityOhmM: 1.7241e-8, gapMm: 0.1, bondWidthMm: 0.565, solderOhmM: 1.5e-7, filmOhmM2: 0 }) // 18339784
 * @source derived: circle to circle, current straight across; checked by finite elements of the section
 */
export function filletConductanceSPerM(i: {
  readonly diameterMm: number
  readonly resistivityOhmM: number
  readonly gapMm: number
  readonly bondWidthMm: number
  readonly solderOhmM: number
  readonly filmOhmM2?: number
}): number {
  const d = requirePositive('diameterMm', i.diameterMm)
  const ρ = requirePositive('resistivityOhmM', i.resistivityOhmM)
  const s = requirePositive('gapMm', i.gapMm)
  const w = requirePositive('bondWidthMm', i.bondWidthMm)
  const ρs = requirePositive('solderOhmM', i.solderOhmM)
  const ρc = i.filmOhmM2 === undefined ? lapDefaults.filmOhmM2 : requireNotNegative('filmOhmM2', i.filmOhmM2)
  if (s > d) throw new DomainError('gapMm', s, `at most ${d}, the wire's diameter: no fillet bridges more`, undefined, 'contradiction')
  if (w > d) throw new DomainError('bondWidthMm', w, `at most ${d}, the wire's diameter`, undefined, 'contradiction')
  const α = acrossHalfAngle(w, d)
  const σ = s / d
  const G = (2 * (1 + σ) * Math.atan(Math.sqrt((2 + σ) / σ) * Math.tan(α / 2))) / Math.sqrt(σ * (2 + σ)) - α
  const strip = s * G
  const spreading = 2 * ρ * spreadingFactor(acrossHalfAngle(Math.sqrt(w * strip), d))
  return requireFiniteResult('bondWidthMm', w, 1 / (ρs / G + (mmPerM * ρc) / strip + spreading))
}
