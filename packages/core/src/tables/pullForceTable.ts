import type { Provenance, ProvenanceStatus } from '../materials/index.ts'

/** One size and the least force in newtons that its connection must hold; sizes by gauge, by area or by both. */
export interface PullForceRow {
  /** 0 is 1/0, -3 is 4/0. */
  readonly gauge?: number
  readonly areaMm2?: number
  readonly contactSize?: number
  readonly forceLbf?: number
  /** As printed; converted from the pounds where no newtons are printed. */
  readonly forceN: number
  readonly status: ProvenanceStatus
}

/** Pull forces of one standard. */
export interface PullForceTable {
  readonly rows: readonly PullForceRow[]
  readonly provenance: Provenance
}
