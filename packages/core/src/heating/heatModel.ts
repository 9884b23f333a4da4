/** Heat source of the joint while the tool is on; temperatures are rises above the surroundings, resistances in K/W. */
export type HeatSource =
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

/** What changes from outside during a run. */
export interface HeatState {
  readonly toolOn: boolean
  /** True once the tube over a joint has shrunk. */
  readonly recovered: boolean
}

/** A tube over the lap: only the tube is exposed to the air, and it passes heat on to the joint. It shrinks once, on first reaching recoveryRiseK. */
export interface HeatTube {
  readonly kind: 'tube'
  readonly airRiseK: number
  readonly emissivity: number
  readonly capacityJPerK: number
  readonly recoveryRiseK: number
  readonly onLapLoose: TubeOnLap
  readonly onLapRecovered: TubeOnLap
  /** Conductivity of the still air in the gap, W/(m K), against the mean rise of tube and joint. */
  readonly gapAir: StreamFilm
  readonly gapEmissivity: number
  /** Temperature limits of the outer face, as rises; Infinity if not given. */
  readonly continuousRiseK: number
  readonly shortRiseK: number
}

/** The part of a tube that lies over the lap, before or after it has shrunk. */
export interface TubeOnLap {
  readonly stream: StreamFilm
  readonly stillFilmWPerM2K: number
  readonly outsideM2: number
  /** Half the wall: the node of the tube's temperature lies in its middle. */
  readonly halfWallKPerW: number
  /** Contact conductance where the tube grips; null where it hangs loose. */
  readonly gripWPerK: number | null
  /** The gap: conduction shape factor (W/K for each W/(m K) of air) and radiating area. */
  readonly gapM: number
  readonly gapM2: number
}

/** Per metre of tube over wire, from the tube's outside to the copper. */
export interface TubeLayer {
  readonly streamWPerMK: number
  readonly stillWPerMK: number
  readonly radiationWPerMK: number
  /** From the tube's node to the copper. */
  readonly innerWPerMK: number
  readonly halfWallMKPerW: number
  /** Insulation between tube and copper; 0 over the stub. */
  readonly coverMKPerW: number
}

/** The tube over a wire beside the lap, without axial conduction. */
export interface TubeOverWire {
  readonly toM: number
  readonly airRiseK: number
  readonly storeJPerMK: number
  readonly loose: { readonly bare: TubeLayer; readonly insulated: TubeLayer }
  readonly recovered: { readonly bare: TubeLayer; readonly insulated: TubeLayer }
}

/** A clip at a point of the wire; without resistance it fixes the copper's temperature there. */
export interface WireClip {
  readonly atM: number
  readonly resistanceKPerW: number
  readonly riseK: number
}

/** One tail of a conductor in SI units; rises are above the surroundings. */
export interface Wire {
  /** Number of identical free tails over all conductors. */
  readonly tails: number
  readonly conductanceWM: number
  readonly stubM: number
  readonly bareStoreJPerMK: number
  readonly insulatedStoreJPerMK: number
  readonly bareLossWPerMK: number
  readonly insulatedLossWPerMK: number
  /** The stream along the wire while the tool is on; null if it sweeps the joint alone. */
  readonly swept: { readonly toM: number; readonly bareLossWPerMK: number; readonly insulatedLossWPerMK: number; readonly riseK: number } | null
  readonly tube: TubeOverWire | null
  readonly clip: WireClip | null
  /** Rise above the surroundings. */
  readonly limitRiseK: number
  /** Share of the film in the thermal resistance from copper to surroundings. */
  readonly outerShare: number
  readonly sweptOuterShare: number
}

/** Film coefficient of a stream against the surface's rise: Chebyshev coefficients on an interval; a constant has one. */
export interface StreamFilm {
  readonly lowRiseK: number
  readonly highRiseK: number
  readonly coefficientsWPerM2K: Float64Array
}

/** Melting range and latent heat of the solder in the joint; temperatures are rises above the surroundings. */
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
  /** Distinct wires; identical tails are merged. */
  readonly wires: readonly Wire[]
  /** Index into `wires` for each conductor. */
  readonly wireOf: readonly number[]
  readonly toolOffS: number
  readonly observeS: number
  readonly sampleTimesS: readonly number[]
  readonly accuracy: number
}
