// Internal exports for the planner's other rooms.
export { generalCautions, localCodes } from './cautions.ts'
export type { WorkedOut } from './workOut.ts'
