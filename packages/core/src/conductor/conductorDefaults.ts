import { frozen } from '../errors/inner.ts'
import type { Provenance } from '../materials/index.ts'

/** What the conductor formulas take where the caller says nothing. */
export const conductorDefaults = /* @__PURE__ */ frozen({
  /** Strands as long as the wire itself: standards' areas and maximum resistances already hold the lay. */
  layFactor: 1,
  /** Temperature of a measured resistance, in degC. */
  temperatureC: 20,
  provenance: { status: 'common practice', source: 'conductors are sized and their resistances stated at 20 C, the lay included' },
} as const satisfies { readonly layFactor: number; readonly temperatureC: number; readonly provenance: Provenance })
