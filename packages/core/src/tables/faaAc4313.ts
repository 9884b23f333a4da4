import { frozen } from '../errors/inner.ts'
import type { Provenance, ProvenanceStatus } from '../materials/index.ts'

/** One gauge of aircraft wire: its actual metal area, its largest resistance when tinned at 20 °C, and its current in a loaded harness by the wire's temperature rating. */
export interface FaaWireRow {
  readonly gauge: number
  readonly size: string
  readonly circularMils: number
  readonly tinnedOhmPer1000Ft: number
  readonly limit105CA: number
  readonly limit150CA: number
  readonly limit200CA: number
}

/** Nicks and broken strands allowed in one construction of copper conductor. */
export interface NickedStrandsRow {
  readonly finestGauge: number
  readonly thickestGauge: number
  readonly fromStrands: number
  readonly toStrands: number
  readonly nicked: number
  readonly broken: number
}

/** Tables and curve points of the circular, each group with its provenance or its rows' status. */
export interface FaaAc4313 {
  readonly wires: readonly FaaWireRow[]
  readonly wiresConditions: string
  readonly altitude: readonly { readonly altitudeFt: number; readonly factor: number; readonly status: ProvenanceStatus }[]
  readonly bundle: readonly { readonly wires: number; readonly loadingPercent: number; readonly factor: number; readonly status: ProvenanceStatus }[]
  readonly freeAir: readonly { readonly gauge: number; readonly differenceK: number; readonly currentA: number; readonly status: ProvenanceStatus }[]
  readonly allowedDrop: readonly { readonly nominalV: number; readonly continuousV: number; readonly intermittentV: number }[]
  readonly allowedDropProvenance: Provenance
  readonly nickedStrands: readonly NickedStrandsRow[]
  readonly inferredZeroC: { readonly copperC: number; readonly aluminiumC: number }
  readonly provenance: Provenance
}

/**
 * Aircraft wire by the maintenance circular: currents in a harness, areas and resistances, points of its curves, allowed drops, nicked strands. Aluminium's inferred zero is -238.1 degC here but -228 in IEC 60949: the printed length rule uses the circular's.
 *
 * @source FAA AC 43.13-1B, chapter 11, tables 11-6, 11-9 and 11-13, figures 11-4 to 11-6; curve points by their status
 */
export const faaAc4313 = /* @__PURE__ */ frozen({
  wires: [
    { gauge: 24, size: '24', circularMils: 475, tinnedOhmPer1000Ft: 28.4, limit105CA: 2.5, limit150CA: 4, limit200CA: 5 },
    { gauge: 22, size: '22', circularMils: 755, tinnedOhmPer1000Ft: 16.2, limit105CA: 3, limit150CA: 5, limit200CA: 6 },
    { gauge: 20, size: '20', circularMils: 1216, tinnedOhmPer1000Ft: 9.88, limit105CA: 4, limit150CA: 7, limit200CA: 9 },
    { gauge: 18, size: '18', circularMils: 1900, tinnedOhmPer1000Ft: 6.23, limit105CA: 6, limit150CA: 9, limit200CA: 12 },
    { gauge: 16, size: '16', circularMils: 2426, tinnedOhmPer1000Ft: 4.81, limit105CA: 7, limit150CA: 11, limit200CA: 14 },
    { gauge: 14, size: '14', circularMils: 3831, tinnedOhmPer1000Ft: 3.06, limit105CA: 10, limit150CA: 14, limit200CA: 18 },
    { gauge: 12, size: '12', circularMils: 5874, tinnedOhmPer1000Ft: 2.02, limit105CA: 13, limit150CA: 19, limit200CA: 25 },
    { gauge: 10, size: '10', circularMils: 9354, tinnedOhmPer1000Ft: 1.26, limit105CA: 17, limit150CA: 26, limit200CA: 32 },
    { gauge: 8, size: '8', circularMils: 16983, tinnedOhmPer1000Ft: 0.7, limit105CA: 38, limit150CA: 57, limit200CA: 71 },
    { gauge: 6, size: '6', circularMils: 26818, tinnedOhmPer1000Ft: 0.44, limit105CA: 50, limit150CA: 76, limit200CA: 97 },
    { gauge: 4, size: '4', circularMils: 42615, tinnedOhmPer1000Ft: 0.28, limit105CA: 68, limit150CA: 103, limit200CA: 133 },
    { gauge: 2, size: '2', circularMils: 66500, tinnedOhmPer1000Ft: 0.18, limit105CA: 95, limit150CA: 141, limit200CA: 179 },
    { gauge: 1, size: '1', circularMils: 81700, tinnedOhmPer1000Ft: 0.15, limit105CA: 113, limit150CA: 166, limit200CA: 210 },
    { gauge: 0, size: '1/0', circularMils: 104500, tinnedOhmPer1000Ft: 0.12, limit105CA: 128, limit150CA: 192, limit200CA: 243 },
    { gauge: -1, size: '2/0', circularMils: 133000, tinnedOhmPer1000Ft: 0.09, limit105CA: 147, limit150CA: 222, limit200CA: 285 },
    { gauge: -2, size: '3/0', circularMils: 166500, tinnedOhmPer1000Ft: 0.07, limit105CA: 172, limit150CA: 262, limit200CA: 335 },
    { gauge: -3, size: '4/0', circularMils: 210900, tinnedOhmPer1000Ft: 0.06, limit105CA: 204, limit150CA: 310, limit200CA: 395 },
  ],
  wiresConditions: '70 C ambient; 33 or more wires for 24 to 10, 9 wires for 8 and larger; at most 20 % of the harness in use; 60,000 ft',
  altitude: [
    { altitudeFt: 20000, factor: 0.91, status: 'published' },
    { altitudeFt: 60000, factor: 0.79, status: 'from memory' },
  ],
  bundle: [
    { wires: 8, loadingPercent: 60, factor: 0.6, status: 'published' },
    { wires: 12, loadingPercent: 100, factor: 0.43, status: 'from memory' },
    { wires: 35, loadingPercent: 20, factor: 0.52, status: 'from memory' },
  ],
  freeAir: [
    { gauge: 14, differenceK: 150, currentA: 47, status: 'published' },
    { gauge: 20, differenceK: 140, currentA: 21.5, status: 'from memory' },
    { gauge: 22, differenceK: 140, currentA: 16.2, status: 'from memory' },
    { gauge: 12, differenceK: 175, currentA: 68, status: 'from memory' },
    { gauge: 12, differenceK: 140, currentA: 61, status: 'from memory' },
  ],
  allowedDrop: [
    { nominalV: 14, continuousV: 0.5, intermittentV: 1 },
    { nominalV: 28, continuousV: 1, intermittentV: 2 },
    { nominalV: 115, continuousV: 4, intermittentV: 8 },
    { nominalV: 200, continuousV: 7, intermittentV: 14 },
  ],
  allowedDropProvenance: {
    status: 'from memory',
    source: 'FAA AC 43.13-1B',
    clause: 'table 11-6; the continuous drops were read, the intermittent are from memory',
  },
  nickedStrands: [
    { finestGauge: 24, thickestGauge: 14, fromStrands: 19, toStrands: 19, nicked: 2, broken: 0 },
    { finestGauge: 12, thickestGauge: 10, fromStrands: 37, toStrands: 37, nicked: 4, broken: 0 },
    { finestGauge: 8, thickestGauge: 4, fromStrands: 133, toStrands: 133, nicked: 6, broken: 6 },
    { finestGauge: 2, thickestGauge: 1, fromStrands: 665, toStrands: 817, nicked: 6, broken: 6 },
    { finestGauge: 0, thickestGauge: -1, fromStrands: 1045, toStrands: 1330, nicked: 6, broken: 6 },
  ],
  inferredZeroC: { copperC: -234.5, aluminiumC: -238.1 },
  provenance: {
    status: 'published',
    source: 'FAA AC 43.13-1B, Acceptable Methods, Techniques and Practices, aircraft inspection and repair',
    edition: 'change 1, 2001',
    clause: 'chapter 11; columns of table 11-13 matched by the order of the text',
  },
} as const satisfies FaaAc4313)
