import { DomainError, requireFiniteResult, requireNotNegative, requirePositive } from '../errors/index.ts'
import type { Interval } from '../materials/index.ts'
import { type OnCore, onCore } from './onCore.ts'
import { requireSleeve } from './requireSleeve.ts'
import type { Sleeve } from './sleeve.ts'

/**
 * One tube over wire, barrel and wire again: its wall and outside on each step, whether it grips there, and how long to cut it.
 *
 * Each step keeps its own volume of wall; the short slopes between steps are left out. On a step that it does not reach it is loose at its recovered size. The cut length is a range over the tube's change of length: cut the longer one.
 *
 * @equation D_o = max over steps of max(D_k, ID_r) + 2 w(D_k); L = (L_1 + ... + L_n)/(1 + s)
 * @symbol D_k - steps.k.diameterMm - mm - diameter of step k
 * @symbol L_k - steps.k.lengthMm - mm - length of step k
 * @symbol ID_r - sleeve.recoveredInsideMm - mm - inside after free recovery
 * @symbol w - result.steps.k.wallMm - mm - wall by kept volume, as recoveredWallMm gives it
 * @symbol s - sleeve.longitudinalChange - 1 - change of length, from low to high
 * @symbol D_o - result.outsideMm - mm - largest outside of all steps
 * @symbol L - result.cutLengthMm - mm - length to cut
 * @domain sleeve.suppliedInsideMm: above 0
 * @domain sleeve.recoveredInsideMm: above 0
 * @domain sleeve.recoveredWallMm: above 0
 * @domain sleeve.longitudinalChange.low: above -1
 * @domain sleeve.longitudinalChange.high: above -1
 * @domain optional sleeve.adhesiveWallMm: at least 0
 * @domain steps.0.diameterMm: above 0
 * @domain steps.0.lengthMm: at least 0
 * @throws DomainError outside the domain, for no step, a diameter that is not above 0, a length below 0, or a sleeve that no tube can be, by path
 * @throws UnknownEntryError for a sleeve material that is not known
 * @example
 * steppedSleeve({
 *   sleeve: { material: 'polyolefin', suppliedInsideMm: 6, recoveredInsideMm: 2, recoveredWallMm: 1, longitudinalChange: { low: -0.1, high: 0.25 } },
 *   steps: [{ diameterMm: 2, lengthMm: 10 }, { diameterMm: 4, lengthMm: 25 }, { diameterMm: 2, lengthMm: 10 }],
 * }) // { outsideMm: 5.2915, steps: [{ wallMm: 1, outsideMm: 4, grips: false }, { wallMm: 0.6458, grips: true }, { grips: false }], cutLengthMm: { low: 36, high: 50 } }
 * @source derived: kept volume, step by step
 */
export function steppedSleeve(i: { readonly sleeve: Sleeve; readonly steps: readonly { readonly diameterMm: number; readonly lengthMm: number }[] }): {
  readonly outsideMm: number
  readonly steps: readonly OnCore[]
  readonly cutLengthMm: Interval
} {
  requireSleeve('sleeve.', i.sleeve)
  if (!Array.isArray(i.steps) || i.steps.length === 0)
    throw new DomainError('steps', i.steps, 'at least one step', undefined, i.steps === undefined ? 'missing' : 'out-of-range')
  const given: readonly { readonly diameterMm: number; readonly lengthMm: number }[] = i.steps
  let coveredMm = 0
  const steps = given.map((step, index) => {
    requirePositive(`steps.${index}.diameterMm`, step.diameterMm)
    coveredMm += requireNotNegative(`steps.${index}.lengthMm`, step.lengthMm)
    return onCore(i.sleeve, step.diameterMm)
  })
  const { low, high } = i.sleeve.longitudinalChange
  return {
    outsideMm: Math.max(...steps.map((step) => step.outsideMm)),
    steps,
    cutLengthMm: {
      low: requireFiniteResult('steps', coveredMm, coveredMm / (1 + high)),
      high: requireFiniteResult('steps', coveredMm, coveredMm / (1 + low)),
    },
  }
}
