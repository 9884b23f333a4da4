import { frozen } from '../errors/inner.ts'
import type { PullForceTable } from './pullForceTable.ts'

/**
 * Least tensile force of crimped aircraft terminals and splices by gauge; 2 and thicker from memory, converted from the pounds.
 *
 * @source SAE AS7928 (before it MIL-T-7928), read in a connector maker's pull table; status row by row
 */
export const pullForceAs7928 = /* @__PURE__ */ frozen({
  rows: [
    { gauge: 26, forceLbf: 7, forceN: 31.1, status: 'published' },
    { gauge: 24, forceLbf: 10, forceN: 44.5, status: 'published' },
    { gauge: 22, forceLbf: 15, forceN: 66.7, status: 'published' },
    { gauge: 20, forceLbf: 19, forceN: 84.5, status: 'published' },
    { gauge: 18, forceLbf: 38, forceN: 169, status: 'published' },
    { gauge: 16, forceLbf: 50, forceN: 222.5, status: 'published' },
    { gauge: 14, forceLbf: 70, forceN: 311.5, status: 'published' },
    { gauge: 12, forceLbf: 110, forceN: 489.3, status: 'published' },
    { gauge: 10, forceLbf: 150, forceN: 667.2, status: 'published' },
    { gauge: 8, forceLbf: 225, forceN: 1000.8, status: 'published' },
    { gauge: 6, forceLbf: 300, forceN: 1334.5, status: 'published' },
    { gauge: 4, forceLbf: 400, forceN: 1779.3, status: 'published' },
    { gauge: 2, forceLbf: 550, forceN: 2446.5, status: 'from memory' },
    { gauge: 1, forceLbf: 650, forceN: 2891.3, status: 'from memory' },
    { gauge: 0, forceLbf: 700, forceN: 3113.8, status: 'from memory' },
    { gauge: -1, forceLbf: 750, forceN: 3336.2, status: 'from memory' },
    { gauge: -2, forceLbf: 825, forceN: 3669.8, status: 'from memory' },
    { gauge: -3, forceLbf: 875, forceN: 3892.2, status: 'from memory' },
  ],
  provenance: {
    status: 'published',
    source: 'SAE AS7928, Terminals, lug: splices, conductor: crimp style, copper',
    clause: 'tensile strength, gauges 26 to 10 read; 8 to 4 in MIL-T-7928E, which it follows',
  },
} as const satisfies PullForceTable)
