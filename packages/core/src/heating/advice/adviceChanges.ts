import { type Interval, type SolderName, solder } from '../../materials/index.ts'
import { heatJoint } from '../heatJoint.ts'
import type { HeatChange, HeatJointInput, HeatJointResult } from '../heatJointTypes.ts'
import { heatLimits } from '../heatLimits.ts'
import { alloyValues } from '../readAlloy.ts'
import { airHighC, airLowC } from '../readTool.ts'
import { type Goal, reaches } from './adviceGoals.ts'
import { heatJointAdviceDefaults, leverOf, leversOf, moved } from './adviceLevers.ts'
import type { AdviceLimits } from './adviceLimits.ts'
import { moveOf, nearestPosition } from './adviceSearch.ts'

/** A joint, its levers and their limits. */
interface Search {
  readonly input: HeatJointInput
  readonly start: HeatJointResult
  readonly allowedExposureS: number
  readonly alloys: readonly SolderName[]
  readonly limits: AdviceLimits
}

/** Half the clip's width: least distance between its middle and the insulation. */
const clipMarginMm = 1
/** Number of clip positions tried, from the insulation towards the joint. */
const clipPlaces = 5

/** The part of a lever's limits that heatJoint takes: air within the law that gives its film, and a tip of mass with a way for its heat. */
function usable({ tool }: HeatJointInput, lever: HeatChange['lever'], { low, high }: Interval): Interval {
  if (lever === 'airC' && tool.kind === 'hot-air' && tool.airSpeedMPerS !== undefined) return { low: Math.max(low, airLowC), high: Math.min(high, airHighC) }
  if (lever === 'tipResistanceKPerW' && tool.kind === 'iron' && tool.tipHeatCapacityJPerK) return { low: Math.max(low, heatLimits.resistanceKPerW[0]), high }
  return { low, high }
}

function sliding({ input, allowedExposureS, limits }: Search, goal: Goal): HeatChange[] {
  return leversOf(input).flatMap((lever): HeatChange[] => {
    const from = leverOf(input, lever)
    if (from === null) return []
    // A stub can be stripped longer, never shorter.
    const range = lever === 'stubMm' ? { low: from, high: limits.stubMm.high } : usable(input, lever, limits[lever])
    const to = nearestPosition(from, range, (value) => reaches(heatJoint(moved(input, lever, value)), goal, allowedExposureS))
    return to === null ? [] : [{ lever, from, to, result: heatJoint(moved(input, lever, to)) }]
  })
}

/** Removes the clips, or sets one on each bare stub, as near to the insulation as works: there it takes least heat from the joint. */
function clipping({ input, allowedExposureS, limits }: Search, goal: Goal): HeatChange[] {
  const clips = input.conductors.flatMap((side) => (side.clip ? [side.clip.distanceMm] : []))
  if (clips.length > 0) {
    const result = heatJoint({ ...input, conductors: input.conductors.map((side) => ({ ...side, clip: null })) })
    return reaches(result, goal, allowedExposureS) ? [{ lever: 'clip', from: Math.min(...clips), to: 'none', result }] : []
  }
  const shortest = Math.min(...input.conductors.map((side) => side.stubMm))
  const high = Math.min(limits.clip.high, shortest - clipMarginMm)
  for (let place = 0; place < clipPlaces && high >= limits.clip.low; place++) {
    const distanceMm = high + ((limits.clip.low - high) * place) / (clipPlaces - 1)
    const clip = { distanceMm, resistanceKPerW: heatJointAdviceDefaults.clipResistanceKPerW, temperatureC: input.ambientC }
    const result = heatJoint({ ...input, conductors: input.conductors.map((side) => ({ ...side, clip })) })
    if (reaches(result, goal, allowedExposureS)) return [{ lever: 'clip', from: null, to: distanceMm, result }]
  }
  return []
}

/** The alloy with the nearest liquidus that reaches the goal. */
function otherAlloy({ input, allowedExposureS, alloys, limits }: Search, goal: Goal): HeatChange[] {
  const present = alloyValues(input.alloy, input.ambientC).liquidusC
  const from = typeof input.alloy === 'string' ? input.alloy : (input.alloy.name ?? null)
  const away = (name: SolderName): number => Math.abs(solder(name).liquidusC.nominal - present)
  const candidates = alloys
    .filter((name) => name !== from)
    .filter((name) => {
      const { solidusC, liquidusC, latentHeatJPerKg, specificHeatJPerKgK } = solder(name)
      const within = liquidusC.nominal >= limits.alloy.low && liquidusC.nominal <= limits.alloy.high
      return within && solidusC.nominal > input.ambientC && latentHeatJPerKg !== null && specificHeatJPerKgK !== null
    })
    .sort((a, b) => away(a) - away(b))
  for (const name of candidates) {
    const result = heatJoint({ ...input, alloy: name })
    if (reaches(result, goal, allowedExposureS)) return [{ lever: 'alloy', from, to: name, result }]
  }
  return []
}

/** The single changes that reach a goal, smallest first; empty if it is reached already. */
export function changesFor(search: Search, goal: Goal): readonly HeatChange[] {
  if (reaches(search.start, goal, search.allowedExposureS)) return []
  const found = [...sliding(search, goal), ...clipping(search, goal), ...otherAlloy(search, goal)]
  return found
    .map((change) => ({ change, move: moveOf(change.from, change.to) }))
    .sort((a, b) => (a.move === b.move ? 0 : a.move - b.move))
    .map(({ change }) => change)
}
