import type { HeatJointResult } from '../heatJointTypes.ts'

/** What a change is to reach. */
export type Goal = 'flow' | 'spare' | 'both'

/** Flow is told by superheat, for the ends of a real lap lag the lump. */
const flows = (result: HeatJointResult): boolean => result.wettedAtS !== null

/** Whether a run reaches the goal. */
export function reaches(result: HeatJointResult, goal: Goal, allowedExposureS: number): boolean {
  const spares = result.insulationExposureS.every((exposure) => exposure <= allowedExposureS)
  return goal === 'flow' ? flows(result) : goal === 'spare' ? spares : flows(result) && spares
}
