import { minimumPullForceN, type Provenance, pullForce, UnknownEntryError } from '@strandwise/core'
import type { JobFacts } from '../facts/inner.ts'

/** Required pull force of a sample, by the wire's gauge, else by its area; null if no table has the size. */
export function samplePull(facts: JobFacts): { readonly forceN: number; readonly source: Provenance } | null {
  const standard = facts.gauge === null ? 'IEC 60352-2' : 'UL 486A-486B'
  try {
    const forceN = minimumPullForceN(facts.gauge === null ? { standard, areaMm2: facts.areaMm2 } : { standard, gauge: facts.gauge })
    return { forceN, source: pullForce[standard].provenance }
  } catch (error) {
    if (error instanceof UnknownEntryError) return null
    throw error
  }
}
