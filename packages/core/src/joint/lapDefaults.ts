import { frozen } from '../errors/inner.ts'
import type { Provenance } from '../materials/index.ts'

/** Defaults of the interface of an overlap. */
export const lapDefaults = /* @__PURE__ */ frozen({
  /** No film between solder and conductor, in ohm m2: a wetted surface. */
  filmOhmM2: 0,
  provenance: { status: 'common practice', source: 'a wetted solder joint has no film; what did not wet is entered as a stretch without interface' },
} as const satisfies { readonly filmOhmM2: number; readonly provenance: Provenance })
