import { requireFiniteResult, requirePositive } from '../errors/index.ts'
import { frozen } from '../errors/inner.ts'
import { type Interval, knownNominal, type Provenance, type SolderName, solder } from '../materials/index.ts'

/** Sustained over short-time strength of a soldered sleeve joint, under a constant load for 10,000 h. */
export const sustainedStrengthShares = /* @__PURE__ */ frozen({
  /** 50 % tin, 50 % lead. */
  tinLead: { low: 1 / 18, high: 1 / 18 },
  tinAntimony: { low: 1 / 7, high: 1 / 5 },
  hours: 10_000,
  provenance: {
    status: 'published',
    source: 'Maupin and Swanger, Strength of Soft-Soldered Joints in Copper Tubing, NBS Building Materials and Structures Report BMS58',
    edition: '1940',
    clause: 'abstract',
  },
} as const satisfies { readonly tinLead: Interval; readonly tinAntimony: Interval; readonly hours: number; readonly provenance: Provenance })

/** Alloy of the long-term test. */
const tested: SolderName = 'Sn50Pb50'

/**
 * Gives the strength of a soldered lap in a single pull, and under a sustained load.
 *
 * The long-term test used 50 % tin, 50 % lead; for every other alloy the sustained strength is extrapolated, as `extrapolated` says. A plan lets no lap carry a sustained load at all.
 *
 * @equation F = tau w L; F_long = F/18
 * @symbol tau - shearMPa - MPa - short-time shear strength of the solder
 * @symbol w - bondWidthMm - mm - width over which solder joins the two
 * @symbol L - overlapMm - mm - length of the lap
 * @symbol F - result - N - pulled once
 * @symbol F_long - result - N - under a constant load for 10,000 h
 * @domain overlapMm: above 0
 * @domain bondWidthMm: above 0
 * @domain optional shearMPa: above 0
 * @throws DomainError outside the domain
 * @throws UnknownEntryError for an alloy that is not listed, or without a shear strength where none is given
 * @example
 * lapStrengthN({ alloy: 'Sn63Pb37', overlapMm: 6, bondWidthMm: 1, shearMPa: 30 }) // { shortTimeN: 180, sustainedN: 10, extrapolated: true }
 * @source NBS BMS58 (1940), abstract, for the sustained share; a uniform shear stress over the bond
 */
export function lapStrengthN(i: { readonly alloy: SolderName; readonly overlapMm: number; readonly bondWidthMm: number; readonly shearMPa?: number }): {
  readonly shortTimeN: number
  readonly sustainedN: number
  readonly extrapolated: boolean
} {
  const alloy = solder(i.alloy)
  const L = requirePositive('overlapMm', i.overlapMm)
  const w = requirePositive('bondWidthMm', i.bondWidthMm)
  const tau = requirePositive('shearMPa', i.shearMPa ?? knownNominal(alloy, 'shearMPa', alloy.shearMPa))
  const F = requireFiniteResult('overlapMm', L, tau * w * L)
  return { shortTimeN: F, sustainedN: F * sustainedStrengthShares.tinLead.low, extrapolated: i.alloy !== tested }
}
