import type { ProvenanceStatus } from '@strandwise/core'
import { digits } from '../plan/print.ts'
import type { PlanValue, PlanVerdict } from '../plan/repairPlan.ts'

export const verdictWord: Readonly<Record<PlanVerdict, string>> = {
  sound: 'sound',
  caution: 'caution',
  'cannot tell': 'cannot tell',
  unsound: 'unsound',
  refused: 'refused',
}

export const statusMark: Readonly<Record<ProvenanceStatus, string>> = {
  published: 'published',
  'common practice': 'common practice, no published source',
  'from memory': 'from memory, not confirmed',
  derived: 'derived',
}

/** A value as printed in a plan: three digits, its band where it has one. */
export function numberText(value: PlanValue): string {
  const own = digits(value.value)
  if (value.low === undefined || value.high === undefined) return own
  const low = digits(value.low)
  const high = digits(value.high)
  return low === high ? own : `${low} to ${high}`
}
