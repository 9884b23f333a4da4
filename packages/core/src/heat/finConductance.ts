import { requireChoice, requireFiniteResult, requireNotNegative, requirePositive } from '../errors/index.ts'
import { frozen } from '../errors/inner.ts'

type FinEnd = 'insulated' | 'held'
const finEnds = ['insulated', 'held'] as const satisfies readonly FinEnd[]

/** Defaults of finConductanceWPerK: an adiabatic far end, and without a length an endless fin. */
export const finDefaults = /* @__PURE__ */ frozen({
  end: 'insulated',
  provenance: { status: 'common practice', source: 'the fin with an adiabatic tip of the textbooks' },
} as const)

/**
 * Gives the heat a wire draws from its hot end for each kelvin, conducting along itself and losing heat on the way.
 *
 * @equation Y = sqrt(k A G) tanh(m L), or coth in place of tanh where the end is held; m = sqrt(G/(k A))
 * @symbol k - conductivityWPerMK - W/(m K) - conductivity of the metal
 * @symbol A - areaMm2 - mm2 - area of the metal
 * @symbol G - lossWPerMK - W/(m K) - heat lost to the surroundings by each metre for each kelvin
 * @symbol L - lengthMm - mm - length of the fin; endless where absent
 * @symbol Y - result - W/K - heat drawn from the hot end for each kelvin
 * @domain conductivityWPerMK: above 0
 * @domain areaMm2: above 0
 * @domain lossWPerMK: at least 0
 * @domain optional lengthMm: above 0
 * @throws DomainError outside the domain
 * @example
 * finConductanceWPerK({ conductivityWPerMK: 391, areaMm2: 1, lossWPerMK: 0.1, lengthMm: 50 }) // 0.004151
 * @source Sukhatme, Heat Transfer, fins of constant section; Incropera and DeWitt, fins of uniform cross-section
 */
export function finConductanceWPerK(i: {
  readonly conductivityWPerMK: number
  readonly areaMm2: number
  readonly lossWPerMK: number
  readonly lengthMm?: number
  readonly end?: FinEnd
}): number {
  const kA = (requirePositive('conductivityWPerMK', i.conductivityWPerMK) * requirePositive('areaMm2', i.areaMm2)) / 1e6
  const G = requireNotNegative('lossWPerMK', i.lossWPerMK)
  const end = requireChoice<FinEnd>('end', i.end ?? finDefaults.end, finEnds)
  const Y = Math.sqrt(kA) * Math.sqrt(G)
  if (i.lengthMm === undefined) return requireFiniteResult('areaMm2', i.areaMm2, Y)
  const L = requirePositive('lengthMm', i.lengthMm) / 1000
  const mL = (Math.sqrt(G) / Math.sqrt(kA)) * L
  if (end === 'insulated') return requireFiniteResult('areaMm2', i.areaMm2, Y * Math.tanh(mL))
  // Without loss, or for m L too small for tanh, a fin with its far end held is a plain bar.
  return requireFiniteResult('lengthMm', i.lengthMm, mL < 1e-9 ? kA / L : Y / Math.tanh(mL))
}
