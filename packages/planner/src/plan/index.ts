export { planRepair } from './planRepair.ts'
export type { PlanAssumption, PlanOption, PlanPart, PlanSection, PlanStep, PlanValue, PlanVerdict, PlanWorking, RepairPlan, SectionId } from './repairPlan.ts'
