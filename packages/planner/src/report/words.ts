import { type ProvenanceStatus, requireFinite } from '@strandwise/core'
import { inUnit, span } from '../plan/print.ts'
import type { PlanValue, PlanVerdict } from '../plan/repairPlan.ts'

export const verdictWord: Readonly<Record<PlanVerdict, string>> = {
  sound: 'sound',
  caution: 'caution',
  'cannot tell': 'cannot tell',
  unsound: 'unsound',
  refused: 'refused',
}

/** How the status of a source is said to a person. */
export const statusMark: Readonly<Record<ProvenanceStatus, string>> = {
  published: 'published',
  'common practice': 'common practice, no published source',
  'from memory': 'from memory, not confirmed',
  derived: 'derived',
}

/**
 * A value as a plan prints it: three digits with its unit, or its band.
 *
 * @throws DomainError for a value that is no finite number
 * @example
 * valueText({ name: 'limit, new', value: 0.000157, unit: 'Ω', provenance: { status: 'derived', source: 'example' } }) // "157 µΩ"
 */
export function valueText(value: PlanValue): string {
  const print = (number: number) => inUnit(requireFinite('value', number), value.unit)
  return value.low === undefined || value.high === undefined ? print(value.value) : span(value.low, value.high, print)
}
