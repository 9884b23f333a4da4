import type { Wire } from './solver/finZones.ts'

/** Where the joint's heat comes from; rises are above the surroundings, resistances in K/W. */
export type HeatSource =
  | { readonly kind: 'none' }
  | { readonly kind: 'iron'; readonly setRiseK: number; readonly maximumW: number; readonly resistanceKPerW: number }
  | {
      readonly kind: 'heavy-iron'
      readonly setRiseK: number
      readonly maximumW: number
      readonly tipResistanceKPerW: number
      readonly contactResistanceKPerW: number
      readonly capacityJPerK: number
    }
  | { readonly kind: 'air'; readonly airRiseK: number; readonly film: StreamFilm }
  | HeatTube

/** A tube over the joint, in a stream while film is not null: it alone meets the air, and hands heat on to the joint. */
export interface HeatTube {
  readonly kind: 'tube'
  readonly airRiseK: number
  readonly film: StreamFilm | null
  readonly stillFilmWPerM2K: number
  readonly emissivity: number
  readonly outsideM2: number
  readonly capacityJPerK: number
  readonly recoveryRiseK: number
  /** It has recovered and grips the joint. */
  readonly gripped: boolean
  /** From tube to joint once it grips. */
  readonly tightWPerK: number
  /** Before that: conduction by still air, for each W/(m K) of the air, which is tabled against the mean rise; and radiation. */
  readonly gapM: number
  readonly gapAir: StreamFilm
  readonly gapM2: number
  readonly gapEmissivity: number
}

/** Film coefficient of a stream against the rise of what it heats: Chebyshev coefficients between two rises; a constant has one. */
export interface StreamFilm {
  readonly lowRiseK: number
  readonly highRiseK: number
  readonly coefficientsWPerM2K: Float64Array
}

/** The melting range and the latent heat of the solder in the joint; rises are above the surroundings. */
export interface Melt {
  readonly solidusRiseK: number
  readonly liquidusRiseK: number
  readonly latentJ: number
}

/** A joint, its tool and its wires in SI units; every temperature is a rise above the surroundings. */
export interface HeatModel {
  readonly ambientC: number
  readonly source: HeatSource
  readonly surfaceM2: number
  readonly filmWPerM2K: number
  readonly emissivity: number
  readonly capacityJPerK: number
  readonly melt: Melt
  readonly wettedRiseK: number
  /** Tails that are exactly alike are one wire. */
  readonly wires: readonly Wire[]
  /** For each conductor its place in wires. */
  readonly wireOf: readonly number[]
  readonly toolOffS: number
  readonly observeS: number
  readonly sampleTimesS: readonly number[]
  readonly accuracy: number
}
