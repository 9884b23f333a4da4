import type { InsulationName, MetalName } from '@strandwise/core/materials'

/** An insulation as this question needs it: what its lowest grade stands for ever, and how it passes heat. */
export interface InsulationFacts {
  readonly limitC: number
  readonly conductivityWPerMK: number
}

/** Rows of the tables that the page is built with. */
export interface WireSizeFacts {
  readonly insulations: Readonly<Partial<Record<InsulationName, InsulationFacts>>>
  readonly metals: Readonly<Partial<Record<MetalName, string>>>
  /** Standard sizes by series, the thinnest first. */
  readonly series: Readonly<Record<string, readonly { readonly size: string; readonly areaMm2: number }[]>>
  /** Outside of a bundle of that many equal wires, in diameters of one; the first is one wire. */
  readonly bundleRatios: readonly number[]
  readonly layFactor: number
}
