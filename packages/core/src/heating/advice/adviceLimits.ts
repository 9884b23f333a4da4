import { DomainError, requireBetween } from '../../errors/index.ts'
import type { Interval } from '../../materials/index.ts'
import type { HeatChange } from '../heatJointTypes.ts'
import { heatLimits } from '../heatLimits.ts'
import { heatJointAdviceDefaults } from './adviceLevers.ts'

/** Limits of the levers given by the caller. */
export type GivenLimits = Readonly<Partial<Record<HeatChange['lever'], Interval>>>
export type AdviceLimits = Readonly<Record<HeatChange['lever'], Interval>>

/** Widest limits: the domain of heatJoint. */
const widest: Readonly<Record<HeatChange['lever'], readonly [number, number]>> = {
  contactResistanceKPerW: heatLimits.resistanceKPerW,
  tipResistanceKPerW: heatLimits.smallResistanceKPerW,
  setC: heatLimits.leverC,
  airC: heatLimits.leverC,
  airSpeedMPerS: heatLimits.airSpeedMPerS,
  maximumW: heatLimits.powerW,
  stubMm: heatLimits.stubMm,
  clip: heatLimits.clipMm,
  alloy: heatLimits.leverC,
  toolOffS: heatLimits.timeS,
}

/** Limits of every lever: given or default. */
export function readLimits(given: GivenLimits = {}): AdviceLimits {
  const levers = Object.keys(widest) as HeatChange['lever'][]
  const of = (lever: HeatChange['lever']): Interval => {
    const interval = given[lever]
    if (interval === undefined) return heatJointAdviceDefaults.limits[lever]
    const [least, most] = widest[lever]
    const low = requireBetween(`limits.${lever}.low`, interval.low, least, most)
    const high = requireBetween(`limits.${lever}.high`, interval.high, least, most)
    if (high < low) throw new DomainError(`limits.${lever}.high`, high, `low, ${low}, or above`, undefined, 'contradiction')
    return { low, high }
  }
  return Object.fromEntries(levers.map((lever) => [lever, of(lever)])) as unknown as AdviceLimits
}
