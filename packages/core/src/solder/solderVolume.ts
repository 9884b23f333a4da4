import { DomainError, requireBetween, requireFiniteResult, requireNotNegative, requirePositive } from '../errors/index.ts'
import { frozen } from '../errors/inner.ts'

/** Defaults of solderVolumeMm3 and solderPartsMm3. */
export const solderVolumeDefaults = /* @__PURE__ */ frozen({
  /** Both valleys filled to the common tangent. */
  valleyFill: 1,
  /** Solid wires. */
  strandVoidMm2: 0,
  /** No layer of solder outside. */
  coatingMm: 0,
  provenance: { status: 'derived', source: 'a fillet that follows the common tangent, the fullest that still shows the outline of the wires' },
} as const)

/** Half the angle, at the first wire's centre, between the contact points of both common tangents on the side of the second wire. */
function footAngle(r1: number, r2: number): number {
  return Math.acos((r1 - r2) / (r1 + r2))
}

/** Area between two touching circles and a common tangent, on one side. */
function valleyArea(r1: number, r2: number): number {
  const a = footAngle(r1, r2)
  return (r1 + r2) * Math.sqrt(r1 * r2) - 0.5 * (r1 * r1 * a + r2 * r2 * (Math.PI - a))
}

/** Length of a taut string round two touching circles. */
function girth(r1: number, r2: number): number {
  const a = footAngle(r1, r2)
  return 4 * Math.sqrt(r1 * r2) + 2 * r1 * (Math.PI - a) + 2 * r2 * a
}

function pairOf(diametersMm: readonly [number, number]): readonly [number, number] {
  if (!Array.isArray(diametersMm) || diametersMm.length !== 2) {
    throw new DomainError('diametersMm', diametersMm, 'the diameters of two wires', undefined, diametersMm === undefined ? 'missing' : 'wrong-choice')
  }
  return [requirePositive('diametersMm.0', diametersMm[0]), requirePositive('diametersMm.1', diametersMm[1])]
}

/**
 * Gives the solder of a lap part by part: the fillets in both valleys, the voids between strands, and a layer round the pair.
 *
 * @equation V_f = 2 f L ((r1 + r2) sqrt(r1 r2) - (r1^2 a + r2^2 (pi - a))/2), cos a = (r1 - r2)/(r1 + r2); V_s = A_v L; V_c = t L girth
 * @symbol r1 - diametersMm.0 - mm - half of it is the first wire's radius
 * @symbol r2 - diametersMm.1 - mm - half of it is the second wire's radius
 * @symbol L - overlapMm - mm - length of the lap
 * @symbol f - valleyFill - 1 - how much of the valleys up to the common tangent is filled
 * @symbol A_v - strandVoidMm2 - mm2 - voids between the strands of both wires together
 * @symbol t - coatingMm - mm - thickness of the skin
 * @symbol V_f - result - mm3 - fillets
 * @symbol V_s - result - mm3 - voids
 * @symbol V_c - result - mm3 - skin
 * @domain overlapMm: above 0
 * @domain diametersMm.0: above 0
 * @domain diametersMm.1: above 0
 * @domain optional valleyFill: from 0 to 1
 * @domain optional strandVoidMm2: at least 0
 * @domain optional coatingMm: at least 0
 * @throws DomainError outside the domain
 * @example
 * solderPartsMm3({ overlapMm: 6, diametersMm: [1, 1], valleyFill: 1, strandVoidMm2: 0.2, coatingMm: 0.05 }) // { filletMm3: 1.2876, strandMm3: 1.2, coatingMm3: 1.5425, totalMm3: 4.0301 }
 * @source plane geometry of two touching circles, their common tangents and the string round them
 */
export function solderPartsMm3(i: {
  readonly overlapMm: number
  readonly diametersMm: readonly [number, number]
  readonly valleyFill?: number
  readonly strandVoidMm2?: number
  readonly coatingMm?: number
}): { readonly filletMm3: number; readonly strandMm3: number; readonly coatingMm3: number; readonly totalMm3: number } {
  const L = requirePositive('overlapMm', i.overlapMm)
  const [d1, d2] = pairOf(i.diametersMm)
  const f = requireBetween('valleyFill', i.valleyFill ?? solderVolumeDefaults.valleyFill, 0, 1)
  const voids = requireNotNegative('strandVoidMm2', i.strandVoidMm2 ?? solderVolumeDefaults.strandVoidMm2)
  const t = requireNotNegative('coatingMm', i.coatingMm ?? solderVolumeDefaults.coatingMm)
  const filletMm3 = 2 * f * L * valleyArea(d1 / 2, d2 / 2)
  const strandMm3 = voids * L
  const coatingMm3 = t * L * girth(d1 / 2, d2 / 2)
  const totalMm3 = requireFiniteResult('overlapMm', L, filletMm3 + strandMm3 + coatingMm3)
  return { filletMm3, strandMm3, coatingMm3, totalMm3 }
}

/**
 * Gives the solder volume of a lap of two wires: both valleys up to the common tangent, and the voids between strands.
 *
 * @equation V = L (2 f ((r1 + r2) sqrt(r1 r2) - (r1^2 a + r2^2 (pi - a))/2) + A_v), cos a = (r1 - r2)/(r1 + r2)
 * @symbol r1 - diametersMm.0 - mm - half of it is the first wire's radius
 * @symbol r2 - diametersMm.1 - mm - half of it is the second wire's radius
 * @symbol L - overlapMm - mm - length of the lap
 * @symbol f - valleyFill - 1 - how much of the valleys up to the common tangent is filled
 * @symbol A_v - strandVoidMm2 - mm2 - voids between the strands of both wires together
 * @symbol V - result - mm3 - volume of solder
 * @domain overlapMm: above 0
 * @domain diametersMm.0: above 0
 * @domain diametersMm.1: above 0
 * @domain optional valleyFill: from 0 to 1
 * @domain optional strandVoidMm2: at least 0
 * @throws DomainError outside the domain
 * @example
 * solderVolumeMm3({ overlapMm: 6, diametersMm: [1, 1], valleyFill: 1, strandVoidMm2: 0.2 }) // 2.4876
 * @source plane geometry of two touching circles and their common tangents
 */
export function solderVolumeMm3(i: {
  readonly overlapMm: number
  readonly diametersMm: readonly [number, number]
  readonly valleyFill?: number
  readonly strandVoidMm2?: number
}): number {
  return solderPartsMm3({
    overlapMm: i.overlapMm,
    diametersMm: i.diametersMm,
    valleyFill: i.valleyFill ?? solderVolumeDefaults.valleyFill,
    strandVoidMm2: i.strandVoidMm2 ?? solderVolumeDefaults.strandVoidMm2,
  }).totalMm3
}
