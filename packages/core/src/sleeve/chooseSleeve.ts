import { DomainError, type Reason, requirePositive } from '../errors/index.ts'
import { onCore } from './onCore.ts'
import { requireSleeve } from './requireSleeve.ts'
import type { Sleeve } from './sleeve.ts'

/** One sleeve of a stock for a joint; reasons is empty if it fits. */
export interface SleeveChoice {
  readonly sleeve: Sleeve
  readonly fits: boolean
  readonly outsideMm: number
  readonly reasons: readonly Reason[]
}

function reasonsAgainst(sleeve: Sleeve, largestMm: number, smallestMm: number, outsideMm: number, outsideLimitMm: number | undefined): readonly Reason[] {
  const reasons: Reason[] = []
  if (!(sleeve.suppliedInsideMm > largestMm))
    reasons.push({ code: 'does-not-slide-over', parameter: 'suppliedInsideMm', value: sleeve.suppliedInsideMm, limit: largestMm })
  if (!(sleeve.recoveredInsideMm < smallestMm))
    reasons.push({ code: 'does-not-grip', parameter: 'recoveredInsideMm', value: sleeve.recoveredInsideMm, limit: smallestMm })
  if (outsideLimitMm !== undefined && outsideMm > outsideLimitMm)
    reasons.push({ code: 'outside-too-large', parameter: 'outsideMm', value: outsideMm, limit: outsideLimitMm })
  return reasons
}

/** Sort order: fitting ones first, then slimmer, then by name, unnamed before named. */
function order(one: SleeveChoice, other: SleeveChoice): number {
  if (one.fits !== other.fits) return one.fits ? -1 : 1
  if (one.outsideMm !== other.outsideMm) return one.outsideMm - other.outsideMm
  const a = one.sleeve.name ?? ''
  const b = other.sleeve.name ?? ''
  return a < b ? -1 : a > b ? 1 : 0
}

/**
 * The sleeves of a stock for one joint, best first: those that slide over it, grip and stay slim enough, slimmest first.
 *
 * outsideMm is the outside over largestMm. Codes of reasons: does-not-slide-over, does-not-grip, outside-too-large.
 *
 * @equation D_o = max(D_max, ID_r) + 2 w(D_max)
 * @symbol D_max - largestMm - mm - largest diameter that it must pass over and covers
 * @symbol ID_r - stock.k.recoveredInsideMm - mm - inside after free recovery
 * @symbol w - stock.k.wallMm - mm - wall by kept volume, as recoveredWallMm gives it
 * @symbol D_o - result.k.outsideMm - mm - outside over the largest diameter
 * @domain largestMm: above 0
 * @domain smallestMm: above 0
 * @domain optional outsideLimitMm: above 0
 * @domain stock.0.suppliedInsideMm: above 0
 * @domain stock.0.recoveredInsideMm: above 0
 * @domain stock.0.recoveredWallMm: above 0
 * @domain stock.0.longitudinalChange.low: above -1
 * @domain stock.0.longitudinalChange.high: above -1
 * @domain optional stock.0.adhesiveWallMm: at least 0
 * @throws DomainError outside the domain, where smallest is above largest, or for a sleeve that no tube can be (stock.0.recoveredWallMm)
 * @throws UnknownEntryError for a sleeve material that is not known
 * @example
 * chooseSleeve({
 *   largestMm: 4,
 *   smallestMm: 2.5,
 *   outsideLimitMm: 6,
 *   stock: [{ material: 'polyolefin', suppliedInsideMm: 6, recoveredInsideMm: 2, recoveredWallMm: 1, longitudinalChange: { low: -0.1, high: 0.05 } }],
 * }) // [{ fits: true, outsideMm: 5.2915, reasons: [] }]
 * @source NASA-STD-8739.4, 2011 change 6, para 9.8.1 for the rule of fit; the order is ours
 */
export function chooseSleeve(i: {
  readonly largestMm: number
  readonly smallestMm: number
  readonly stock: readonly Sleeve[]
  readonly outsideLimitMm?: number
}): readonly SleeveChoice[] {
  requirePositive('largestMm', i.largestMm)
  requirePositive('smallestMm', i.smallestMm)
  if (i.smallestMm > i.largestMm) throw new DomainError('smallestMm', i.smallestMm, `at most largestMm, ${i.largestMm}`, undefined, 'contradiction')
  if (i.outsideLimitMm !== undefined) requirePositive('outsideLimitMm', i.outsideLimitMm)
  if (!Array.isArray(i.stock)) throw new DomainError('stock', i.stock, 'a list of sleeves', undefined, i.stock === undefined ? 'missing' : 'wrong-choice')
  const stock: readonly Sleeve[] = i.stock
  return stock
    .map((sleeve, index) => {
      requireSleeve(`stock.${index}.`, sleeve)
      const { outsideMm } = onCore(sleeve, i.largestMm)
      const reasons = reasonsAgainst(sleeve, i.largestMm, i.smallestMm, outsideMm, i.outsideLimitMm)
      return { sleeve, fits: reasons.length === 0, outsideMm, reasons }
    })
    .sort(order)
}
