import { DomainError, requireFinite, requireNotNegative, requirePositive } from '../errors/index.ts'
import { entryAt } from '../errors/inner.ts'
import { type Interval, sleeveMaterial } from '../materials/index.ts'
import type { Sleeve } from './sleeve.ts'

/** Change of length at which nothing is left of a tube. */
const vanishedShare = -1

/** Requires two inside diameters of one tube, the recovered one smaller. */
export function requireInsides(path: string, suppliedInsideMm: number, recoveredInsideMm: number): void {
  requirePositive(`${path}suppliedInsideMm`, suppliedInsideMm)
  requirePositive(`${path}recoveredInsideMm`, recoveredInsideMm)
  if (recoveredInsideMm >= suppliedInsideMm)
    throw new DomainError(`${path}recoveredInsideMm`, recoveredInsideMm, `below suppliedInsideMm, ${suppliedInsideMm}`, undefined, 'contradiction')
}

/** Requires a change of length as a signed fraction, a number or a range; returns the range. */
export function requireChange(path: string, change: number | Interval): Interval {
  if (typeof change !== 'object' || change === null) {
    requireFinite(path, change)
    if (change <= vanishedShare) throw new DomainError(path, change, 'above -1: a tube keeps some length')
    return { low: change, high: change }
  }
  requireChange(`${path}.low`, change.low)
  requireChange(`${path}.high`, change.high)
  if (change.low > change.high) throw new DomainError(`${path}.low`, change.low, `at most high, ${change.high}`, undefined, 'contradiction')
  return change
}

/** Refuses impossible tubes; path prefixes the field names and ends in a dot or is empty. */
export function requireSleeve(path: string, sleeve: Sleeve): void {
  if (typeof sleeve !== 'object' || sleeve === null)
    throw new DomainError(path.replace(/\.$/, '') || 'sleeve', sleeve, 'a sleeve', undefined, sleeve === undefined ? 'missing' : 'wrong-choice')
  entryAt(`${path}material`, () => sleeveMaterial(sleeve.material))
  requireInsides(path, sleeve.suppliedInsideMm, sleeve.recoveredInsideMm)
  requirePositive(`${path}recoveredWallMm`, sleeve.recoveredWallMm)
  if (typeof sleeve.longitudinalChange !== 'object')
    throw new DomainError(`${path}longitudinalChange`, sleeve.longitudinalChange, 'low and high', undefined, 'missing')
  requireChange(`${path}longitudinalChange`, sleeve.longitudinalChange)
  if (sleeve.adhesiveWallMm === undefined) return
  requireNotNegative(`${path}adhesiveWallMm`, sleeve.adhesiveWallMm)
  if (sleeve.adhesiveWallMm > sleeve.recoveredWallMm)
    throw new DomainError(`${path}adhesiveWallMm`, sleeve.adhesiveWallMm, `at most recoveredWallMm, ${sleeve.recoveredWallMm}`, undefined, 'contradiction')
}
