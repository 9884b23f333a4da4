import type { RepairPlan } from '@strandwise/planner/plan'

/** Nothing was computed: the stop list ended the plan. */
export const isStopped = (plan: RepairPlan): boolean => plan.verdict === 'refused' && plan.sequence.length === 0
