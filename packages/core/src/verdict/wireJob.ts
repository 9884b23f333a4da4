import type { WireHeat } from '../ampacity/index.ts'
import type { Interval, Provenance } from '../materials/index.ts'

/** Best to worst. */
export type Verdict = 'sound' | 'caution' | 'cannot tell' | 'unsound'

/** The build of a fuse or breaker; without one it is taken as a blade fuse where its rating is one of theirs. */
export type FuseKind = 'blade' | 'cartridge' | 'bolt-down' | 'breaker'

/** Standards whose sizes are offered. */
export type SizeStandard = 'AWG' | 'SAE J1128' | 'ISO 6722-1' | 'IEC 60228'

/** One wire, its place, its load and its fuse. */
export interface WireJob {
  /** The wire by itself; the air is hottestC, both laws of still air are used. */
  readonly wire: Omit<WireHeat, 'ambientC' | 'correlation'>
  /** Continuous temperature limit of the insulation's grade, or of plating or metal where that is lower. */
  readonly limitC: number
  readonly hottestC: number
  /** While the load is on. */
  readonly currentA: number
  /** A load that runs onS and rests offS, again and again; absent is continuous. */
  readonly duty?: { readonly onS: number; readonly offS: number }
  /** Wires in the bundle that carry this current at the same time, this one included. */
  readonly loadedWires?: number
  /** Outside of the whole bundle; absent, the loaded wires lie together by themselves. */
  readonly bundleOutsideMm?: number
  /** Absent: the drop is not judged. */
  readonly run?: {
    readonly supplyV: number
    readonly outLengthM: number
    readonly returnLengthM: number
    readonly allowedDropV: number
    /** False for a limit that is only customary: passing it is a caution. */
    readonly limitIsStated?: boolean
    /** Internal resistance of the source: bounds the fault currents; absent, they are not judged. */
    readonly sourceOhm?: number
  }
  readonly inrush?: { readonly currentA: number; readonly timeS: number }
  readonly stallA?: number
  readonly fuse?: {
    /** The fuse that is fitted; absent, none is known. */
    readonly ratedA?: number
    readonly kind?: FuseKind
    /** Air round the fuse. */
    readonly ambientC?: number
    /** Fuse rating over the wire's continuous current that a rule allows, such as 1.5 on small craft; used where no stall is to be opened. */
    readonly mostOverWire?: number
  }
  /** Sizes to choose from; AWG where absent. */
  readonly sizes?: SizeStandard
  /** False: no other size or fuse is looked for, which takes most of the time, and a fuse is judged only where one is fitted. */
  readonly offers?: boolean
}

/** One thing found, as data: a stable code with its figures; the words are the planner's and the site's. */
export interface WireFinding {
  readonly code: WireCode
  readonly topic: 'current' | 'drop' | 'fuse'
  readonly verdict: Verdict
  readonly values: Readonly<Record<string, number>>
  readonly sources: readonly Provenance[]
}

/** The code of a finding; the values that each speaks with stand beside it. */
export type WireCode =
  | 'current-within-limit' // conductorLowC, conductorHighC, limitC, roomK
  | 'current-near-limit' // the same
  | 'current-over-limit' // the same, roomK below 0
  | 'no-steady-state' // currentA, largestA, ceilingC
  | 'air-at-limit' // hottestC, limitC
  | 'drop-within-budget' // dropV, allowedDropV, shareOfSupply
  | 'drop-over-budget' // the same
  | 'fuse-missing' // fuseToFitA where there is one
  | 'fuse-guards-wire' // ratedA, opensForSureA, wireA
  | 'fuse-within-rule' // the same, mostOverWire
  | 'fuse-over-wire' // ratedA, opensForSureA, wireA; largestFuseA where there is one
  | 'fuse-slower-than-wire' // lowA, highA, limitC
  | 'fuse-near-load' // ratedA, atAmbientA, loadA, share, usualShare
  | 'fuse-below-load' // the same
  | 'fuse-may-open-on-inrush' // ratedA, inrushA, inrushS, shortestS
  | 'fuse-opens-stall' // ratedA, stallA, longestS
  | 'fuse-passes-stall' // ratedA, stallA, opensForSureA
  | 'fuse-opens-far-fault' // ratedA, faultA, longestS
  | 'fuse-slow-on-far-fault' // ratedA, faultA, withinS; longestS unless never
  | 'fuse-breaking-capacity' // faultA, breakingA
  | 'fuse-supply-voltage' // supplyV, ratedV
  | 'fuse-no-band' // mustOpenA, mustHoldA; inrushA and inrushS, stallA
  | 'fuse-air-beyond-data' // ambientC, highestC
  | 'fuse-none-serves' // smallestFuseA; largestFuseA where there is one
  | 'fuse-load-beyond-series' // loadA

/** A standard size that suits. */
export interface SizeFound {
  readonly standard: SizeStandard
  readonly size: string
  readonly areaMm2: number
  /** Low end of the band, in its heat and bundle. */
  readonly continuousA: number
  readonly dropV: number | null
  /** null where no band is held for that kind of fuse. */
  readonly fuseToFitA: number | null
}

/** The verdict with what it rests on. */
export interface WireVerdict {
  /** The worst finding's. */
  readonly verdict: Verdict
  /** Worst first. */
  readonly findings: readonly WireFinding[]
  /** Continuous current at the limit by both laws of still air; null where none is allowed. The low end decides. */
  readonly continuousA: Interval | null
  /** Conductor at the load, or its peak over the duty; null without a steady state. The high end decides. */
  readonly conductorC: Interval | null
  /** Root mean square over the duty: the continuous current with the same heat. */
  readonly equivalentA: number
  readonly dropV: number | null
  /** The band that judged the fuse; null where none is held. */
  readonly fuseSeries: string | null
  /** Largest rating of the series that the wire bears. */
  readonly largestFuseA: number | null
  /** Smallest rating of the series that carries load and inrush with its usual reserve. */
  readonly smallestFuseA: number | null
  /** The fuse to fit: carries load and inrush, guards the wire, opens a stall; null where none does. */
  readonly fuseToFitA: number | null
  /** Smallest standard size that suits with a fuse to fit; null where none does. */
  readonly size: SizeFound | null
  /** Smallest standard size that suits and bears the fuse as fitted; null where none is fitted or none suits. */
  readonly sizeForFuse: SizeFound | null
}
