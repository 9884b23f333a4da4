import { DomainError, requireFiniteResult, requirePositive } from '../errors/index.ts'

/** Spreading resistance over resistivity of a disc whose current leaves through an equipotential arc of this half angle. */
export function spreadingFactor(halfAngle: number): number {
  return (1 / 8 - Math.log(Math.sin(halfAngle / 2))) / Math.PI
}

/**
 * Spreading resistance, per metre of overlap, inside one round wire whose current leaves through a strip along its surface.
 *
 * Add it to the layer's, for each wire: 1/g' = 1/g + r1 + r2. The strip is an equipotential, which errs a little high near the ends of an overlap. filletConductanceSPerM includes it for a solder fillet between round wires. For strands wetted through use the resistivity across the wire (wettedStrandsResistivityOhmM); strands that are not wetted are not a uniform section and cannot be computed.
 *
 * @equation r = rho (1/8 - ln(sin(w/(2 d))))/pi
 * @symbol rho - resistivityOhmM - ohm m - resistivity across the wire
 * @symbol d - diameterMm - mm - diameter of the wire
 * @symbol w - bondWidthMm - mm - width of the bond along the wire's surface, at most its circumference
 * @symbol r - result - ohm m - spreading resistance of a metre of overlap
 * @domain resistivityOhmM: above 0
 * @domain diameterMm: above 0
 * @domain bondWidthMm: above 0
 * @throws DomainError outside the domain, and for a bond wider than the circumference
 * @example
 * wireSpreadingOhmM({ resistivityOhmM: 1.7241e-8, diameterMm: 1.13, bondWidthMm: 0.565 }) // 8.35124e-9
 * @source derived: mean exit time of a disc with one absorbing arc, checked by finite volumes and a boundary method to six digits
 */
export function wireSpreadingOhmM(i: { readonly resistivityOhmM: number; readonly diameterMm: number; readonly bondWidthMm: number }): number {
  const ρ = requirePositive('resistivityOhmM', i.resistivityOhmM)
  const d = requirePositive('diameterMm', i.diameterMm)
  const w = requirePositive('bondWidthMm', i.bondWidthMm)
  if (w > Math.PI * d) throw new DomainError('bondWidthMm', w, `at most ${Math.PI * d}, the circumference of a wire of ${d} mm`, undefined, 'contradiction')
  return requireFiniteResult('bondWidthMm', w, ρ * spreadingFactor(w / d))
}

/**
 * Resistivity across a stranded wire wetted through: copper strands in a matrix of solder.
 *
 * Upper bound for two phases in a plane, which round strands surrounded by solder nearly reach. It does not apply to dry strands: their contacts dominate, a thousand times worse.
 *
 * @equation rho_t = rho (1 - p K)/(q (1 + p K))
 * @equation K = (1 - q)/(1 + q)
 * @equation q = rho/rho_s
 * @symbol rho - resistivityOhmM - ohm m - resistivity of the strands
 * @symbol rho_s - solderOhmM - ohm m - resistivity of the solder
 * @symbol p - copperShare - 1 - share of the wire's round section that is strand, 0.75 to 0.8 of a usual wire
 * @symbol q - step - 1 - ratio of the resistivities
 * @symbol K - step - 1 - contrast
 * @symbol rho_t - result - ohm m - resistivity across the wire
 * @domain resistivityOhmM: above 0
 * @domain solderOhmM: above 0
 * @domain copperShare: above 0 up to 1
 * @throws DomainError outside the domain, and for a solder that conducts better than the strands
 * @example
 * wettedStrandsResistivityOhmM({ resistivityOhmM: 1.7241e-8, solderOhmM: 1.5e-7, copperShare: 0.75 }) // 3.8045e-8
 * @source Hashin-Shtrikman bound of two phases in a plane (from memory)
 */
export function wettedStrandsResistivityOhmM(i: { readonly resistivityOhmM: number; readonly solderOhmM: number; readonly copperShare: number }): number {
  const ρ = requirePositive('resistivityOhmM', i.resistivityOhmM)
  const ρs = requirePositive('solderOhmM', i.solderOhmM)
  const p = requirePositive('copperShare', i.copperShare)
  if (!(p <= 1)) throw new DomainError('copperShare', p, 'above 0 up to 1')
  if (ρs < ρ) throw new DomainError('solderOhmM', ρs, `at least ${ρ}, the resistivity of the strands`, undefined, 'contradiction')
  const q = ρ / ρs
  const K = (1 - q) / (1 + q)
  return requireFiniteResult('solderOhmM', ρs, (ρs * (1 - p * K)) / (1 + p * K))
}

/** Half angle in radian of an arc of this width; width and diameter in the same unit. */
export function acrossHalfAngle(widthMm: number, diameterMm: number): number {
  return Math.asin(Math.min(1, widthMm / diameterMm))
}
