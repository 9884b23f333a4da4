/** published: read in the source or a reprint; derived: computed from published values by a stated formula. */
export type ProvenanceStatus = 'published' | 'common practice' | 'from memory' | 'derived'

export interface Provenance {
  readonly status: ProvenanceStatus
  readonly source: string
  readonly edition?: string
  readonly clause?: string
}

export interface Interval {
  readonly low: number
  readonly high: number
}

/** low and high enclose what the sources print; nominal is what the models use. */
export interface MaterialValue extends Interval {
  readonly nominal: number
  readonly provenance: Provenance
}
