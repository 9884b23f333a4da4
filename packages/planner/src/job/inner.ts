// What the planner's other rooms build on and no user sees.
export { type Assume, assumptionList, quietly } from './assume.ts'
export { assumed, commonInsulationThicknessMm } from './assumed.ts'
export type { PlanAssumption } from './assumption.ts'
export { contradictions } from './contradictions.ts'
export { loadCurrent } from './loadCurrent.ts'
export { airNowC, hottestAirC, loopOhm, metalOf, metreOhm, strandLay, wayBackM } from './loop.ts'
export { wireShape } from './wireShape.ts'
export { type WireSize, wireSize } from './wireSize.ts'
