import { type ProvenanceStatus, requireFinite } from '@strandwise/core'
import type { PlanValue } from '../facts/index.ts'
import { printedValue } from '../facts/inner.ts'

/** Provenance status in words for readers. */
export const statusMark: Readonly<Record<ProvenanceStatus, string>> = {
  published: 'published',
  'common practice': 'common practice, no published source',
  'from memory': 'from memory, not confirmed',
  derived: 'derived',
}

/**
 * A value as a plan prints it: three digits with its unit, or its band; in metric, inch or both.
 *
 * @throws DomainError for a value that is no finite number
 * @example
 * valueText({ name: 'limit, new', value: 0.000157, unit: 'Ω', provenance: { status: 'derived', source: 'example' } }) // "157 µΩ"
 */
export function valueText(value: PlanValue, units: 'metric' | 'inch' | 'both' = 'metric'): string {
  for (const [parameter, number] of [
    ['value', value.value],
    ['low', value.low],
    ['high', value.high],
  ] as const)
    if (number !== undefined) requireFinite(parameter, number)
  return printedValue(value, units)
}
