import { DomainError, requireNotNegative, requirePositive } from '../errors/index.ts'
import { cutLengthMm } from './cutLength.ts'
import { onCore } from './onCore.ts'
import { requireSleeve } from './requireSleeve.ts'
import type { Sleeve } from './sleeve.ts'

/** One layer of a covering, in place on the layers beneath. */
export interface StackedLayer {
  readonly ontoMm: number
  readonly wallMm: number
  readonly outsideMm: number
  readonly cutLengthMm: number
  readonly grips: boolean
}

/**
 * Tubes shrunk one over the other, inside out: wall, outside diameter and cut length of each.
 *
 * A layer covers the joint, all overlaps beneath it and its own, so that the edges never line up. A layer that does not grip keeps its recovered inside and wall. `fitSleeve` checks whether each slides over the ones beneath.
 *
 * @equation D_k = max(D_(k-1), ID_r) + 2 w(D_(k-1)); L_k = (L_j + 2 (o_1 + ... + o_k))/(1 + s_k)
 * @symbol D_0 - coreMm - mm - diameter of what the first layer covers
 * @symbol L_j - jointMm - mm - length of the bare joint
 * @symbol o_k - layers.k.overlapEachSideMm - mm - how far layer k reaches past what is beneath, on each side, after shrinking
 * @symbol ID_r - layers.k.recoveredInsideMm - mm - inside of layer k after free recovery
 * @symbol w - layers.k.wallMm - mm - wall by kept volume, as recoveredWallMm gives it
 * @symbol s_k - layers.k.longitudinalChange.low - 1 - change of length of layer k, the low end
 * @symbol D_k - result.layers.k.outsideMm - mm - outside of layer k
 * @symbol L_k - result.layers.k.cutLengthMm - mm - length to cut of layer k
 * @domain coreMm: above 0
 * @domain jointMm: at least 0
 * @domain layers.0.suppliedInsideMm: above 0
 * @domain layers.0.recoveredInsideMm: above 0
 * @domain layers.0.recoveredWallMm: above 0
 * @domain layers.0.longitudinalChange.low: above -1
 * @domain layers.0.longitudinalChange.high: above -1
 * @domain optional layers.0.adhesiveWallMm: at least 0
 * @domain layers.0.overlapEachSideMm: at least 0
 * @throws DomainError outside the domain, with the layer and field by path (layers.0.recoveredWallMm)
 * @throws UnknownEntryError for a sleeve material that is not known
 * @example
 * stackLayers({
 *   coreMm: 4,
 *   jointMm: 12,
 *   layers: [{ material: 'polyolefin', suppliedInsideMm: 6, recoveredInsideMm: 2, recoveredWallMm: 1, longitudinalChange: { low: -0.1, high: 0.05 }, overlapEachSideMm: 12 }],
 * }) // { outsideMm: 5.2915, layers: [{ ontoMm: 4, wallMm: 0.6458, cutLengthMm: 40, grips: true }] }
 * @source derived: kept volume, layer by layer; overlaps in steps are trade practice
 */
export function stackLayers(i: {
  readonly coreMm: number
  readonly jointMm: number
  readonly layers: readonly (Sleeve & { readonly overlapEachSideMm: number })[]
}): { readonly outsideMm: number; readonly layers: readonly StackedLayer[] } {
  requirePositive('coreMm', i.coreMm)
  requireNotNegative('jointMm', i.jointMm)
  if (!Array.isArray(i.layers)) throw new DomainError('layers', i.layers, 'a list of sleeves', undefined, i.layers === undefined ? 'missing' : 'wrong-choice')
  let ontoMm = i.coreMm
  let overlapEachSideMm = 0
  const layers: StackedLayer[] = []
  for (const [index, layer] of i.layers.entries()) {
    requireSleeve(`layers.${index}.`, layer)
    overlapEachSideMm += requireNotNegative(`layers.${index}.overlapEachSideMm`, layer.overlapEachSideMm)
    const { wallMm, outsideMm, grips } = onCore(layer, ontoMm)
    const cut = cutLengthMm({ jointMm: i.jointMm, overlapEachSideMm, longitudinalChange: layer.longitudinalChange })
    layers.push({ ontoMm, wallMm, outsideMm, cutLengthMm: cut, grips })
    ontoMm = outsideMm
  }
  return { outsideMm: ontoMm, layers }
}
