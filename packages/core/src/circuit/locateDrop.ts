import { DomainError, requireFinite, requireFiniteResult, requireNotNegative, requirePositive } from '../errors/index.ts'
import { circuitDefaults } from './circuitDefaults.ts'
import { requireList } from './requireList.ts'

/** A point where voltage was read, and the expected resistance of the wire to the next point, if known. */
export interface DropPoint {
  readonly name: string
  readonly voltageV: number
  readonly uncertaintyV?: number
  readonly expectedOhmToNext?: number
}
/** The wire between two neighbouring points. */
export interface DropStretch {
  readonly from: string
  readonly to: string
  readonly dropV: number
  readonly lowV: number
  readonly highV: number
  readonly resistanceOhm: number
  readonly lowOhm: number
  readonly highOhm: number
  readonly share: number
  readonly excess: 'yes' | 'no' | 'cannot tell'
}

/**
 * Where the lost voltage of a circuit is: the drop of each stretch between voltages read along it under load.
 *
 * Points stand in the order of the current, voltages against one reference. The last point's expected resistance is ignored. worst is null if the intervals of the two largest drops touch or overlap. If first and last voltage are equal, each share is 0.
 *
 * @equation V_k = U_k - U_(k+1); V = V_k -/+ (u_k + u_(k+1)); R_k = V_k/I; share = V_k/(U_first - U_last)
 * @symbol I - currentA - A - current while the voltages were read
 * @symbol u_I - currentUncertaintyA - A - half width of that current
 * @symbol U_k - points.0.voltageV - V - voltage of a place against the reference
 * @symbol u_k - points.0.uncertaintyV - V - half width of that voltage
 * @symbol R_e - points.0.expectedOhmToNext - ohm - sound resistance to the next place; excess compares with it
 * @symbol V_k - result - V - drop of each stretch, with its interval, resistance, share and verdict
 * @domain currentA: above 0
 * @domain optional currentUncertaintyA: at least 0
 * @domain points.0.voltageV: finite
 * @domain optional points.0.uncertaintyV: at least 0
 * @domain optional points.0.expectedOhmToNext: at least 0
 * @throws DomainError outside the domain, for fewer than two points, and where the current's uncertainty reaches the current
 * @example
 * locateDrop({ currentA: 4, currentUncertaintyA: 0.1, points: [{ name: 'fuse', voltageV: 12.2, uncertaintyV: 0.01, expectedOhmToNext: 0.05 }, { name: 'joint', voltageV: 12.1 }, { name: 'pump', voltageV: 10.9 }] }) // { worst: { from: "joint", to: "pump" } }
 * @source Ohm's and Kirchhoff's laws; interval arithmetic over voltages and current
 */
export function locateDrop(i: { readonly currentA: number; readonly currentUncertaintyA?: number; readonly points: readonly DropPoint[] }): {
  readonly stretches: readonly DropStretch[]
  readonly worst: { readonly from: string; readonly to: string } | null
} {
  const { currentUncertaintyA = circuitDefaults.currentUncertaintyA, points } = i
  const currentA = requirePositive('currentA', i.currentA)
  requireNotNegative('currentUncertaintyA', currentUncertaintyA)
  if (!(currentUncertaintyA < currentA)) throw new DomainError('currentUncertaintyA', currentUncertaintyA, `below currentA, ${currentA}`)
  requireList('points', points, 2, 'at least two points in the order of the current')
  for (const [k, point] of points.entries()) requirePoint(point, k)
  const [first, ...others] = points as readonly [DropPoint, ...DropPoint[]]
  const totalV = requireFiniteResult('points', points, first.voltageV - (others.at(-1) ?? first).voltageV)
  const lowestA = currentA - currentUncertaintyA
  const highestA = currentA + currentUncertaintyA
  let before = first
  const stretches = others.map((after) => {
    const stretch = stretchBetween(before, after, currentA, lowestA, highestA, totalV)
    before = after
    return stretch
  })
  return { stretches, worst: worstOf(stretches) }
}

function requirePoint(point: DropPoint, k: number): void {
  requireFinite(`points.${k}.voltageV`, point?.voltageV)
  if (point.uncertaintyV !== undefined) requireNotNegative(`points.${k}.uncertaintyV`, point.uncertaintyV)
  if (point.expectedOhmToNext !== undefined) requireNotNegative(`points.${k}.expectedOhmToNext`, point.expectedOhmToNext)
}

function stretchBetween(before: DropPoint, after: DropPoint, currentA: number, lowestA: number, highestA: number, totalV: number): DropStretch {
  const dropV = before.voltageV - after.voltageV
  const halfWidthV = (before.uncertaintyV ?? circuitDefaults.uncertaintyV) + (after.uncertaintyV ?? circuitDefaults.uncertaintyV)
  const lowV = dropV - halfWidthV
  const highV = dropV + halfWidthV
  // A negative voltage gives its lowest quotient at the smallest current.
  const lowOhm = finite(lowV / (lowV < 0 ? lowestA : highestA), before)
  const highOhm = finite(highV / (highV < 0 ? highestA : lowestA), before)
  const expected = before.expectedOhmToNext
  const excess = expected === undefined ? 'cannot tell' : lowOhm > expected ? 'yes' : highOhm > expected ? 'cannot tell' : 'no'
  const share = totalV === 0 ? 0 : finite(dropV / totalV, before)
  return { from: before.name, to: after.name, dropV, lowV, highV, resistanceOhm: finite(dropV / currentA, before), lowOhm, highOhm, share, excess }
}

function finite(value: number, at: DropPoint): number {
  return requireFiniteResult('points', at.voltageV, value)
}

/** The stretch with the largest drop; among equal drops the less certain one, so that an overlap is never missed. */
function worstOf(stretches: readonly DropStretch[]): { readonly from: string; readonly to: string } | null {
  const [largest, second] = [...stretches].sort((a, b) => b.dropV - a.dropV || b.highV - a.highV)
  if (largest === undefined || (second !== undefined && largest.lowV <= second.highV)) return null
  return { from: largest.from, to: largest.to }
}
