import type { RepairJob } from '../job/index.ts'
import { planRepair, type RepairPlan } from './index.ts'
import { planJobs } from './planJobs.sample.ts'

export const planOf = (name: string): RepairPlan => planRepair(planJobs[name] as RepairJob)
export const codesOf = (plan: RepairPlan): readonly string[] => plan.sequence.map(({ code }) => code)
export const stepOf = (plan: RepairPlan, code: string) => plan.sequence.find((step) => step.code === code)
export const findingOf = (plan: RepairPlan, code: string) => plan.sections.flatMap(({ findings }) => findings).find((finding) => finding.code === code)
