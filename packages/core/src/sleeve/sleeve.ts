import type { Interval, SleeveMaterialName } from '../materials/index.ts'

/** One size of heat-shrink tube as its maker prints it; longitudinalChange in signed fractions, adhesiveWallMm included in recoveredWallMm. */
export interface Sleeve {
  readonly name?: string
  readonly material: SleeveMaterialName
  readonly suppliedInsideMm: number
  readonly recoveredInsideMm: number
  readonly recoveredWallMm: number
  readonly longitudinalChange: Interval
  readonly adhesiveWallMm?: number
}
