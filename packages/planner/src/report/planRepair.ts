import type { RepairJob } from '../job/index.ts'
import { planInParts } from './planInParts.ts'
import type { RepairPlan } from './repairPlan.ts'
import { rulesTold } from './rulesOfPlan.ts'

/**
 * The plan of a repair from a job in its fixed units: what is decided, judged as decided, with its grounds, steps and parts.
 *
 * @throws JobError where the job is not one that parseRepairJob would return
 * @example
 * planRepair(trailerTailLamp) // { version: 2, verdict: 'sound' }
 */
export function planRepair(job: RepairJob): RepairPlan {
  const parts = planInParts(job)
  return { ...parts.plan, rules: rulesTold(parts) }
}
