import { requireBetween, requirePositive } from '../errors/index.ts'

/**
 * Gives the void area between the strands of a conductor, which wicking solder fills.
 *
 * A round conductor.
 *
 * @equation A_v = pi d^2/4 - A
 * @symbol d - diameterMm - mm - across the bare conductor
 * @symbol A - areaMm2 - mm2 - area of its metal
 * @symbol A_v - result - mm2 - area of the gaps
 * @domain areaMm2: above 0
 * @domain diameterMm: from 1.1283791670955126 to 1e150
 * @throws DomainError outside the domain; a conductor is at least as wide as its metal in one piece
 * @example
 * strandVoidMm2({ areaMm2: 1, diameterMm: 1.3 }) // 0.32732
 * @source derived: plane geometry
 */
export function strandVoidMm2(i: { readonly areaMm2: number; readonly diameterMm: number }): number {
  const A = requirePositive('areaMm2', i.areaMm2)
  const d = requireBetween('diameterMm', i.diameterMm, Math.sqrt((4 * A) / Math.PI), 1e150, 'a conductor is at least as wide as its metal in one piece')
  return Math.max(0, (Math.PI * d * d) / 4 - A)
}
