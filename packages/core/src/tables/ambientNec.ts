import { frozen } from '../errors/inner.ts'
import type { AmbientTable } from './ambientTable.ts'

/**
 * Ambient factors of the US wiring code, by span of ambient and limit of the insulation; null at or above the limit.
 * A span's factor is that of its hottest degree, rounded.
 *
 * @source NFPA 70, tables 310.15(B)(1) for 30 degC and 310.15(B)(2) for 40 degC, read in reprints
 */
export const ambientNec = /* @__PURE__ */ frozen({
  nec30C: {
    referenceC: 30,
    rows: [
      { fromC: null, toC: 10, limit60C: 1.29, limit75C: 1.2, limit90C: 1.15 },
      { fromC: 11, toC: 15, limit60C: 1.22, limit75C: 1.15, limit90C: 1.12 },
      { fromC: 16, toC: 20, limit60C: 1.15, limit75C: 1.11, limit90C: 1.08 },
      { fromC: 21, toC: 25, limit60C: 1.08, limit75C: 1.05, limit90C: 1.04 },
      { fromC: 26, toC: 30, limit60C: 1, limit75C: 1, limit90C: 1 },
      { fromC: 31, toC: 35, limit60C: 0.91, limit75C: 0.94, limit90C: 0.96 },
      { fromC: 36, toC: 40, limit60C: 0.82, limit75C: 0.88, limit90C: 0.91 },
      { fromC: 41, toC: 45, limit60C: 0.71, limit75C: 0.82, limit90C: 0.87 },
      { fromC: 46, toC: 50, limit60C: 0.58, limit75C: 0.75, limit90C: 0.82 },
      { fromC: 51, toC: 55, limit60C: 0.41, limit75C: 0.67, limit90C: 0.76 },
      { fromC: 56, toC: 60, limit60C: null, limit75C: 0.58, limit90C: 0.71 },
      { fromC: 61, toC: 65, limit60C: null, limit75C: 0.47, limit90C: 0.65 },
      { fromC: 66, toC: 70, limit60C: null, limit75C: 0.33, limit90C: 0.58 },
      { fromC: 71, toC: 75, limit60C: null, limit75C: null, limit90C: 0.5 },
      { fromC: 76, toC: 80, limit60C: null, limit75C: null, limit90C: 0.41 },
      { fromC: 81, toC: 85, limit60C: null, limit75C: null, limit90C: 0.29 },
    ],
    provenance: { status: 'published', source: 'NFPA 70, National Electrical Code', clause: 'table 310.15(B)(1), ampacities stated for 30 C' },
  },
  nec40C: {
    referenceC: 40,
    rows: [
      { fromC: null, toC: 10, limit60C: 1.58, limit75C: 1.36, limit90C: 1.26, limit150C: 1.13, limit200C: 1.09, limit250C: 1.07 },
      { fromC: 11, toC: 15, limit60C: 1.5, limit75C: 1.31, limit90C: 1.22, limit150C: 1.11, limit200C: 1.08, limit250C: 1.06 },
      { fromC: 16, toC: 20, limit60C: 1.41, limit75C: 1.25, limit90C: 1.18, limit150C: 1.09, limit200C: 1.06, limit250C: 1.05 },
      { fromC: 21, toC: 25, limit60C: 1.32, limit75C: 1.2, limit90C: 1.14, limit150C: 1.07, limit200C: 1.05, limit250C: 1.04 },
      { fromC: 26, toC: 30, limit60C: 1.22, limit75C: 1.13, limit90C: 1.1, limit150C: 1.04, limit200C: 1.03, limit250C: 1.02 },
      { fromC: 31, toC: 35, limit60C: 1.12, limit75C: 1.07, limit90C: 1.05, limit150C: 1.02, limit200C: 1.02, limit250C: 1.01 },
      { fromC: 36, toC: 40, limit60C: 1, limit75C: 1, limit90C: 1, limit150C: 1, limit200C: 1, limit250C: 1 },
      { fromC: 41, toC: 45, limit60C: 0.87, limit75C: 0.93, limit90C: 0.95, limit150C: 0.98, limit200C: 0.98, limit250C: 0.99 },
      { fromC: 46, toC: 50, limit60C: 0.71, limit75C: 0.85, limit90C: 0.89, limit150C: 0.95, limit200C: 0.97, limit250C: 0.98 },
      { fromC: 51, toC: 55, limit60C: 0.5, limit75C: 0.76, limit90C: 0.84, limit150C: 0.93, limit200C: 0.95, limit250C: 0.96 },
      { fromC: 56, toC: 60, limit60C: null, limit75C: 0.65, limit90C: 0.77, limit150C: 0.9, limit200C: 0.94, limit250C: 0.95 },
      { fromC: 61, toC: 65, limit60C: null, limit75C: 0.53, limit90C: 0.71, limit150C: 0.88, limit200C: 0.92, limit250C: 0.94 },
      { fromC: 66, toC: 70, limit60C: null, limit75C: 0.38, limit90C: 0.63, limit150C: 0.85, limit200C: 0.9, limit250C: 0.93 },
      { fromC: 71, toC: 75, limit60C: null, limit75C: null, limit90C: 0.55, limit150C: 0.83, limit200C: 0.88, limit250C: 0.91 },
      { fromC: 76, toC: 80, limit60C: null, limit75C: null, limit90C: 0.45, limit150C: 0.8, limit200C: 0.87, limit250C: 0.9 },
      { fromC: 81, toC: 90, limit60C: null, limit75C: null, limit90C: null, limit150C: 0.74, limit200C: 0.83, limit250C: 0.87 },
      { fromC: 91, toC: 100, limit60C: null, limit75C: null, limit90C: null, limit150C: 0.67, limit200C: 0.79, limit250C: 0.85 },
      { fromC: 101, toC: 110, limit60C: null, limit75C: null, limit90C: null, limit150C: 0.6, limit200C: 0.75, limit250C: 0.82 },
      { fromC: 111, toC: 120, limit60C: null, limit75C: null, limit90C: null, limit150C: 0.52, limit200C: 0.71, limit250C: 0.79 },
      { fromC: 121, toC: 130, limit60C: null, limit75C: null, limit90C: null, limit150C: 0.43, limit200C: 0.66, limit250C: 0.76 },
      { fromC: 131, toC: 140, limit60C: null, limit75C: null, limit90C: null, limit150C: 0.3, limit200C: 0.61, limit250C: 0.72 },
      { fromC: 141, toC: 160, limit60C: null, limit75C: null, limit90C: null, limit150C: null, limit200C: 0.5, limit250C: 0.65 },
      { fromC: 161, toC: 180, limit60C: null, limit75C: null, limit90C: null, limit150C: null, limit200C: 0.35, limit250C: 0.58 },
      { fromC: 181, toC: 200, limit60C: null, limit75C: null, limit90C: null, limit150C: null, limit200C: null, limit250C: 0.49 },
      { fromC: 201, toC: 225, limit60C: null, limit75C: null, limit90C: null, limit150C: null, limit200C: null, limit250C: 0.35 },
    ],
    provenance: { status: 'published', source: 'NFPA 70, National Electrical Code', clause: 'table 310.15(B)(2), ampacities stated for 40 C' },
  },
} as const satisfies Readonly<Record<string, AmbientTable>>)
