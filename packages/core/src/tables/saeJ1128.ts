import { frozen } from '../errors/inner.ts'
import type { Provenance, ProvenanceStatus } from '../materials/index.ts'

/** One gauge of road-vehicle primary or battery cable. */
export interface SaeJ1128Row {
  /** 0 is 1/0, -3 is 4/0. */
  readonly gauge: number
  readonly size: string
  readonly minimumCircularMils: number
  /** Converted from the circular mils. */
  readonly minimumAreaMm2: number
  readonly status: ProvenanceStatus
}

/**
 * Least conductor area of road-vehicle primary and battery cable by gauge: 3 to 11 percent below the AWG area of the same number.
 * For gauge 6 two values are in circulation; this is the one that a cable maker prints.
 *
 * @source SAE J1128 and J1127, classic circular-mil series; status row by row
 */
export const saeJ1128 = /* @__PURE__ */ frozen({
  rows: [
    { gauge: 18, size: '18', minimumCircularMils: 1537, minimumAreaMm2: 0.779, status: 'published' },
    { gauge: 16, size: '16', minimumCircularMils: 2336, minimumAreaMm2: 1.184, status: 'published' },
    { gauge: 14, size: '14', minimumCircularMils: 3702, minimumAreaMm2: 1.876, status: 'published' },
    { gauge: 12, size: '12', minimumCircularMils: 5833, minimumAreaMm2: 2.956, status: 'published' },
    { gauge: 10, size: '10', minimumCircularMils: 9343, minimumAreaMm2: 4.734, status: 'published' },
    { gauge: 8, size: '8', minimumCircularMils: 14810, minimumAreaMm2: 7.504, status: 'published' },
    { gauge: 6, size: '6', minimumCircularMils: 24538, minimumAreaMm2: 12.434, status: 'published' },
    { gauge: 4, size: '4', minimumCircularMils: 37360, minimumAreaMm2: 18.931, status: 'published' },
    { gauge: 2, size: '2', minimumCircularMils: 62450, minimumAreaMm2: 31.644, status: 'published' },
    { gauge: 1, size: '1', minimumCircularMils: 77790, minimumAreaMm2: 39.417, status: 'published' },
    { gauge: 0, size: '1/0', minimumCircularMils: 98980, minimumAreaMm2: 50.154, status: 'published' },
    { gauge: -1, size: '2/0', minimumCircularMils: 125100, minimumAreaMm2: 63.389, status: 'published' },
    { gauge: -2, size: '3/0', minimumCircularMils: 158600, minimumAreaMm2: 80.364, status: 'published' },
    { gauge: -3, size: '4/0', minimumCircularMils: 205500, minimumAreaMm2: 104.128, status: 'published' },
  ],
  provenance: {
    status: 'published',
    source: 'SAE J1128, Low Voltage Primary Cable, and J1127, Low Voltage Battery Cable',
    edition: 'classic circular-mil series, before the metric minimum areas',
    clause: 'conductor areas, read in the catalogue of a cable maker, 2023, and in a trade article for gauges 4, 2 and 1/0, 2/0, 4/0',
  },
} as const satisfies { readonly rows: readonly SaeJ1128Row[]; readonly provenance: Provenance })
