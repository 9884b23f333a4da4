import { frozen } from '../errors/inner.ts'
import type { Interval, Provenance } from '../materials/index.ts'

/** One point of a fuse's operating-time band: at this multiple of the rating it opens between the two times; null means never. */
export interface FusePoint {
  readonly multiple: number
  readonly shortestS: number | null
  readonly longestS: number | null
}

/** A series of fuses of one standard. */
export interface FuseSeries {
  /** What the fuse looks like, in plain words. */
  readonly build: string
  readonly ratingsA: readonly number[]
  readonly band: readonly FusePoint[]
  /** Ratings of the series with a band of their own. */
  readonly ownBands?: readonly { readonly ratingsA: readonly number[]; readonly band: readonly FusePoint[] }[]
  /** Reference ambient of the ratings. */
  readonly referenceC: number
  /** Fraction of the rating lost per kelvin above the reference, over the spread of makers. */
  readonly ambientFactorPerK: Interval
  /** Fraction of the rating for a continuous load. */
  readonly continuousLoadShare: Interval & { readonly nominal: number; readonly provenance: Provenance }
  readonly breakingCapacity: { readonly currentA: number; readonly voltageV: number }
  readonly provenance: Provenance
}

const threeQuarters = {
  low: 0.7,
  nominal: 0.75,
  high: 0.8,
  provenance: { status: 'common practice', source: 'a fuse carries a continuous load of 70 to 80 % of its rating' },
} as const

/** 0.12 % is from memory; 0.43 % follows from makers' tables of current by ambient. */
const lossPerK = { low: 0.0012, high: 0.0043 } as const

/**
 * Operating-time bands of fuses by series. No figure was read in the standards themselves: they are recalled, or transcribed from
 * makers' data sheets that name the standard. Where sheets differ, the shortest time is used: the safe side for an inrush.
 *
 * The keys are the standard with its type letter. Bolt-down fuses (ISO 8820-5) and breakers have no band here: their curves differ by maker.
 *
 * @source ISO 8820-3 types C and F (blade, miniature blade) and E (large blade); IEC 60127-2 F (5 x 20 mm cartridge, quick-acting): transcribed
 */
export const fuseBands = /* @__PURE__ */ frozen({
  'ISO 8820-3': {
    build: 'blade and miniature blade, types C and F',
    ratingsA: [1, 2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30, 35, 40],
    band: [
      { multiple: 1.1, shortestS: 360_000, longestS: null },
      { multiple: 1.35, shortestS: 0.75, longestS: 600 },
      { multiple: 1.6, shortestS: 0.25, longestS: 50 },
      { multiple: 2, shortestS: 0.15, longestS: 5 },
      { multiple: 3.5, shortestS: 0.04, longestS: 0.5 },
      { multiple: 6, shortestS: 0.02, longestS: 0.1 },
    ],
    ownBands: [
      {
        ratingsA: [35, 40],
        band: [
          { multiple: 1, shortestS: 360_000, longestS: null },
          { multiple: 1.35, shortestS: 0.75, longestS: 600 },
          { multiple: 2, shortestS: 0.15, longestS: 5 },
          { multiple: 3.5, shortestS: 0.04, longestS: 0.5 },
          { multiple: 6, shortestS: 0.02, longestS: 0.15 },
        ],
      },
    ],
    referenceC: 23,
    ambientFactorPerK: lossPerK,
    continuousLoadShare: threeQuarters,
    breakingCapacity: { currentA: 1000, voltageV: 32 },
    provenance: {
      status: 'from memory',
      source: "ISO 8820-3, road vehicles, blade fuse-links of 32 V; longest times and the row of 35 and 40 A agree with transcribed makers' data sheets",
      clause: 'operating times; the loss per kelvin is how far makers differ',
    },
  },
  'ISO 8820-3 type E': {
    build: 'large blade',
    ratingsA: [20, 30, 35, 40, 50, 60, 70, 80, 100],
    band: [
      { multiple: 1, shortestS: 360_000, longestS: null },
      { multiple: 1.35, shortestS: 60, longestS: 1800 },
      { multiple: 2, shortestS: 2, longestS: 50 },
      { multiple: 3.5, shortestS: 0.2, longestS: 7 },
      { multiple: 6, shortestS: 0.04, longestS: 1 },
    ],
    referenceC: 23,
    ambientFactorPerK: lossPerK,
    continuousLoadShare: threeQuarters,
    breakingCapacity: { currentA: 1000, voltageV: 32 },
    provenance: {
      status: 'from memory',
      source: "ISO 8820-3, road vehicles, large blade fuse-links of 32 V: times transcribed from one maker's data sheet of 2025; the list of ratings recalled",
      clause: 'operating times',
    },
  },
  'IEC 60127-2 F': {
    build: 'glass tube of 5 x 20 mm, quick-acting',
    ratingsA: [0.125, 0.16, 0.2, 0.25, 0.315, 0.4, 0.5, 0.63, 0.8, 1, 1.25, 1.6, 2, 2.5, 3.15, 4, 5, 6.3, 8, 10],
    band: [
      { multiple: 1.5, shortestS: 3600, longestS: null },
      // The shortest time here is not stated; it is at least that of the next point.
      { multiple: 2.1, shortestS: 0.05, longestS: 1800 },
      { multiple: 2.75, shortestS: 0.05, longestS: 2 },
      { multiple: 4, shortestS: 0.01, longestS: 0.3 },
      // Not stated: the same melting integral as at the point before.
      { multiple: 10, shortestS: 0.0016, longestS: 0.02 },
    ],
    referenceC: 23,
    ambientFactorPerK: lossPerK,
    continuousLoadShare: threeQuarters,
    breakingCapacity: { currentA: 35, voltageV: 250 },
    provenance: {
      status: 'from memory',
      source:
        'IEC 60127-2, miniature fuses, quick-acting F with a glass tube: longest times read in a public reprint; ratings, two shortest times and the loss with ambient recalled or bounded',
      clause: 'quick-acting characteristic, 125 mA to 10 A; low breaking capacity, 35 A or ten times the rating',
    },
  },
} as const satisfies Readonly<Record<string, FuseSeries>>)
