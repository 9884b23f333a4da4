import { requireChoice, requireFiniteResult, requirePositive } from '../errors/index.ts'
import { bendRadiusMultiples } from './routingDefaults.ts'

/**
 * The smallest bend radius of a wire or a bundle, to the inside of the bend.
 *
 * @equation R = n D
 * @symbol n - multiple - 1 - diameters of the rule: 10 unsupported, 3 where it breaks out supported, 10 for a coaxial line; or one of your own
 * @symbol D - outsideDiameterMm - mm - outside diameter of the wire, or of the bundle
 * @symbol R - result - mm - radius to the inside of the bend
 * @domain outsideDiameterMm: above 0
 * @domain optional multiple: above 0
 * @throws DomainError outside the domain, and for a rule that is none of the three
 * @example
 * minimumBendRadiusMm({ outsideDiameterMm: 2.9, rule: 'unsupported', multiple: 10 }) // 29
 * @source FAA AC 43.13-1B, chapter 11; SAE AS50881 for coaxial lines
 */
export function minimumBendRadiusMm(i: {
  readonly outsideDiameterMm: number
  readonly rule: 'unsupported' | 'supported' | 'coaxial'
  readonly multiple?: number
}): number {
  const D = requirePositive('outsideDiameterMm', i.outsideDiameterMm)
  requireChoice('rule', i.rule, ['unsupported', 'supported', 'coaxial'])
  const n = i.multiple === undefined ? bendRadiusMultiples[i.rule] : requirePositive('multiple', i.multiple)
  return requireFiniteResult('outsideDiameterMm', D, n * D)
}
