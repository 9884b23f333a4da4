import { frozen } from '../errors/inner.ts'
import type { Interval, Provenance } from '../materials/index.ts'

/** Defaults of the crimp formulas. */
export const crimpDefaults = /* @__PURE__ */ frozen({
  /** Area of the crimped section over width times height; 1 is a full rectangle and gives the smallest crimp height. */
  shapeFactor: 1,
  provenance: { status: 'derived', source: 'geometry: no section is larger than its width times its height' },
} as const satisfies { readonly shapeFactor: number; readonly provenance: Provenance })

/**
 * Share of a barrel's bore that the conductors' metal should fill: below the low end the crimp stays loose, above the high end the strands do not go in.
 *
 * @source trade figures for closed barrels (from memory); the maker's printed range comes first
 */
export const barrelFillLimits = /* @__PURE__ */ frozen({
  low: 0.4,
  high: 0.8,
  provenance: { status: 'from memory', source: 'Trade figures for closed barrels: a strand bundle is a fifth to a third air' },
} as const satisfies Interval & { readonly provenance: Provenance })
