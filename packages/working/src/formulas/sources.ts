import type { Provenance, ProvenanceStatus } from '@strandwise/core/materials'

function provenance(status: ProvenanceStatus, source: string, clause?: string): Provenance {
  return clause === undefined ? { status, source } : { status, source, clause }
}

/** A formula read in its source or a reprint. */
export function published(source: string, clause?: string): Provenance {
  return provenance('published', source, clause)
}

/** A formula derived from published ones by a stated argument. */
export function derived(source: string, clause?: string): Provenance {
  return provenance('derived', source, clause)
}

/** A formula from memory, not confirmed. */
export function fromMemory(source: string, clause?: string): Provenance {
  return provenance('from memory', source, clause)
}
