import { frozen } from '../errors/inner.ts'
import type { PullForceTable } from './pullForceTable.ts'

/**
 * Pull-out force of a wire in a screw or clamp terminal: far below a crimp's.
 *
 * @source UL 486E, table 22, and EN 60999-1, read in terminal makers' pages
 */
export const pullForceClamped = /* @__PURE__ */ frozen({
  'UL 486E': {
    rows: [
      { gauge: 30, areaMm2: 0.05, forceLbf: 0.5, forceN: 2.2, status: 'published' },
      { gauge: 28, areaMm2: 0.08, forceLbf: 1, forceN: 4.5, status: 'published' },
      { gauge: 26, areaMm2: 0.13, forceLbf: 2, forceN: 8.9, status: 'published' },
      { gauge: 24, areaMm2: 0.2, forceLbf: 3, forceN: 13.4, status: 'published' },
      { gauge: 22, areaMm2: 0.32, forceLbf: 4.5, forceN: 20, status: 'published' },
      { gauge: 20, areaMm2: 0.52, forceLbf: 6.75, forceN: 30, status: 'published' },
      { gauge: 18, areaMm2: 0.82, forceLbf: 6.75, forceN: 30, status: 'published' },
      { gauge: 16, areaMm2: 1.3, forceLbf: 9, forceN: 40, status: 'published' },
      { gauge: 14, areaMm2: 2.1, forceLbf: 11.5, forceN: 50, status: 'published' },
      { gauge: 12, areaMm2: 3.3, forceLbf: 13.5, forceN: 60, status: 'published' },
      { gauge: 10, areaMm2: 5.3, forceLbf: 18, forceN: 80, status: 'published' },
      { gauge: 8, areaMm2: 8.4, forceLbf: 20.5, forceN: 90, status: 'published' },
      { gauge: 6, areaMm2: 13.3, forceLbf: 21, forceN: 94, status: 'published' },
    ],
    provenance: { status: 'published', source: 'UL 486E, Equipment wiring terminals', clause: 'table 22, copper; clamp and pressure terminals, not crimps' },
  },
  'EN 60999-1': {
    rows: [
      { areaMm2: 1.5, forceN: 40, status: 'published' },
      { areaMm2: 2.5, forceN: 50, status: 'published' },
      { areaMm2: 4, forceN: 60, status: 'published' },
      { areaMm2: 6, forceN: 80, status: 'published' },
      { areaMm2: 10, forceN: 90, status: 'published' },
      { areaMm2: 16, forceN: 100, status: 'published' },
    ],
    provenance: {
      status: 'published',
      source: 'EN 60999-1, Connecting devices, screw-type clamping units',
      clause: 'pull-out, stranded copper; screw terminals, not crimps',
    },
  },
} as const satisfies Readonly<Record<string, PullForceTable>>)
