/** Reliability of a value. published: read in the source or a reprint; derived: computed from published values by a stated formula. */
export type ProvenanceStatus = 'published' | 'common practice' | 'from memory' | 'derived'

/** Source of a value and its reliability. */
export interface Provenance {
  readonly status: ProvenanceStatus
  readonly source: string
  readonly edition?: string
  readonly clause?: string
}

/** An interval, low at most high. */
export interface Interval {
  readonly low: number
  readonly high: number
}

/** A property as its sources give it. low and high enclose what the sources print; nominal is what the models use. */
export interface MaterialValue extends Interval {
  readonly nominal: number
  readonly provenance: Provenance
}
