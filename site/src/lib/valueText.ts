import { type PlanValue, valueText as printed } from '@strandwise/planner'

/** A value as the plan prints it; what is from memory says so. */
export function valueText(value: PlanValue): string {
  return value.provenance.status === 'from memory' ? `${printed(value)} (from memory)` : printed(value)
}
