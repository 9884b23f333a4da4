import type { Interval, SleeveMaterialName } from '@strandwise/core/materials'
import type { Sleeve } from '@strandwise/core/sleeve'

/** Rows of the tables that the page is built with. */
export interface SleeveFacts {
  /** The sizes that can be ticked, by the word of their tick. */
  readonly stock: Readonly<Record<string, Sleeve & { readonly name: string; readonly fromMemory: boolean }>>
  readonly changes: Readonly<Partial<Record<SleeveMaterialName, Interval>>>
  /** Of the smallest diameter, the largest share that the recovered inside should have. */
  readonly recoveredShare: number
  /** Of the largest diameter, the least that the supplied inside should have. */
  readonly suppliedRatio: number
  /** The least cover past the joint on each side, in diameters of the covered wire. */
  readonly coverDiameters: number
}
