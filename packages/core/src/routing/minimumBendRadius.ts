import { requireChoice, requireFiniteResult, requirePositive } from '../errors/index.ts'
import type { Provenance } from '../materials/index.ts'

/** Least bend radius in outside diameters, by how the wire lies. */
export const bendRadiusMultiples = {
  unsupported: 10,
  supported: 3,
  coaxial: 10,
  provenance: { status: 'published', source: 'FAA AC 43.13-1B, bend radii of wire and bundles', clause: 'chapter 11; three diameters where a supported wire breaks out at a terminal strip' },
} as const satisfies Readonly<Record<'unsupported' | 'supported' | 'coaxial', number>> & { readonly provenance: Provenance }

/**
 * Gives the least radius to the inside of a bend of a wire or a bundle.
 *
 * @equation R = n D, n 10 unsupported, 3 where supported at a terminal, 10 for a coaxial line
 * @symbol D - outsideDiameterMm - mm - outside diameter of wire or bundle
 * @symbol n - multiple - 1 - radius in outside diameters, in place of the rule's
 * @symbol R - result - mm - radius to the inside of the bend
 * @domain outsideDiameterMm: above 0
 * @domain optional multiple: above 0
 * @throws DomainError outside the domain, and for a rule that is none of the three
 * @example
 * minimumBendRadiusMm({ outsideDiameterMm: 2.9, rule: 'unsupported', multiple: 10 }) // 29
 * @source FAA AC 43.13-1B, chapter 11, bend radii
 */
export function minimumBendRadiusMm(i: { readonly outsideDiameterMm: number; readonly rule: 'unsupported' | 'supported' | 'coaxial'; readonly multiple?: number }): number {
  requirePositive('outsideDiameterMm', i.outsideDiameterMm)
  requireChoice('rule', i.rule, ['unsupported', 'supported', 'coaxial'])
  const multiple = i.multiple === undefined ? bendRadiusMultiples[i.rule] : requirePositive('multiple', i.multiple)
  return requireFiniteResult('outsideDiameterMm', i.outsideDiameterMm, multiple * i.outsideDiameterMm)
}
