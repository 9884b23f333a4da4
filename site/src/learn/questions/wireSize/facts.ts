import type { InsulationName, MetalName } from '@strandwise/core/materials'

/** An insulation: continuous limit of its lowest grade, and thermal conductivity. */
export interface InsulationFacts {
  readonly limitC: number
  readonly conductivityWPerMK: number
}

/** Table rows fixed at build time. */
export interface WireSizeFacts {
  readonly insulations: Readonly<Partial<Record<InsulationName, InsulationFacts>>>
  readonly metals: Readonly<Partial<Record<MetalName, string>>>
  /** Standard sizes by series, thinnest first. */
  readonly series: Readonly<Record<string, readonly { readonly size: string; readonly areaMm2: number }[]>>
  /** Bundle diameter by number of equal wires, in wire diameters, from one wire on. */
  readonly bundleRatios: readonly number[]
  readonly layFactor: number
}
