import type { WireHeat } from '../ampacity/index.ts'
import type { Interval, Provenance } from '../materials/index.ts'

/** From best to worst. */
export type Verdict = 'sound' | 'caution' | 'cannot tell' | 'unsound'

/** Type of fuse or breaker. If absent: blade, provided that blades come in that rating. */
export type FuseKind = 'blade' | 'cartridge' | 'bolt-down' | 'breaker'

/** Standards of the sizes to choose from. */
export type SizeStandard = 'AWG' | 'SAE J1128' | 'ISO 6722-1' | 'IEC 60228'

/** One wire, its place, its load and its fuse. */
export interface WireJob {
  /** The wire alone; ambientC is hottestC, and both still-air correlations are used. */
  readonly wire: Omit<WireHeat, 'ambientC' | 'correlation'>
  /** Continuous limit of the insulation's grade, or of plating or metal if lower. */
  readonly limitC: number
  readonly hottestC: number
  /** Current while the load is on. */
  readonly currentA: number
  /** Repeated duty: onS on, offS off; absent means continuous. */
  readonly duty?: { readonly onS: number; readonly offS: number }
  /** Wires in the bundle that carry this current at the same time, this one included. */
  readonly loadedWires?: number
  /** Outside of the whole bundle; if absent, the loaded wires are packed by themselves. */
  readonly bundleOutsideMm?: number
  /** Without it the drop is not judged. */
  readonly run?: {
    readonly supplyV: number
    readonly outLengthM: number
    readonly returnLengthM: number
    readonly allowedDropV: number
    /** False for a customary limit: passing it is only a caution. */
    readonly limitIsStated?: boolean
    /** Internal resistance of the source, which bounds the fault currents; without it they are not judged. */
    readonly sourceOhm?: number
  }
  readonly inrush?: { readonly currentA: number; readonly timeS: number }
  readonly stallA?: number
  readonly fuse?: {
    /** Rating of the fitted fuse; absent if unknown. */
    readonly ratedA?: number
    readonly kind?: FuseKind
    /** Ambient of the fuse. */
    readonly ambientC?: number
    /** Fuse rating over the wire's continuous current that a rule allows, such as 1.5 on small craft; not used if the fuse must open a stall. */
    readonly mostOverWire?: number
  }
  /** Standard of the sizes to choose from; AWG by default. */
  readonly sizes?: SizeStandard
  /** False skips the search for another size or fuse (the slowest part), and judges a fuse only if one is fitted. */
  readonly offers?: boolean
}

/** A finding as data: a stable code with its values; planner and site write the text. */
export interface WireFinding {
  readonly code: WireCode
  readonly topic: 'current' | 'drop' | 'fuse'
  readonly verdict: Verdict
  readonly values: Readonly<Record<string, number>>
  readonly sources: readonly Provenance[]
}

/** The code of a finding, with its values beside it. */
export type WireCode =
  | 'current-within-limit' // conductorLowC, conductorHighC, limitC, roomK
  | 'current-near-limit' // conductorLowC, conductorHighC, limitC, roomK
  | 'current-over-limit' // conductorLowC, conductorHighC, limitC, roomK (negative)
  | 'no-steady-state' // currentA, largestA, ceilingC
  | 'air-at-limit' // hottestC, limitC
  | 'drop-within-budget' // dropV, allowedDropV, shareOfSupply
  | 'drop-over-budget' // dropV, allowedDropV, shareOfSupply
  | 'fuse-missing' // fuseToFitA if there is one
  | 'fuse-guards-wire' // ratedA, opensForSureA, wireA
  | 'fuse-within-rule' // ratedA, opensForSureA, wireA, mostOverWire
  | 'fuse-over-wire' // ratedA, opensForSureA, wireA; largestFuseA if there is one
  | 'fuse-slower-than-wire' // lowA, highA, limitC
  | 'fuse-near-load' // ratedA, atAmbientA, loadA, share, usualShare
  | 'fuse-below-load' // ratedA, atAmbientA, loadA, share, usualShare
  | 'fuse-may-open-on-inrush' // ratedA, inrushA, inrushS, shortestS
  | 'fuse-opens-stall' // ratedA, stallA, longestS
  | 'fuse-passes-stall' // ratedA, stallA, opensForSureA
  | 'fuse-opens-far-fault' // ratedA, faultA, longestS
  | 'fuse-slow-on-far-fault' // ratedA, faultA, withinS; longestS unless never
  | 'fuse-breaking-capacity' // faultA, breakingA
  | 'fuse-supply-voltage' // supplyV, ratedV
  | 'fuse-no-band' // mustOpenA, mustHoldA; inrushA and inrushS, stallA
  | 'fuse-air-beyond-data' // ambientC, highestC
  | 'fuse-none-serves' // smallestFuseA; largestFuseA if there is one
  | 'fuse-load-beyond-series' // loadA

/** A standard size that suits. */
export interface SizeFound {
  readonly standard: SizeStandard
  readonly size: string
  readonly areaMm2: number
  /** Low end of the band, in its ambient and bundle. */
  readonly continuousA: number
  readonly dropV: number | null
  /** null without a band for that kind of fuse. */
  readonly fuseToFitA: number | null
}

/** The verdict with its findings and figures. */
export interface WireVerdict {
  /** That of the worst finding. */
  readonly verdict: Verdict
  /** Worst first. */
  readonly findings: readonly WireFinding[]
  /** Continuous current at the limit by both still-air correlations; null if none is allowed. The low end decides. */
  readonly continuousA: Interval | null
  /** Conductor temperature at the load, or its peak over the duty; null without a steady state. The high end decides. */
  readonly conductorC: Interval | null
  /** Root mean square over the duty: the continuous current with the same heat. */
  readonly equivalentA: number
  readonly dropV: number | null
  /** Series of the band used for the fuse; null without one. */
  readonly fuseSeries: string | null
  /** Largest rating of the series that protects the wire. */
  readonly largestFuseA: number | null
  /** Smallest rating of the series that carries load and inrush with the usual reserve. */
  readonly smallestFuseA: number | null
  /** The fuse to fit: carries load and inrush, protects the wire, opens a stall; null if none does. */
  readonly fuseToFitA: number | null
  /** Smallest standard size that suits together with a fuse to fit; null if none. */
  readonly size: SizeFound | null
  /** Smallest standard size that suits with the fuse as fitted; null without a fuse or if none suits. */
  readonly sizeForFuse: SizeFound | null
}
