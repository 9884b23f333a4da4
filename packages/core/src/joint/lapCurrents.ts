import { DomainError, requireFiniteResult, requireNotNegative } from '../errors/index.ts'
import { couplingPerM, type LapPair, mmPerM, requireLapPair, shortestCoupling } from './lapPair.ts'

/**
 * How the current passes from the first conductor to the second along the overlap, and where the interface current peaks: always at an end.
 *
 * With like conductors both ends carry the same; with unlike ones the end from which the poorer conductor goes on alone carries more.
 *
 * @equation I1/I = r2/s + [r1 sinh(u - v) - r2 sinh(v)]/(s sinh u); -d(I1/I)/dx = lambda [r1 cosh(u - v) + r2 cosh(v)]/(s sinh u); v = lambda x, u = lambda L
 * @symbol L - overlapMm - mm - length of the overlap
 * @symbol r1 - conductorsOhmPerM.0 - ohm/m - conductor that brings the current
 * @symbol r2 - conductorsOhmPerM.1 - ohm/m - conductor that takes it away
 * @symbol g - interfaceSPerM - S/m - conductance of the interface per metre of overlap
 * @symbol x - atMm - mm - places along the overlap, from where the current comes
 * @symbol I1/I - result - 1 - share of the current in the first conductor, beside what crosses the interface per metre
 * @domain overlapMm: above 0
 * @domain conductorsOhmPerM.0: at least 0
 * @domain conductorsOhmPerM.1: at least 0
 * @domain interfaceSPerM: above 0
 * @domain atMm.0: at least 0
 * @throws DomainError outside the domain; atMm lies within the overlap
 * @example
 * lapCurrents({ overlapMm: 10, conductorsOhmPerM: [0.0172, 0.0172], interfaceSPerM: 100000, atMm: [5] }) // [{ firstShare: 0.5, interfacePerM: 98.581 }]
 * @source derived with lapJointResistanceOhm
 */
export function lapCurrents(i: LapPair & { readonly atMm: readonly number[] }): readonly { readonly firstShare: number; readonly interfacePerM: number }[] {
  requireLapPair(i)
  if (!Array.isArray(i.atMm)) throw new DomainError('atMm', i.atMm, 'a list of places along the overlap', undefined, 'missing')
  const [r1, r2] = i.conductorsOhmPerM
  const s = requireFiniteResult('conductorsOhmPerM', i.conductorsOhmPerM, r1 + r2)
  const L = i.overlapMm / mmPerM
  const λ = couplingPerM(i.interfaceSPerM, s)
  // Clamped: beyond any real overlap only the ends matter, and the product must stay finite.
  const u = Math.min(λ * L, Number.MAX_VALUE)
  return i.atMm.map((xMm, k) => {
    if (requireNotNegative(`atMm.${k}`, xMm) > i.overlapMm)
      throw new DomainError(`atMm.${k}`, xMm, `from 0 to overlapMm, ${i.overlapMm}`, undefined, 'contradiction')
    const ξ = xMm / i.overlapMm
    // With nearly no conductor resistance the interface current is uniform.
    const here = u < shortestCoupling ? { firstShare: 1 - ξ, interfacePerM: 1 / L } : at(ξ, r1 / s, r2 / s, u, L)
    requireFiniteResult('overlapMm', i.overlapMm, here.interfacePerM)
    return here
  })
}

/** sinh and cosh of both distances over sinh u, by decaying exponentials, so that no overlap overflows. */
function at(ξ: number, a: number, b: number, u: number, L: number): { readonly firstShare: number; readonly interfacePerM: number } {
  const v = u * ξ
  const w = u - v
  const fromStart = Math.exp(-v) / -Math.expm1(-2 * u)
  const fromEnd = Math.exp(-w) / -Math.expm1(-2 * u)
  return {
    firstShare: b - a * Math.expm1(-2 * w) * fromStart + b * Math.expm1(-2 * v) * fromEnd,
    interfacePerM: (u * (a * (1 + Math.exp(-2 * w)) * fromStart + b * (1 + Math.exp(-2 * v)) * fromEnd)) / L,
  }
}
