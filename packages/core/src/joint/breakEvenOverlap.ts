import { requireFiniteResult, requireNotNegative, requirePositive } from '../errors/index.ts'
import { couplingPerM, mmPerM, requireConductors } from './lapPair.ts'

/** Bisections that shrink a bracket of ratio 3 below double precision. */
const halvings = 56

/**
 * Overlap at which a lap joint equals plain wire of its own length; a longer one is better than the wire that it replaces.
 *
 * @equation R(L) = p L; h(u) = c u with h(u) = 1/(2 t) + (1/2 - 2 a b) t, t = tanh(u/2), a = r1/s, b = r2/s, c = p/s - a b, L = u/sqrt(g s)
 * @symbol r1 - conductorsOhmPerM.0 - ohm/m - conductor that brings the current
 * @symbol r2 - conductorsOhmPerM.1 - ohm/m - conductor that takes it away
 * @symbol g - interfaceSPerM - S/m - conductance of the interface per metre of overlap
 * @symbol p - plainOhmPerM - ohm/m - plain wire to compare with, the larger of the two where absent
 * @symbol L - result - mm - overlap of equal resistance, null where p is at most r1 r2/(r1 + r2): no overlap is that good
 * @domain conductorsOhmPerM.0: at least 0
 * @domain conductorsOhmPerM.1: at least 0
 * @domain interfaceSPerM: above 0
 * @domain optional plainOhmPerM: at least 0
 * @throws DomainError outside the domain
 * @example
 * breakEvenOverlapMm({ conductorsOhmPerM: [0.0172, 0.0172], interfaceSPerM: 100000, plainOhmPerM: 0.0172 }) // 40.91
 * @source derived with lapJointResistanceOhm; like wires: u/2 = coth(u/2)
 */
export function breakEvenOverlapMm(i: {
  readonly conductorsOhmPerM: readonly [number, number]
  readonly interfaceSPerM: number
  readonly plainOhmPerM?: number
}): number | null {
  const [r1, r2] = requireConductors(i.conductorsOhmPerM)
  const g = requirePositive('interfaceSPerM', i.interfaceSPerM)
  const p = i.plainOhmPerM === undefined ? Math.max(r1, r2) : requireNotNegative('plainOhmPerM', i.plainOhmPerM)
  const s = requireFiniteResult('conductorsOhmPerM', i.conductorsOhmPerM, r1 + r2)
  if (s === 0) return p === 0 ? null : requireFiniteResult('plainOhmPerM', p, mmPerM / couplingPerM(g, p))
  const shared = (r1 / s) * (r2 / s)
  const c = p / s - shared
  if (!(c > 0)) return null
  return requireFiniteResult('plainOhmPerM', p, (mmPerM * crossing(c, shared)) / couplingPerM(g, s))
}

/** Solves h(u) = c u: h lies between max(1/2, 1/u) and 1 + 1/u, which gives a bracket, and h(u) - c u is decreasing. */
function crossing(c: number, shared: number): number {
  const half = 0.5 / c
  let low = Math.max(half, 1 / Math.sqrt(c))
  let high = half + Math.hypot(half, 1 / Math.sqrt(c))
  for (let k = 0; k < halvings; k++) {
    const u = 0.5 * (low + high)
    const t = Math.tanh(0.5 * u)
    if (0.5 / t + (0.5 - 2 * shared) * t > c * u) low = u
    else high = u
  }
  return 0.5 * (low + high)
}
