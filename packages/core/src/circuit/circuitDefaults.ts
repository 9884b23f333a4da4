import { frozen } from '../errors/inner.ts'
import type { MetalName, Provenance } from '../materials/index.ts'

/** Defaults of the circuit formulas. */
export const circuitDefaults = /* @__PURE__ */ frozen({
  /** Metal of a relay's, valve's or motor's winding. */
  coilMaterial: 'annealed-copper',
  /** Half width of the current in a search for lost volts, in A. */
  currentUncertaintyA: 0,
  /** Half width of each voltage in a search for lost volts, in V. */
  uncertaintyV: 0,
  provenance: { status: 'common practice', source: 'windings are of copper; a reading without a stated uncertainty is taken as it stands' },
} as const satisfies {
  readonly coilMaterial: MetalName
  readonly currentUncertaintyA: number
  readonly uncertaintyV: number
  readonly provenance: Provenance
})
