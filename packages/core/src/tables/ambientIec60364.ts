import { frozen } from '../errors/inner.ts'
import type { AmbientTable } from './ambientTable.ts'

/**
 * Ambient factors of the international wiring standard for cables in air: PVC of 70 degC, XLPE and EPR of 90 degC; null at or above the limit.
 *
 * @source IEC 60364-5-52:2009, table B.52.14, read in reprints; below 30 degC in DIN VDE 0298-4, table 17 (70 degC), and the International Residential Code, table E3705.2 (90 degC), which have the same law
 */
export const ambientIec60364 = /* @__PURE__ */ frozen({
  iec30C: {
    referenceC: 30,
    rows: [
      { fromC: 10, toC: 10, limit70C: 1.22, limit90C: 1.15, status: 'published' },
      { fromC: 15, toC: 15, limit70C: 1.17, limit90C: 1.12, status: 'published' },
      { fromC: 20, toC: 20, limit70C: 1.12, limit90C: 1.08, status: 'published' },
      { fromC: 25, toC: 25, limit70C: 1.06, limit90C: 1.04, status: 'published' },
      { fromC: 30, toC: 30, limit70C: 1, limit90C: 1, status: 'published' },
      { fromC: 35, toC: 35, limit70C: 0.94, limit90C: 0.96, status: 'published' },
      { fromC: 40, toC: 40, limit70C: 0.87, limit90C: 0.91, status: 'published' },
      { fromC: 45, toC: 45, limit70C: 0.79, limit90C: 0.87, status: 'published' },
      { fromC: 50, toC: 50, limit70C: 0.71, limit90C: 0.82, status: 'published' },
      { fromC: 55, toC: 55, limit70C: 0.61, limit90C: 0.76, status: 'published' },
      { fromC: 60, toC: 60, limit70C: 0.5, limit90C: 0.71, status: 'published' },
      { fromC: 65, toC: 65, limit70C: null, limit90C: 0.65, status: 'published' },
      { fromC: 70, toC: 70, limit70C: null, limit90C: 0.58, status: 'published' },
      { fromC: 75, toC: 75, limit70C: null, limit90C: 0.5, status: 'published' },
      { fromC: 80, toC: 80, limit70C: null, limit90C: 0.41, status: 'published' },
    ],
    provenance: {
      status: 'published',
      source: 'IEC 60364-5-52, Selection and erection of electrical equipment, wiring systems',
      edition: '2009',
      clause: 'table B.52.14; below 30 C as DIN VDE 0298-4:2013-06 table 17 and IRC 2018 table E3705.2 print it',
    },
  },
} as const satisfies Readonly<Record<string, AmbientTable>>)
