import { DomainError, requireFiniteResult, requirePositive } from '../errors/index.ts'
import { standardGravityMPerS2 } from '../heat/index.ts'

/** Millimetres in a metre. */
const mmPerM = 1000

/**
 * How far a wire pulled level between two ties hangs down in the middle.
 *
 * Weight uniform along the span, which makes the curve a parabola: 2.1 % too flat at a sag of 1/8 of the span, less below. The pull is its horizontal component, constant along the wire; at a tie the weight of a length of wire equal to the sag is added. Stiffness is left out: it makes the sag smaller.
 *
 * @equation s = m g L^2/(8 T)
 * @symbol m - massKgPerM - kg/m - mass per length, insulation and all
 * @symbol g - standardGravityMPerS2 - m/s2 - standard gravity
 * @symbol L - spanMm - mm - distance between the ties, both at one height
 * @symbol T - pullN - N - level part of the pull, at least the weight of the wire between the ties
 * @symbol s - result - mm - sag in the middle, at most an eighth of the span
 * @domain spanMm: above 0
 * @domain massKgPerM: above 0
 * @domain pullN: above 0
 * @throws DomainError outside the domain, or where pullN is below the weight of the span: the sag would pass an eighth of it; the error tells the pull that is needed
 * @example
 * wireSagMm({ spanMm: 300, massKgPerM: 0.012, pullN: 0.5 }) // 2.6478
 * @source derived: moments about a tie, of a load even along the span; the limit of an eighth is set here, for its 2.1 %
 */
export function wireSagMm(i: { readonly spanMm: number; readonly massKgPerM: number; readonly pullN: number }): number {
  const L = requirePositive('spanMm', i.spanMm)
  const m = requirePositive('massKgPerM', i.massKgPerM)
  const T = requirePositive('pullN', i.pullN)
  const W = requireFiniteResult('massKgPerM', m, m * standardGravityMPerS2 * (L / mmPerM))
  // s = W L/(8 T): an eighth of the span at T = W.
  if (T < W) throw new DomainError('pullN', T, `at least ${W}, the weight of massKgPerM over spanMm: less lets the wire sag by more than an eighth of it`)
  return (W / T) * (L / 8)
}
