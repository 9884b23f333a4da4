import { frozen } from '../errors/inner.ts'
import type { Provenance } from '../materials/index.ts'

/**
 * How much wider than its packing a bundle tied by hand comes out, at most: ratio of diameters.
 *
 * @source trade figure (from memory)
 */
export const tiedBundle = /* @__PURE__ */ frozen({
  widerAtMost: 1.1,
  provenance: { status: 'from memory', source: 'Trade figure: a bundle twisted and tied by hand is up to a tenth wider than its packing' },
} as const satisfies { readonly widerAtMost: number; readonly provenance: Provenance })
