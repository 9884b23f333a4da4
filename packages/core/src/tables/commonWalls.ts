import { frozen } from '../errors/inner.ts'
import type { Provenance } from '../materials/index.ts'

/** One span of conductor areas with its common wall; null is any larger area. */
export interface CommonWallRow {
  readonly largestAreaMm2: number | null
  readonly wallMm: number
}

/**
 * Common wall of the insulation of single low-voltage wires by conductor area, for a wire whose wall was not measured: from memory.
 * Thin-walled vehicle wire has about half of it, and then runs cooler and needs a narrower sleeve.
 *
 * @source Walls of general-purpose vehicle and boat wire: from memory
 */
export const commonWalls = /* @__PURE__ */ frozen({
  rows: [
    { largestAreaMm2: 1, wallMm: 0.6 },
    { largestAreaMm2: 2.5, wallMm: 0.7 },
    { largestAreaMm2: 6, wallMm: 0.8 },
    { largestAreaMm2: null, wallMm: 1 },
  ],
  provenance: { status: 'from memory', source: 'walls of general-purpose vehicle and boat wire' },
} as const satisfies { readonly rows: readonly CommonWallRow[]; readonly provenance: Provenance })
