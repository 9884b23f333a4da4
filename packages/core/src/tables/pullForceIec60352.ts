import { frozen } from '../errors/inner.ts'
import type { PullForceTable } from './pullForceTable.ts'

/**
 * Least pull-out force of crimped connections by area, with the gauge where the standard names one; every figure from memory.
 *
 * @source IEC 60352-2:2006, tensile strength: from memory
 */
export const pullForceIec60352 = /* @__PURE__ */ frozen({
  rows: [
    { areaMm2: 0.05, gauge: 30, forceN: 6, status: 'from memory' },
    { areaMm2: 0.08, gauge: 28, forceN: 11, status: 'from memory' },
    { areaMm2: 0.12, gauge: 26, forceN: 15, status: 'from memory' },
    { areaMm2: 0.14, forceN: 18, status: 'from memory' },
    { areaMm2: 0.22, gauge: 24, forceN: 28, status: 'from memory' },
    { areaMm2: 0.25, forceN: 32, status: 'from memory' },
    { areaMm2: 0.32, gauge: 22, forceN: 40, status: 'from memory' },
    { areaMm2: 0.5, gauge: 20, forceN: 60, status: 'from memory' },
    { areaMm2: 0.75, forceN: 85, status: 'from memory' },
    { areaMm2: 0.82, gauge: 18, forceN: 90, status: 'from memory' },
    { areaMm2: 1, forceN: 108, status: 'from memory' },
    { areaMm2: 1.3, gauge: 16, forceN: 135, status: 'from memory' },
    { areaMm2: 1.5, forceN: 150, status: 'from memory' },
    { areaMm2: 2.1, gauge: 14, forceN: 200, status: 'from memory' },
    { areaMm2: 2.5, forceN: 230, status: 'from memory' },
    { areaMm2: 3.3, gauge: 12, forceN: 275, status: 'from memory' },
    { areaMm2: 4, forceN: 310, status: 'from memory' },
    { areaMm2: 5.3, gauge: 10, forceN: 355, status: 'from memory' },
    { areaMm2: 6, forceN: 360, status: 'from memory' },
    { areaMm2: 8.4, gauge: 8, forceN: 370, status: 'from memory' },
    { areaMm2: 10, forceN: 380, status: 'from memory' },
  ],
  provenance: {
    status: 'from memory',
    source: 'IEC 60352-2, Solderless connections, crimped connections',
    edition: '2006',
    clause: 'tensile strength of crimped connections',
  },
} as const satisfies PullForceTable)
