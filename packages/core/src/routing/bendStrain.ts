import { requireNotNegative, requirePositive } from '../errors/index.ts'

/**
 * Strain of the outermost fibre of a bent strand.
 *
 * Bending alone, neutral fibre in the middle: pull and friction between strands are extra. A strand of a rope-laid wire sees less.
 *
 * @equation e = d/(2 R + d)
 * @symbol d - strandDiameterMm - mm - diameter of the strand
 * @symbol R - bendRadiusMm - mm - radius to the inside of the strand
 * @symbol e - result - 1 - strain at the outside
 * @domain strandDiameterMm: above 0
 * @domain bendRadiusMm: at least 0
 * @throws DomainError outside the domain
 * @example
 * bendStrain({ strandDiameterMm: 0.3, bendRadiusMm: 15 }) // 0.009901
 * @source derived: geometry of a round bent to a circle
 */
export function bendStrain(i: { readonly strandDiameterMm: number; readonly bendRadiusMm: number }): number {
  const d = requirePositive('strandDiameterMm', i.strandDiameterMm)
  const R = requireNotNegative('bendRadiusMm', i.bendRadiusMm)
  return 1 / (1 + 2 * (R / d))
}
