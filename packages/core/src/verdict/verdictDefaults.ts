import { wireDefaults } from '../ampacity/index.ts'
import { frozen } from '../errors/inner.ts'
import type { Provenance } from '../materials/index.ts'

/** What the verdict on a wire takes where the caller says nothing. */
export const verdictDefaults = /* @__PURE__ */ frozen({
  loadedWires: 1,
  sizes: 'AWG',
  material: wireDefaults.material,
  /** A conductor closer to its limit than this is a caution, in K. */
  nearLimitK: 10,
  /** A fault at the far end should be cleared within this time, in s. */
  farFaultWithinS: 5,
  provenance: {
    status: 'common practice',
    source: 'ten kelvins in reserve; a fault of a fixed circuit cleared within five seconds',
  },
} as const satisfies Readonly<Record<string, unknown>> & { readonly provenance: Provenance })

/** Hottest air round a fuse holder in which the linear loss of rating per kelvin is used, in degC. */
export const fuseHottestC = 150
/** Rounding alone turns no verdict. */
export const roundingShare = 1e-12
