import { frozen } from '../errors/inner.ts'
import type { PullForceTable } from './pullForceTable.ts'

/**
 * Least pull-out force of crimped connectors by gauge, in newtons as printed at 4.45 N a pound, else converted from the pounds.
 * A catalogue prints 1235 N for the 300 lbf of 2/0 and another 455 N for the 100 lbf of 6: misprints, not used.
 *
 * @source UL 486A-486B, read in connector makers' pull tables; status row by row
 */
export const pullForceUl486 = /* @__PURE__ */ frozen({
  rows: [
    { gauge: 30, forceLbf: 1.5, forceN: 6.7, status: 'from memory' },
    { gauge: 28, forceLbf: 2, forceN: 8.9, status: 'published' },
    { gauge: 26, forceLbf: 3, forceN: 13.4, status: 'published' },
    { gauge: 24, forceLbf: 5, forceN: 22.3, status: 'published' },
    { gauge: 22, forceLbf: 8, forceN: 35.6, status: 'published' },
    { gauge: 20, forceLbf: 13, forceN: 57.9, status: 'published' },
    { gauge: 18, forceLbf: 20, forceN: 89, status: 'published' },
    { gauge: 16, forceLbf: 30, forceN: 133.5, status: 'published' },
    { gauge: 14, forceLbf: 50, forceN: 222.5, status: 'published' },
    { gauge: 12, forceLbf: 70, forceN: 311.5, status: 'published' },
    { gauge: 10, forceLbf: 80, forceN: 356, status: 'published' },
    { gauge: 8, forceLbf: 90, forceN: 400.5, status: 'published' },
    { gauge: 6, forceLbf: 100, forceN: 445, status: 'published' },
    { gauge: 4, forceLbf: 140, forceN: 623, status: 'published' },
    { gauge: 3, forceLbf: 160, forceN: 711.7, status: 'from memory' },
    { gauge: 2, forceLbf: 180, forceN: 801, status: 'published' },
    { gauge: 1, forceLbf: 200, forceN: 889.6, status: 'from memory' },
    { gauge: 0, forceLbf: 250, forceN: 1112.5, status: 'published' },
    { gauge: -1, forceLbf: 300, forceN: 1334.5, status: 'derived' },
    { gauge: -2, forceLbf: 350, forceN: 1556.9, status: 'from memory' },
    { gauge: -3, forceLbf: 450, forceN: 2001.7, status: 'from memory' },
  ],
  provenance: { status: 'published', source: 'UL 486A-486B, Wire connectors', clause: "pull-out force, read in makers' tables that carry its pounds" },
} as const satisfies PullForceTable)
