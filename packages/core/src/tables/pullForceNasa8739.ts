import { frozen } from '../errors/inner.ts'
import type { PullForceTable } from './pullForceTable.ts'

/**
 * Least force of crimped connections in space harnesses: by gauge alone for copper grounding leads, by contact size and gauge for contacts (from memory).
 * A combination that isn't listed must hold 60 percent of the wire's tensile strength; a retention pull stays at or below 80 percent of these forces.
 *
 * @source NASA-STD-8739.4, change 6, table 13-1; status row by row
 */
export const pullForceNasa8739 = /* @__PURE__ */ frozen({
  rows: [
    { gauge: 24, forceLbf: 8, forceN: 36, status: 'published' },
    { gauge: 22, forceLbf: 13, forceN: 57, status: 'published' },
    { contactSize: 12, gauge: 12, forceLbf: 110, forceN: 489, status: 'from memory' },
    { contactSize: 12, gauge: 14, forceLbf: 70, forceN: 311, status: 'from memory' },
    { contactSize: 16, gauge: 16, forceLbf: 50, forceN: 222, status: 'from memory' },
    { contactSize: 16, gauge: 18, forceLbf: 32, forceN: 142, status: 'from memory' },
    { contactSize: 16, gauge: 20, forceLbf: 19, forceN: 85, status: 'from memory' },
    { contactSize: 20, gauge: 20, forceLbf: 19, forceN: 85, status: 'from memory' },
    { contactSize: 20, gauge: 22, forceLbf: 12, forceN: 53, status: 'from memory' },
    { contactSize: 20, gauge: 24, forceLbf: 8, forceN: 36, status: 'from memory' },
    { contactSize: 22, gauge: 22, forceLbf: 12, forceN: 53, status: 'from memory' },
    { contactSize: 22, gauge: 24, forceLbf: 8, forceN: 36, status: 'from memory' },
    { contactSize: 22, gauge: 26, forceLbf: 5, forceN: 22, status: 'from memory' },
    { contactSize: 22, gauge: 28, forceLbf: 3, forceN: 13, status: 'from memory' },
  ],
  unlistedShareOfWire: 0.6,
  retentionPullShare: 0.8,
  provenance: {
    status: 'published',
    source: 'NASA-STD-8739.4, Crimping, interconnecting cables, harnesses and wiring',
    edition: 'change 6, 2011',
    clause: 'table 13-1 and its rules',
  },
} as const satisfies PullForceTable & { readonly unlistedShareOfWire: number; readonly retentionPullShare: number })
