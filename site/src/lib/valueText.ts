import { numberText, type PlanValue } from '@strandwise/planner'

/** A value as the plan prints it, its unit behind it; what is from memory says so. */
export function valueText(value: PlanValue): string {
  const text = `${numberText(value)} ${value.unit}`.trim()
  return value.provenance.status === 'from memory' ? `${text} (from memory)` : text
}
