import { jobFacts } from '../facts/jobFacts.ts'
import type { RepairJob } from '../job/repairJob.ts'
import { planFrom } from './planFrom.ts'
import type { PlanAssumption, PlanVerdict } from './repairPlan.ts'

/** What else an assumed field could well be: the plan is run once with it, to see whether the verdict hangs on it. */
const otherwise: Readonly<Record<string, (job: RepairJob) => RepairJob | null>> = {
  'surroundings.flexes': (job) => ({ ...job, surroundings: { ...job.surroundings, flexes: true } }),
  'surroundings.flammableVapour': (job) => ({ ...job, surroundings: { ...job.surroundings, flammableVapour: true } }),
  'surroundings.hottestC': (job) => ({ ...job, surroundings: { ...job.surroundings, hottestC: Math.max(65, job.surroundings.ambientC) } }),
  'wire.material': (job) => ({ ...job, wire: { ...job.wire, material: 'copper-clad-aluminium' } }),
  'wire.loadedInBundle': (job) => ({ ...job, wire: { ...job.wire, loadedInBundle: 4 } }),
}

/** Marks the assumptions which, if known better, would change the plan's verdict. */
export function changingAssumptions(job: RepairJob, assumptions: readonly PlanAssumption[], verdict: PlanVerdict): readonly PlanAssumption[] {
  return assumptions.map((item) => {
    const other = otherwise[item.field]?.(job) ?? null
    if (other === null) return item
    return planFrom(jobFacts(other)).verdict === verdict ? item : { ...item, changesVerdict: true }
  })
}
