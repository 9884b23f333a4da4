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

/** A tube over the lap: it alone meets the air, and hands heat on to the joint. It shrinks once, when it first reaches recoveryRiseK. */
export interface HeatTube {
  readonly kind: 'tube'
  readonly airRiseK: number
  /** The stream is on. */
  readonly streamed: boolean
  readonly recovered: boolean
  readonly emissivity: number
  readonly capacityJPerK: number
  readonly recoveryRiseK: number
  readonly onLapLoose: TubeOnLap
  readonly onLapRecovered: TubeOnLap
  /** Still air in the gap, W/(m K) against the mean rise of tube and joint. */
  readonly gapAir: StreamFilm
  readonly gapEmissivity: number
  /** Limits of the outer face, above the surroundings; Infinity where not given. */
  readonly continuousRiseK: number
  readonly shortRiseK: number
}

/** The part of a tube that lies over the lap, before or after it has shrunk. */
export interface TubeOnLap {
  readonly stream: StreamFilm
  readonly stillFilmWPerM2K: number
  readonly outsideM2: number
  /** Half of the wall, on either side of the tube's own temperature. */
  readonly halfWallKPerW: number
  /** Contact where it grips; null where it hangs with a gap. */
  readonly gripWPerK: number | null
  /** The gap: conduction for each W/(m K) of its air, and the area that radiates. */
  readonly gapM: number
  readonly gapM2: number
}

/** A metre of tube over wire, from its outside to the copper. */
export interface TubeLayer {
  readonly streamWPerMK: number
  readonly stillWPerMK: number
  readonly radiationWPerMK: number
  /** From the tube's own temperature to the copper. */
  readonly innerWPerMK: number
  readonly halfWallMKPerW: number
  /** Insulation between tube and copper; 0 on the stub. */
  readonly coverMKPerW: number
}

/** The tube over a wire beside the lap: it conducts nothing along itself. */
export interface TubeOverWire {
  readonly toM: number
  readonly airRiseK: number
  readonly storeJPerMK: number
  readonly loose: { readonly bare: TubeLayer; readonly insulated: TubeLayer }
  readonly recovered: { readonly bare: TubeLayer; readonly insulated: TubeLayer }
}

/** A clip at a point of the wire; without resistance it holds the copper at its own temperature. */
export interface WireClip {
  readonly atM: number
  readonly resistanceKPerW: number
  readonly riseK: number
}

/** One tail of a conductor in SI units; rises are above the surroundings. */
export interface Wire {
  /** How many free tails of all conductors are exactly like this one. */
  readonly tails: number
  readonly conductanceWM: number
  readonly stubM: number
  readonly bareStoreJPerMK: number
  readonly insulatedStoreJPerMK: number
  readonly bareLossWPerMK: number
  readonly insulatedLossWPerMK: number
  /** The stream along the wire while the tool is on; null where it sweeps the joint alone. */
  readonly swept: { readonly toM: number; readonly bareLossWPerMK: number; readonly insulatedLossWPerMK: number; readonly riseK: number } | null
  readonly tube: TubeOverWire | null
  readonly clip: WireClip | null
  /** Above the surroundings. */
  readonly limitRiseK: number
  /** Film over film and wall: what of a difference between copper and surroundings stands across the film. */
  readonly outerShare: number
  readonly sweptOuterShare: number
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
