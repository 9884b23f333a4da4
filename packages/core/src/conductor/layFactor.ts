import { requireChoice, requireFiniteResult, requireNotNegative, requirePositive } from '../errors/index.ts'
import { frozen } from '../errors/inner.ts'
import type { MaterialValue } from '../materials/index.ts'

/**
 * Length of a layer's strands over the length of the wire: its resistance and mass grow by the same factor.
 *
 * One layer of strands.
 *
 * @equation K = sqrt(1 + (pi d/p)^2)
 * @symbol d - layerDiameterMm - mm - diameter of the helix through the centres of the layer's strands; 0 for the straight core
 * @symbol p - pitchMm - mm - length of wire for one turn
 * @symbol K - result - 1 - length of a strand over length of the wire
 * @domain layerDiameterMm: at least 0
 * @domain pitchMm: above 0
 * @throws DomainError outside the domain
 * @example
 * layFactor({ layerDiameterMm: 1, pitchMm: 16 }) // 1.0191
 * @source derived: geometry of a helix
 */
export function layFactor(i: { readonly layerDiameterMm: number; readonly pitchMm: number }): number {
  requireNotNegative('layerDiameterMm', i.layerDiameterMm)
  requirePositive('pitchMm', i.pitchMm)
  const turn = Math.PI * (i.layerDiameterMm / i.pitchMm)
  return requireFiniteResult('pitchMm', i.pitchMm, Math.sqrt(1 + turn ** 2))
}

/** Lay factors of whole conductors, core and all layers together, by class of IEC 60228. */
export const layFactors = /* @__PURE__ */ frozen({
  1: { low: 1, nominal: 1, high: 1, provenance: { status: 'derived', source: 'a solid wire is as long as itself' } },
  2: {
    low: 1.01,
    nominal: 1.02,
    high: 1.03,
    provenance: { status: 'published', source: 'ASTM B496, increment of mass and resistance of concentric-lay conductors, 2 %; the range is from memory' },
  },
  5: { low: 1.01, nominal: 1.03, high: 1.05, provenance: { status: 'from memory', source: 'bunched and rope-lay flexible conductors' } },
  6: { low: 1.02, nominal: 1.04, high: 1.05, provenance: { status: 'from memory', source: 'bunched and rope-lay very flexible conductors' } },
} as const satisfies Readonly<Record<1 | 2 | 5 | 6, MaterialValue>>)

/**
 * Usual lay factor of a whole conductor by its class, with its range: solid 1, stranded 2, flexible 5, very flexible 6.
 *
 * @equation row of layFactors
 * @symbol K - result - 1 - length of a strand over length of the wire, low, nominal and high
 * @throws DomainError for a class that IEC 60228 doesn't have
 * @example
 * layFactorOfClass(2) // { low: 1.01, nominal: 1.02, high: 1.03 }
 * @source ASTM B496-04 for stranded conductors; flexible ones from memory
 */
export function layFactorOfClass(conductorClass: 1 | 2 | 5 | 6): MaterialValue {
  requireChoice('conductorClass', conductorClass, [1, 2, 5, 6], 'IEC 60228')
  return layFactors[conductorClass]
}
