import { frozen } from '../errors/inner.ts'
import type { Provenance } from '../materials/index.ts'

/** Defaults of the conductor formulas. */
export const conductorDefaults = /* @__PURE__ */ frozen({
  /** Strands no longer than the wire: areas and maximum resistances in standards include the lay already. */
  layFactor: 1,
  /** Temperature of a measured resistance, in degC. */
  temperatureC: 20,
  provenance: { status: 'common practice', source: 'conductors are sized and their resistances stated at 20 C, the lay included' },
} as const satisfies { readonly layFactor: number; readonly temperatureC: number; readonly provenance: Provenance })
