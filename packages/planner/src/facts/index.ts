export type { Finding, PlanOption, PlanPart, PlanSection, PlanStep, PlanValue, PlanVerdict, PlanWorking, SectionId } from './finding.ts'
