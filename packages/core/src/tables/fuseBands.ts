import type { Interval, Provenance } from '../materials/index.ts'

/** One point of a fuse's operating-time band: at this multiple of the rating it opens between the two times; null is never. */
export interface FusePoint {
  readonly multiple: number
  readonly shortestS: number | null
  readonly longestS: number | null
}

/** A series of fuses of one standard. */
export interface FuseSeries {
  readonly ratingsA: readonly number[]
  readonly band: readonly FusePoint[]
  /** Ambient at which the ratings hold. */
  readonly referenceC: number
  /** Share of the rating lost per kelvin above the reference, as makers' figures spread. */
  readonly ambientFactorPerK: Interval
  /** Share of the rating that a lasting load may use. */
  readonly continuousLoadShare: Interval & { readonly nominal: number; readonly provenance: Provenance }
  readonly breakingCapacity: { readonly currentA: number; readonly voltageV: number }
  readonly provenance: Provenance
}

/**
 * Operating-time bands of blade fuses by series: every figure is recalled, none read in the standard.
 * At 1.1 times its rating a fuse need not open at all; from 1.1 to 1.35 it may take any time.
 *
 * @source ISO 8820-3, standard blade fuse-links, operating times: from memory
 */
export const fuseBands = {
  'ISO 8820-3': {
    ratingsA: [1, 2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30, 35, 40],
    band: [
      { multiple: 1.1, shortestS: 360_000, longestS: null },
      { multiple: 1.35, shortestS: 0.75, longestS: 600 },
      { multiple: 1.6, shortestS: 0.25, longestS: 50 },
      { multiple: 2, shortestS: 0.15, longestS: 5 },
      { multiple: 3.5, shortestS: 0.04, longestS: 0.5 },
      { multiple: 6, shortestS: 0.02, longestS: 0.1 },
    ],
    referenceC: 23,
    ambientFactorPerK: { low: 0.0012, high: 0.002 },
    continuousLoadShare: {
      low: 0.7,
      nominal: 0.75,
      high: 0.8,
      provenance: { status: 'common practice', source: 'a blade fuse carries a lasting load of 70 to 80 % of its rating' },
    },
    breakingCapacity: { currentA: 1000, voltageV: 32 },
    provenance: {
      status: 'from memory',
      source: 'ISO 8820-3, road vehicles, blade fuse-links, form C of 32 V',
      clause: 'operating times; the loss per kelvin is how far makers differ',
    },
  },
} as const satisfies Readonly<Record<string, FuseSeries>>
