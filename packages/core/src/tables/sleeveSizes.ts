import { frozen } from '../errors/inner.ts'
import type { Provenance, ProvenanceStatus, SleeveMaterialName } from '../materials/index.ts'

/** One size of heat-shrink sleeve. */
export interface SleeveSizeRow {
  readonly set: string
  readonly nominal: string
  /** Least inside diameter as supplied. */
  readonly suppliedInsideMm: number
  /** Largest inside diameter after free recovery. */
  readonly recoveredInsideMm: number
  /** Wall after free recovery, adhesive included; null is not known. */
  readonly recoveredWallMm: number | null
  readonly wallToleranceMm?: number
  readonly status: ProvenanceStatus
}

/** One series of sleeves. */
export interface SleeveSizeSet {
  readonly material: SleeveMaterialName
  readonly rows: readonly SleeveSizeRow[]
  readonly provenance: Provenance
}

/**
 * Sizes of heat-shrink sleeve by series: inside diameter as supplied, inside diameter and wall after free recovery.
 * The 125 mm row of the metric 2:1 sheet is left out: its recovered 63.5 mm belongs to 127 mm.
 *
 * @source SAE AS23053/5 and /4 as makers declare them, a data sheet of metric polyolefin sleeve; status row by row
 */
export const sleeveSizes = /* @__PURE__ */ frozen({
  'AS23053/5': {
    material: 'polyolefin',
    rows: [
      {
        set: 'AS23053/5',
        nominal: '3/64 in',
        suppliedInsideMm: 1.17,
        recoveredInsideMm: 0.58,
        recoveredWallMm: 0.41,
        wallToleranceMm: 0.076,
        status: 'published',
      },
      {
        set: 'AS23053/5',
        nominal: '1/16 in',
        suppliedInsideMm: 1.6,
        recoveredInsideMm: 0.79,
        recoveredWallMm: 0.43,
        wallToleranceMm: 0.076,
        status: 'published',
      },
      {
        set: 'AS23053/5',
        nominal: '3/32 in',
        suppliedInsideMm: 2.36,
        recoveredInsideMm: 1.17,
        recoveredWallMm: 0.51,
        wallToleranceMm: 0.076,
        status: 'published',
      },
      {
        set: 'AS23053/5',
        nominal: '1/8 in',
        suppliedInsideMm: 3.17,
        recoveredInsideMm: 1.57,
        recoveredWallMm: 0.51,
        wallToleranceMm: 0.076,
        status: 'published',
      },
      {
        set: 'AS23053/5',
        nominal: '3/16 in',
        suppliedInsideMm: 4.75,
        recoveredInsideMm: 2.36,
        recoveredWallMm: 0.51,
        wallToleranceMm: 0.076,
        status: 'published',
      },
      {
        set: 'AS23053/5',
        nominal: '1/4 in',
        suppliedInsideMm: 6.35,
        recoveredInsideMm: 3.17,
        recoveredWallMm: 0.64,
        wallToleranceMm: 0.076,
        status: 'published',
      },
      {
        set: 'AS23053/5',
        nominal: '3/8 in',
        suppliedInsideMm: 9.52,
        recoveredInsideMm: 4.75,
        recoveredWallMm: 0.64,
        wallToleranceMm: 0.076,
        status: 'published',
      },
      {
        set: 'AS23053/5',
        nominal: '1/2 in',
        suppliedInsideMm: 12.7,
        recoveredInsideMm: 6.35,
        recoveredWallMm: 0.64,
        wallToleranceMm: 0.076,
        status: 'published',
      },
      {
        set: 'AS23053/5',
        nominal: '3/4 in',
        suppliedInsideMm: 19.05,
        recoveredInsideMm: 9.52,
        recoveredWallMm: 0.76,
        wallToleranceMm: 0.076,
        status: 'published',
      },
      {
        set: 'AS23053/5',
        nominal: '1 in',
        suppliedInsideMm: 25.4,
        recoveredInsideMm: 12.7,
        recoveredWallMm: 0.89,
        wallToleranceMm: 0.127,
        status: 'published',
      },
      {
        set: 'AS23053/5',
        nominal: '1-1/2 in',
        suppliedInsideMm: 38.1,
        recoveredInsideMm: 19.05,
        recoveredWallMm: 1.02,
        wallToleranceMm: 0.152,
        status: 'published',
      },
      {
        set: 'AS23053/5',
        nominal: '2 in',
        suppliedInsideMm: 50.8,
        recoveredInsideMm: 25.4,
        recoveredWallMm: 1.14,
        wallToleranceMm: 0.178,
        status: 'published',
      },
      {
        set: 'AS23053/5',
        nominal: '3 in',
        suppliedInsideMm: 76.2,
        recoveredInsideMm: 38.1,
        recoveredWallMm: 1.27,
        wallToleranceMm: 0.203,
        status: 'from memory',
      },
      {
        set: 'AS23053/5',
        nominal: '4 in',
        suppliedInsideMm: 101.6,
        recoveredInsideMm: 50.8,
        recoveredWallMm: 1.4,
        wallToleranceMm: 0.229,
        status: 'from memory',
      },
    ],
    provenance: {
      status: 'published',
      source: 'SAE AS23053/5, flexible cross-linked polyolefin, classes 1 and 2',
      edition: '2016',
      clause: "sizes that makers' data sheets declare against the specification; 3 in and 4 in from memory",
    },
  },
  'AS23053/4': {
    material: 'polyolefin-adhesive-lined',
    rows: [
      { set: 'AS23053/4', nominal: '1/8 in', suppliedInsideMm: 3.17, recoveredInsideMm: 0.58, recoveredWallMm: null, status: 'from memory' },
      { set: 'AS23053/4', nominal: '3/16 in', suppliedInsideMm: 4.75, recoveredInsideMm: 1.52, recoveredWallMm: null, status: 'from memory' },
      { set: 'AS23053/4', nominal: '1/4 in', suppliedInsideMm: 6.35, recoveredInsideMm: 2.03, recoveredWallMm: null, status: 'from memory' },
      { set: 'AS23053/4', nominal: '3/8 in', suppliedInsideMm: 9.52, recoveredInsideMm: 3.43, recoveredWallMm: null, status: 'from memory' },
      { set: 'AS23053/4', nominal: '1/2 in', suppliedInsideMm: 12.7, recoveredInsideMm: 4.95, recoveredWallMm: null, status: 'from memory' },
      { set: 'AS23053/4', nominal: '3/4 in', suppliedInsideMm: 19.05, recoveredInsideMm: 7.95, recoveredWallMm: null, status: 'from memory' },
      { set: 'AS23053/4', nominal: '1 in', suppliedInsideMm: 25.4, recoveredInsideMm: 10.16, recoveredWallMm: null, status: 'from memory' },
    ],
    provenance: {
      status: 'from memory',
      source: 'SAE AS23053/4, semi-rigid dual-wall polyolefin, class 1',
      edition: '2016',
      clause: 'dimensions; walls not known',
    },
  },
  'metric 3:1 lined': {
    material: 'polyolefin-adhesive-lined',
    rows: [
      { set: 'metric 3:1 lined', nominal: '3/1 mm', suppliedInsideMm: 3, recoveredInsideMm: 1, recoveredWallMm: 1, status: 'from memory' },
      { set: 'metric 3:1 lined', nominal: '6/2 mm', suppliedInsideMm: 6, recoveredInsideMm: 2, recoveredWallMm: 1, status: 'from memory' },
      { set: 'metric 3:1 lined', nominal: '9/3 mm', suppliedInsideMm: 9, recoveredInsideMm: 3, recoveredWallMm: 1.4, status: 'from memory' },
      { set: 'metric 3:1 lined', nominal: '12/4 mm', suppliedInsideMm: 12, recoveredInsideMm: 4, recoveredWallMm: 1.8, status: 'from memory' },
      { set: 'metric 3:1 lined', nominal: '19/6 mm', suppliedInsideMm: 19, recoveredInsideMm: 6, recoveredWallMm: null, status: 'from memory' },
      { set: 'metric 3:1 lined', nominal: '24/8 mm', suppliedInsideMm: 24, recoveredInsideMm: 8, recoveredWallMm: 2.5, status: 'from memory' },
      { set: 'metric 3:1 lined', nominal: '40/13 mm', suppliedInsideMm: 40, recoveredInsideMm: 13, recoveredWallMm: 2.5, status: 'from memory' },
    ],
    provenance: { status: 'from memory', source: 'the usual metric series of adhesive-lined 3:1 sleeve, a convention of makers' },
  },
  'metric 2:1': {
    material: 'polyolefin',
    rows: [
      { set: 'metric 2:1', nominal: '1.6 mm', suppliedInsideMm: 1.6, recoveredInsideMm: 0.8, recoveredWallMm: 0.4, status: 'published' },
      { set: 'metric 2:1', nominal: '2.4 mm', suppliedInsideMm: 2.4, recoveredInsideMm: 1.2, recoveredWallMm: 0.48, status: 'published' },
      { set: 'metric 2:1', nominal: '3.2 mm', suppliedInsideMm: 3.2, recoveredInsideMm: 1.6, recoveredWallMm: 0.48, status: 'published' },
      { set: 'metric 2:1', nominal: '4.8 mm', suppliedInsideMm: 4.8, recoveredInsideMm: 2.4, recoveredWallMm: 0.48, status: 'published' },
      { set: 'metric 2:1', nominal: '6.4 mm', suppliedInsideMm: 6.4, recoveredInsideMm: 3.2, recoveredWallMm: 0.56, status: 'published' },
      { set: 'metric 2:1', nominal: '9.5 mm', suppliedInsideMm: 9.5, recoveredInsideMm: 4.8, recoveredWallMm: 0.62, status: 'published' },
      { set: 'metric 2:1', nominal: '12.7 mm', suppliedInsideMm: 12.7, recoveredInsideMm: 6.4, recoveredWallMm: 0.62, status: 'published' },
      { set: 'metric 2:1', nominal: '19.1 mm', suppliedInsideMm: 19.1, recoveredInsideMm: 9.5, recoveredWallMm: 0.69, status: 'published' },
      { set: 'metric 2:1', nominal: '25.4 mm', suppliedInsideMm: 25.4, recoveredInsideMm: 12.7, recoveredWallMm: 0.89, status: 'published' },
      { set: 'metric 2:1', nominal: '38.1 mm', suppliedInsideMm: 38.1, recoveredInsideMm: 19.1, recoveredWallMm: 1, status: 'published' },
      { set: 'metric 2:1', nominal: '50.8 mm', suppliedInsideMm: 50.8, recoveredInsideMm: 25.4, recoveredWallMm: 1.1, status: 'published' },
      { set: 'metric 2:1', nominal: '76.2 mm', suppliedInsideMm: 76.2, recoveredInsideMm: 38.1, recoveredWallMm: 1.2, status: 'published' },
      { set: 'metric 2:1', nominal: '102 mm', suppliedInsideMm: 102, recoveredInsideMm: 50.8, recoveredWallMm: 1.35, status: 'published' },
    ],
    provenance: { status: 'published', source: 'data sheet of flame-retardant cross-linked polyolefin sleeve, stated to conform to MIL-I-23053/5' },
  },
} as const satisfies Readonly<Record<string, SleeveSizeSet>>)
