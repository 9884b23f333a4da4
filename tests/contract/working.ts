import type { Provenance } from './names.ts'

// The public contract: The package working.

export type QuantityKind =
  | 'areaMm2'
  | 'lengthM'
  | 'lengthMm'
  | 'temperatureC'
  | 'temperatureDifferenceK'
  | 'resistanceOhm'
  | 'resistanceOhmPerM'
  | 'currentA'
  | 'voltageV'
  | 'powerW'
  | 'forceN'
  | 'massKg'
  | 'timeS'
  | 'ratio'
  | 'angleRad'
  | 'pressurePa'
  | 'speedMPerS'
  | 'volumeMm3'
  | 'stressMPa'
  | 'thermalResistanceKPerW'
  | 'frequencyHz'

export type Uncertain =
  | { readonly value: number; readonly standardUncertainty: number; readonly degreesOfFreedom?: number }
  | { readonly value: number; readonly halfWidth: number; readonly distribution: 'rectangular' | 'triangular' | 'u-shaped' }
  | { readonly low: number; readonly high: number }

export interface Explanation {
  readonly id: string
  readonly value: number
  readonly unit: string
  readonly formulaTex: string
  readonly substitutedTex: string
  readonly plain: string
  readonly symbols: readonly { readonly name: string; readonly tex: string; readonly unit: string; readonly meaning: string; readonly value: number }[]
  readonly steps: readonly { readonly text: string; readonly tex: string; readonly value?: number; readonly unit?: string }[]
  readonly source: Provenance
  readonly validity: readonly string[]
  readonly notes: readonly string[]
}

export interface Working {
  parseQuantity(text: string, kind: QuantityKind): number
  formatQuantity(
    value: number,
    kind: QuantityKind,
    options?: { readonly system?: 'metric' | 'inch' | 'both'; readonly significant?: number; readonly uncertainty?: number },
  ): string
  explain(id: string, inputs: Readonly<Record<string, unknown>>): Explanation
  propagate<K extends string>(
    fn: (x: Readonly<Record<K, number>>) => number,
    inputs: Readonly<Record<K, Uncertain>>,
    options?: {
      readonly method?: 'linear' | 'monte-carlo'
      readonly draws?: number
      readonly seed?: number
      readonly coverage?: number
      readonly correlations?: readonly (readonly [K, K, number])[]
    },
  ): {
    readonly value: number
    readonly standardUncertainty: number
    readonly low: number
    readonly high: number
    readonly coverage: number
    readonly shares: Readonly<Record<K, number>>
  }
}
