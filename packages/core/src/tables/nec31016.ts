import { frozen } from '../errors/inner.ts'
import type { Provenance, ProvenanceStatus } from '../materials/index.ts'

/** Current in A of one gauge by the limit of its insulation. */
export interface Nec31016Row {
  readonly gauge: number
  readonly size: string
  readonly limit60C: number
  readonly limit75C: number
  readonly limit90C: number
  readonly status: ProvenanceStatus
}

/**
 * Ampacities in A of copper wire in a raceway, cable or earth at 30 degC, not more than three loaded conductors together.
 * Rows 14, 12, 3 and 1 differ from older editions; they are those of the International Residential Code of 2018.
 *
 * @source NFPA 70, table 310.16, read in reprints
 */
export const nec31016 = /* @__PURE__ */ frozen({
  rowsA: [
    { gauge: 14, size: '14', limit60C: 15, limit75C: 20, limit90C: 25, status: 'published' },
    { gauge: 12, size: '12', limit60C: 20, limit75C: 25, limit90C: 30, status: 'published' },
    { gauge: 10, size: '10', limit60C: 30, limit75C: 35, limit90C: 40, status: 'published' },
    { gauge: 8, size: '8', limit60C: 40, limit75C: 50, limit90C: 55, status: 'published' },
    { gauge: 6, size: '6', limit60C: 55, limit75C: 65, limit90C: 75, status: 'published' },
    { gauge: 4, size: '4', limit60C: 70, limit75C: 85, limit90C: 95, status: 'published' },
    { gauge: 3, size: '3', limit60C: 85, limit75C: 100, limit90C: 115, status: 'published' },
    { gauge: 2, size: '2', limit60C: 95, limit75C: 115, limit90C: 130, status: 'published' },
    { gauge: 1, size: '1', limit60C: 110, limit75C: 130, limit90C: 145, status: 'published' },
    { gauge: 0, size: '1/0', limit60C: 125, limit75C: 150, limit90C: 170, status: 'published' },
    { gauge: -1, size: '2/0', limit60C: 145, limit75C: 175, limit90C: 195, status: 'published' },
    { gauge: -2, size: '3/0', limit60C: 165, limit75C: 200, limit90C: 225, status: 'published' },
    { gauge: -3, size: '4/0', limit60C: 195, limit75C: 230, limit90C: 260, status: 'published' },
  ],
  referenceC: 30,
  provenance: {
    status: 'published',
    source: 'NFPA 70, National Electrical Code',
    clause: 'table 310.16, copper; gauges 14, 12, 3 and 1 as table E3705.1 of the International Residential Code, 2018, reprints them',
  },
} as const satisfies { readonly rowsA: readonly Nec31016Row[]; readonly referenceC: number; readonly provenance: Provenance })
