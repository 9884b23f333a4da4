import { wireDefaults } from '../ampacity/index.ts'
import { frozen } from '../errors/inner.ts'
import type { Provenance } from '../materials/index.ts'

/** Defaults of the verdict on a wire. */
export const verdictDefaults = /* @__PURE__ */ frozen({
  loadedWires: 1,
  sizes: 'AWG',
  material: wireDefaults.material,
  /** Margin to the limit below which a conductor is a caution, in K. */
  nearLimitK: 10,
  /** Time within which a fault at the far end should clear, in s. */
  farFaultWithinS: 5,
  provenance: {
    status: 'common practice',
    source: 'ten kelvins in reserve; a fault of a fixed circuit cleared within five seconds',
  },
} as const satisfies Readonly<Record<string, unknown>> & { readonly provenance: Provenance })

/** Hottest air round a fuse holder in which the linear loss of rating per kelvin is used, in degC. */
export const fuseHottestC = 150
/** Relative tolerance, so that rounding alone changes no verdict. */
export const roundingShare = 1e-12
