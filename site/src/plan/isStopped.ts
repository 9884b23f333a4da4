import type { RepairPlan } from '@strandwise/planner/report'

/** Nothing was computed: the stop list ended the plan. */
export const isStopped = (plan: RepairPlan): boolean => plan.decision.kind === 'refused'
