import { JobError, type RepairJob } from '@strandwise/planner/job'
import { planRepair, type RepairPlan } from '@strandwise/planner/report'
import { isStopped } from './isStopped.ts'

export interface Planned {
  readonly job: RepairJob
  readonly plan: RepairPlan
}

export const planned = (job: RepairJob): Planned => ({ job, plan: planRepair(job) })

/**
 * Whether the circuit alone ends the plan: the stop list reads nothing else, so the rest of the job may be anyone's.
 * Null where it doesn't, or where the circuit is not yet said.
 */
export function refusedByCircuit(circuit: unknown, rest: RepairJob): RepairPlan | null {
  try {
    const plan = planRepair({ ...rest, circuit: circuit as RepairJob['circuit'] })
    return isStopped(plan) ? plan : null
  } catch (error) {
    if (!(error instanceof JobError)) throw error
    return null
  }
}
