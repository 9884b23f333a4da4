import type { HeatJointResult } from '../heatJointTypes.ts'

/** Goal of a change: solder flows, insulation spared, or both. */
export type Goal = 'flow' | 'spare' | 'both'

/** Flow needs superheat: the ends of a real lap are cooler than its middle, while the model has one temperature. */
const flows = (result: HeatJointResult): boolean => result.wettedAtS !== null

/** True if a result reaches the goal. */
export function reaches(result: HeatJointResult, goal: Goal, allowedExposureS: number): boolean {
  const spares = result.insulationExposureS.every((exposure) => exposure <= allowedExposureS)
  return goal === 'flow' ? flows(result) : goal === 'spare' ? spares : flows(result) && spares
}
