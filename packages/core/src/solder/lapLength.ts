import { requireFiniteResult, requirePositive } from '../errors/index.ts'
import { frozen } from '../errors/inner.ts'
import type { Provenance } from '../materials/index.ts'

/** Workmanship rule to show beside the computed length: overlap of two wires of a soldered lap, in conductor diameters. */
export const lapOverlapDiameters = /* @__PURE__ */ frozen({
  low: 3,
  high: 6,
  provenance: { status: 'published', source: 'NASA-STD-8739.4', edition: 'Change 6', clause: '19.6.1, 19.7.1' },
} as const satisfies { readonly low: number; readonly high: number; readonly provenance: Provenance })

/**
 * Gives the overlap at which a soldered lap is as strong as its conductor in a short pull; no lap carries a sustained load.
 *
 * Pulled once: no lap carries a sustained load.
 *
 * @equation L = S sigma A/(tau w)
 * @symbol S - safetyFactor - 1 - how much stronger the lap is to be than the conductor
 * @symbol sigma - tensileMPa - MPa - tensile strength of the conductor
 * @symbol A - areaMm2 - mm2 - area of the conductor
 * @symbol tau - shearMPa - MPa - short-time shear strength of the solder
 * @symbol w - bondWidthMm - mm - width over which solder joins the two, half to one diameter of round wires side by side
 * @symbol L - result - mm - length of the lap
 * @domain tensileMPa: above 0
 * @domain areaMm2: above 0
 * @domain shearMPa: above 0
 * @domain safetyFactor: above 0
 * @domain bondWidthMm: above 0
 * @throws DomainError outside the domain
 * @example
 * lapLengthForStrengthMm({ tensileMPa: 220, areaMm2: 1, shearMPa: 30, safetyFactor: 1, bondWidthMm: 1 }) // 7.3333
 * @source derived: from equal forces: a uniform shear stress over the bond; its ends bear more (shear lag)
 */
export function lapLengthForStrengthMm(i: {
  readonly tensileMPa: number
  readonly areaMm2: number
  readonly shearMPa: number
  readonly safetyFactor: number
  readonly bondWidthMm: number
}): number {
  const sigma = requirePositive('tensileMPa', i.tensileMPa)
  const A = requirePositive('areaMm2', i.areaMm2)
  const tau = requirePositive('shearMPa', i.shearMPa)
  const S = requirePositive('safetyFactor', i.safetyFactor)
  const w = requirePositive('bondWidthMm', i.bondWidthMm)
  return requireFiniteResult('bondWidthMm', w, (S * sigma * A) / (tau * w))
}
