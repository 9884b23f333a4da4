import { frozen } from '../errors/inner.ts'
import type { Provenance } from '../materials/index.ts'

/** What heatSolderSleeve assumes of a tube where its input is silent. */
export const solderSleeveDefaults = /* @__PURE__ */ frozen({
  conductivityWPerMK: { value: 0.25, provenance: { status: 'from memory', source: 'polyolefin and fluoropolymer tubes, order of magnitude' } },
  densityKgPerM3: { value: 1000, provenance: { status: 'from memory', source: 'cross-linked polyolefin, rounded' } },
  specificHeatJPerKgK: { value: 1900, provenance: { status: 'from memory', source: 'cross-linked polyolefin, rounded' } },
  gripWPerM2K: {
    value: 500,
    provenance: { status: 'from memory', source: 'a soft wall pressed on metal with little air between, a guess: a factor 3 either way' },
  },
  emissivity: { value: 0.9, provenance: { status: 'from memory', source: 'plastic tubes' } },
  /** Of the tube's bore and what lies in it together, while the tube hangs loose. */
  gapEmissivity: { value: 0.9, provenance: { status: 'from memory', source: 'plastic bore; bright copper would take less' } },
} as const satisfies Readonly<Record<string, { readonly value: number; readonly provenance: Provenance }>>)

/** A tube that shrinks over the joint with a ring of solder in it. */
export interface SolderSleeveTube {
  readonly insideMm: number
  /** Inside when it has shrunk freely: what is thinner hangs loose in it. */
  readonly recoveredInsideMm: number
  readonly wallMm: number
  readonly lengthMm: number
  readonly recoveryC: number
  readonly continuousC?: number
  /** What its outside bears for seconds. */
  readonly shortLimitC?: number
  readonly emissivity?: number
  readonly conductivityWPerMK?: number
  readonly densityKgPerM3?: number
  readonly specificHeatJPerKgK?: number
  readonly gripWPerM2K?: number
}
