import { frozen } from '../../errors/inner.ts'
import type { Provenance, ProvenanceStatus } from '../../materials/index.ts'
import type { HeatJointInput, HeatJointResult } from '../heatJointTypes.ts'
import type { HeatSolderSleeveResult } from '../heatSolderSleeve.ts'
import type { SolderSleeveTube } from '../solderSleeveTube.ts'

/** When a joint counts as wetted in time, and how long the tool stays after it. */
export const heatVerdictDefaults = /* @__PURE__ */ frozen({
  iron: {
    soundWithinS: 5,
    wettedWithinS: 10,
    provenance: { status: 'common practice', source: 'an iron that needs more than some five seconds cooks the joint' },
  },
  'hot-air': {
    soundWithinS: 30,
    wettedWithinS: 60,
    provenance: { status: 'from memory', source: 'a sleeve or a lap in a stream takes some ten to thirty seconds' },
  },
  /** The tool lifts this long after wetting. */
  liftAfterS: 2,
  /** The edge is watched this long after the tool has lifted. */
  watchAfterS: 30,
} as const satisfies {
  readonly [K in 'iron' | 'hot-air']: { readonly soundWithinS: number; readonly wettedWithinS: number; readonly provenance: Provenance }
} & { readonly liftAfterS: number; readonly watchAfterS: number })

/** From worst to best: unsound, cannot tell, caution, sound. */
export type HeatJudgement = 'unsound' | 'cannot tell' | 'caution' | 'sound'

/** Ends of what is not known: an iron's contact, a stream's film, a tube's grip. */
export type HeatEndName = 'favourable' | 'nominal' | 'unfavourable'

/** The joint at one end, the tool lifted 2 s after its own wetting. */
export interface HeatEnd {
  /** Of an iron; else null. */
  readonly contactResistanceKPerW: number | null
  /** Times the stream's own film; null for an iron. */
  readonly streamFactor: number | null
  /** null: not within the time that is allowed. */
  readonly wettedAtS: number | null
  /** Own wetting + 2 s, or the time that is allowed. */
  readonly toolOffS: number
  readonly result: HeatJointResult | HeatSolderSleeveResult
}

/**
 * What was found.
 * never-wets: not in time even at the favourable end; only-favourable-wets; unfavourable-does-not-wet: nominal does;
 * wets-late: at every end, at one of them later than a sound joint; wets: at both ends in good time.
 * limit-passed: the insulation's limit; limit-kept. tube-limit-passed: the tube's own short limit, before the joint is wetted.
 */
export type HeatCode =
  | 'never-wets'
  | 'only-favourable-wets'
  | 'unfavourable-does-not-wet'
  | 'wets-late'
  | 'wets'
  | 'limit-passed'
  | 'limit-kept'
  | 'tube-limit-passed'

/** One finding: its code, how it judges, and its figures. */
export interface HeatFinding {
  readonly code: HeatCode
  readonly verdict: HeatJudgement
  readonly values: Readonly<Record<string, number | string | null>>
}

/** Something that the hand can do, and what it gains. */
export interface HeatMove {
  /** wet-tip: a fresh bead of solder bridges the whole flat; flux: the oxide goes; press: twice the force; nearer: the stream's favourable end. */
  readonly lever: 'wet-tip' | 'flux' | 'press' | 'nearer'
  readonly contactResistanceKPerW: number | null
  readonly streamFactor: number | null
  /** null: still not in time. */
  readonly wettedAtS: number | null
  /** Sooner than the nominal by; null where one of the two does not wet in time. */
  readonly gainS: number | null
}

/** A joint to be judged: what heatJoint takes, without the times, and a tube where it is a solder sleeve. */
export type HeatVerdictInput = Omit<HeatJointInput, 'toolOffS' | 'observeS' | 'sampleTimesS'> & {
  readonly tube?: SolderSleeveTube
  /** Of each conductor's insulationLimitC; without it a limit that is given counts as published, the table's short exposure as an estimate. */
  readonly limitStatuses?: readonly ProvenanceStatus[]
  /** Of the tube's shortLimitC; from memory where absent. */
  readonly tubeLimitStatus?: ProvenanceStatus
  /** Flat of the iron's tip: it bounds the contact. */
  readonly tipWidthMm?: number
  readonly contactFactor?: number
  readonly streamFactor?: number
  /** Of films of still air that are not given. */
  readonly filmFactor?: number
  /** Of the tube's grip, and how far off its recovery may be. */
  readonly gripFactor?: number
  readonly recoverySpreadK?: number
}

/** How a joint takes its heat, with what decides and what would move it. */
export interface HeatVerdict {
  readonly verdict: HeatJudgement
  readonly ends: Readonly<Record<HeatEndName, HeatEnd>>
  /** The worst first. */
  readonly findings: readonly HeatFinding[]
  /** Empty where the joint is sound. */
  readonly moves: readonly HeatMove[]
}
