import { frozen } from '../errors/inner.ts'
import type { Provenance, ProvenanceStatus } from '../materials/index.ts'

/** One span of loaded conductors (or circuits) and the fraction of its current that each keeps; to null is open-ended. */
export interface GroupingRow {
  readonly from: number
  readonly to: number | null
  readonly factor: number
  readonly status: ProvenanceStatus
}

/** Grouping factors of one source. */
export interface GroupingTable {
  readonly counts: 'conductors' | 'circuits' | 'wires'
  readonly rows: readonly GroupingRow[]
  readonly provenance: Provenance
}

/**
 * Grouping factors: fraction of its current that each of several loaded conductors keeps, by source.
 * A count between two rows has no factor; nothing is interpolated.
 *
 * @source NFPA 70, IEC 60364-5-52:2009, 33 CFR 183.425 and SAE AS50881 as each entry states
 */
export const groupingFactors = /* @__PURE__ */ frozen({
  nec: {
    counts: 'conductors',
    rows: [
      { from: 1, to: 3, factor: 1, status: 'published' },
      { from: 4, to: 6, factor: 0.8, status: 'published' },
      { from: 7, to: 9, factor: 0.7, status: 'published' },
      { from: 10, to: 20, factor: 0.5, status: 'published' },
      { from: 21, to: 30, factor: 0.45, status: 'published' },
      { from: 31, to: 40, factor: 0.4, status: 'published' },
      { from: 41, to: null, factor: 0.35, status: 'published' },
    ],
    provenance: { status: 'published', source: 'NFPA 70, National Electrical Code', clause: 'adjustment for more than three current-carrying conductors' },
  },
  'iec-bunched': {
    counts: 'circuits',
    rows: [
      { from: 1, to: 1, factor: 1, status: 'published' },
      { from: 2, to: 2, factor: 0.8, status: 'published' },
      { from: 3, to: 3, factor: 0.7, status: 'published' },
      { from: 4, to: 4, factor: 0.65, status: 'published' },
      { from: 5, to: 5, factor: 0.6, status: 'published' },
      { from: 6, to: 6, factor: 0.57, status: 'published' },
      { from: 7, to: 7, factor: 0.54, status: 'published' },
      { from: 8, to: 8, factor: 0.52, status: 'published' },
      { from: 9, to: 9, factor: 0.5, status: 'published' },
      { from: 12, to: 12, factor: 0.45, status: 'published' },
      { from: 16, to: 16, factor: 0.41, status: 'published' },
      { from: 20, to: 20, factor: 0.38, status: 'published' },
    ],
    provenance: {
      status: 'published',
      source: 'IEC 60364-5-52',
      edition: '2009',
      clause: 'table B.52.17 item 1, bunched; 4 to 8 circuits as DIN VDE 0298-4:2003-08 table 21 prints them',
    },
  },
  'iec-single-layer': {
    counts: 'circuits',
    rows: [
      { from: 1, to: 1, factor: 1, status: 'published' },
      { from: 2, to: 2, factor: 0.85, status: 'published' },
      { from: 3, to: 3, factor: 0.79, status: 'published' },
      { from: 4, to: 4, factor: 0.75, status: 'published' },
      { from: 5, to: 5, factor: 0.73, status: 'published' },
      { from: 6, to: 6, factor: 0.72, status: 'published' },
      { from: 7, to: 7, factor: 0.72, status: 'published' },
      { from: 8, to: 8, factor: 0.71, status: 'published' },
      { from: 9, to: 9, factor: 0.7, status: 'published' },
    ],
    provenance: {
      status: 'published',
      source: 'IEC 60364-5-52',
      edition: '2009',
      clause: 'table B.52.17 item 2, single layer on a wall or floor, as DIN VDE 0298-4:2003-08 table 21 prints it',
    },
  },
  'iec-simplified': {
    counts: 'circuits',
    rows: [
      { from: 1, to: 1, factor: 1, status: 'published' },
      { from: 2, to: 2, factor: 0.8, status: 'published' },
      { from: 3, to: 3, factor: 0.7, status: 'published' },
      { from: 4, to: 4, factor: 0.7, status: 'published' },
      { from: 6, to: 6, factor: 0.55, status: 'published' },
      { from: 9, to: 9, factor: 0.5, status: 'published' },
      { from: 12, to: 12, factor: 0.45, status: 'published' },
      { from: 16, to: 16, factor: 0.4, status: 'published' },
      { from: 20, to: 20, factor: 0.4, status: 'published' },
    ],
    provenance: { status: 'published', source: 'IEC 60364-5-52', edition: '2009', clause: 'table B.52.3, simplified, embedded or enclosed' },
  },
  '33-cfr-183.425': {
    counts: 'conductors',
    rows: [
      { from: 1, to: 2, factor: 1, status: 'derived' },
      { from: 3, to: 3, factor: 0.7, status: 'published' },
      { from: 4, to: 6, factor: 0.6, status: 'published' },
      { from: 7, to: 24, factor: 0.5, status: 'published' },
      { from: 25, to: null, factor: 0.4, status: 'published' },
    ],
    provenance: { status: 'published', source: '33 CFR 183.425', clause: 'note 2 to table 5, bundled conductors; it starts at three, so fewer keep all' },
  },
  as50881: {
    counts: 'wires',
    rows: [
      { from: 1, to: 1, factor: 1, status: 'derived' },
      { from: 2, to: 2, factor: 0.825, status: 'derived' },
      { from: 3, to: 3, factor: 0.725, status: 'derived' },
      { from: 4, to: 4, factor: 0.66, status: 'derived' },
      { from: 5, to: 5, factor: 0.61, status: 'derived' },
      { from: 7, to: 7, factor: 0.54, status: 'derived' },
      { from: 10, to: 10, factor: 0.465, status: 'derived' },
      { from: 15, to: 15, factor: 0.385, status: 'derived' },
      { from: 19, to: 19, factor: 0.3425, status: 'derived' },
    ],
    provenance: {
      status: 'derived',
      source: 'SAE AS50881 (before it MIL-W-5088), figure of bundle derating at sea level, every wire fully loaded',
      clause: 'points read off the curve by a third party; the standard prints no numbers',
    },
  },
} as const satisfies Readonly<Record<string, GroupingTable>>)
