import type { Interval, SleeveMaterialName } from '@strandwise/core/materials'
import type { Sleeve } from '@strandwise/core/sleeve'

/** Table rows fixed at build time. */
export interface SleeveFacts {
  /** Sleeve sizes to choose from, by option value. */
  readonly stock: Readonly<Record<string, Sleeve & { readonly name: string; readonly fromMemory: boolean }>>
  readonly changes: Readonly<Partial<Record<SleeveMaterialName, Interval>>>
  /** Recovered inside over the smallest diameter, at most. */
  readonly recoveredShare: number
  /** Supplied inside over the largest diameter, at least. */
  readonly suppliedRatio: number
  /** Least overlap past the joint on each side, in diameters of the covered wire. */
  readonly coverDiameters: number
}
