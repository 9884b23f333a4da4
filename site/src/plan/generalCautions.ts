import { demoJobs } from '@strandwise/planner/demo'
import { planRepair } from '@strandwise/planner/report'

/** What every invented job is told before work: said to everyone, whatever the job. Used at build only. */
const each = Object.values(demoJobs).map((job) => planRepair(job).cautions)
export const generalCautions: readonly string[] = (each[0] ?? []).filter((caution) =>
  each.every((cautions) => cautions.length <= 2 || cautions.includes(caution)),
)
