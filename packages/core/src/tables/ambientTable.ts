import type { Provenance, ProvenanceStatus } from '../materials/index.ts'

/** One span of ambient temperatures, ends included, and the factor by the insulation's limit; fromC null is "or less". */
export interface AmbientRow {
  readonly fromC: number | null
  readonly toC: number
  readonly limit60C?: number | null
  readonly limit70C?: number | null
  readonly limit75C?: number | null
  readonly limit90C?: number | null
  readonly limit150C?: number | null
  readonly limit200C?: number | null
  readonly limit250C?: number | null
  /** If different from the table's. */
  readonly status?: ProvenanceStatus
}

/** Ambient factors of one source. */
export interface AmbientTable {
  /** Reference ambient of its currents. */
  readonly referenceC: number
  readonly rows: readonly AmbientRow[]
  readonly provenance: Provenance
}
