import { frozen } from '../errors/inner.ts'
import type { Provenance } from '../materials/index.ts'

/** Defaults of heatSolderSleeve's tube. */
export const solderSleeveDefaults = /* @__PURE__ */ frozen({
  conductivityWPerMK: { value: 0.25, provenance: { status: 'from memory', source: 'polyolefin and fluoropolymer tubes, order of magnitude' } },
  densityKgPerM3: { value: 1000, provenance: { status: 'from memory', source: 'cross-linked polyolefin, rounded' } },
  specificHeatJPerKgK: { value: 1900, provenance: { status: 'from memory', source: 'cross-linked polyolefin, rounded' } },
  gripWPerM2K: {
    value: 500,
    provenance: { status: 'from memory', source: 'a soft wall pressed on metal with little air between, a guess: a factor 3 either way' },
  },
  emissivity: { value: 0.9, provenance: { status: 'from memory', source: 'plastic tubes' } },
  /** Effective emissivity of bore and joint across the gap of a loose tube. */
  gapEmissivity: { value: 0.9, provenance: { status: 'from memory', source: 'plastic bore; bright copper would take less' } },
} as const satisfies Readonly<Record<string, { readonly value: number; readonly provenance: Provenance }>>)

/** A shrink tube over the joint with a ring of solder in it. */
export interface SolderSleeveTube {
  readonly insideMm: number
  /** Inside diameter when freely recovered; the tube hangs loose on anything thinner. */
  readonly recoveredInsideMm: number
  readonly wallMm: number
  readonly lengthMm: number
  readonly recoveryC: number
  readonly continuousC?: number
  /** Temperature that its outside survives for seconds. */
  readonly shortLimitC?: number
  readonly emissivity?: number
  readonly conductivityWPerMK?: number
  readonly densityKgPerM3?: number
  readonly specificHeatJPerKgK?: number
  readonly gripWPerM2K?: number
}
