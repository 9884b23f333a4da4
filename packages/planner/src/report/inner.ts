// What the planner's later rooms build on and no user sees.
export { generalCautions, localCodes } from './cautions.ts'
export { planOf } from './planRepair.ts'
export type { WorkedOut } from './workOut.ts'
