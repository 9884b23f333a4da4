import { frozen } from '../../errors/inner.ts'
import type { Provenance, ProvenanceStatus } from '../../materials/index.ts'
import type { HeatJointInput, HeatJointResult } from '../heatJointTypes.ts'
import type { HeatSolderSleeveResult } from '../heatSolderSleeve.ts'
import type { SolderSleeveTube } from '../solderSleeveTube.ts'

/** Default time limits of wetting and tool removal. */
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
  /** Time between wetting and lifting the tool. */
  liftAfterS: 2,
  /** Observation time after the tool is lifted. */
  watchAfterS: 30,
} as const satisfies {
  readonly [K in 'iron' | 'hot-air']: { readonly soundWithinS: number; readonly wettedWithinS: number; readonly provenance: Provenance }
} & { readonly liftAfterS: number; readonly watchAfterS: number })

/** From worst to best: unsound, cannot tell, caution, sound. */
export type HeatJudgement = 'unsound' | 'cannot tell' | 'caution' | 'sound'

/** Ends of the uncertainties: an iron's contact, a stream's film, a tube's grip. */
export type HeatEndName = 'favourable' | 'nominal' | 'unfavourable'

/** Heating at one end, with the tool lifted 2 s after wetting. */
export interface HeatEnd {
  /** Of an iron; null for a stream. */
  readonly contactResistanceKPerW: number | null
  /** Factor on the stream's film; null for an iron. */
  readonly streamFactor: number | null
  /** null: not within the time allowed. */
  readonly wettedAtS: number | null
  /** Wetting + 2 s, or the time allowed. */
  readonly toolOffS: number
  readonly result: HeatJointResult | HeatSolderSleeveResult
}

/** Kinds of finding. never-wets: not in time even at the favourable end; only-favourable-wets; unfavourable-does-not-wet: nominal does; wets-late: at every end, but late at one or more; wets: at both ends in good time. limit-passed, limit-kept: the insulation's limit. tube-limit-passed: the tube's short-time limit, before the joint is wetted. */
export type HeatCode =
  | 'never-wets'
  | 'only-favourable-wets'
  | 'unfavourable-does-not-wet'
  | 'wets-late'
  | 'wets'
  | 'limit-passed'
  | 'limit-kept'
  | 'tube-limit-passed'

/** One finding: its code, verdict and values. */
export interface HeatFinding {
  readonly code: HeatCode
  readonly verdict: HeatJudgement
  readonly values: Readonly<Record<string, number | string | null>>
}

/** A remedy for the hand, and its gain. */
export interface HeatMove {
  /** wet-tip: fresh solder bridges the whole flat; flux: removes the oxide; press: twice the force; nearer: the stream's favourable end. */
  readonly lever: 'wet-tip' | 'flux' | 'press' | 'nearer'
  readonly contactResistanceKPerW: number | null
  readonly streamFactor: number | null
  /** null: not in time even so. */
  readonly wettedAtS: number | null
  /** Time gained against the nominal joint; null if either does not wet in time. */
  readonly gainS: number | null
}

/** Input of the verdict: heatJoint's without the times, and a tube for a solder sleeve. */
export type HeatVerdictInput = Omit<HeatJointInput, 'toolOffS' | 'observeS' | 'sampleTimesS'> & {
  readonly tube?: SolderSleeveTube
  /** Status of each conductor's insulationLimitC. Default: published for a limit given, estimate for the table's short exposure limit. */
  readonly limitStatuses?: readonly ProvenanceStatus[]
  /** Status of the tube's shortLimitC; from memory by default. */
  readonly tubeLimitStatus?: ProvenanceStatus
  /** Width of the iron's flat; it bounds the contact. */
  readonly tipWidthMm?: number
  readonly contactFactor?: number
  readonly streamFactor?: number
  /** Factor on still-air films that are not given. */
  readonly filmFactor?: number
  /** Factor on the tube's grip, and spread of its recovery temperature. */
  readonly gripFactor?: number
  readonly recoverySpreadK?: number
}

/** Verdict on the heating of a joint, with its findings and remedies. */
export interface HeatVerdict {
  readonly verdict: HeatJudgement
  readonly ends: Readonly<Record<HeatEndName, HeatEnd>>
  /** Worst first. */
  readonly findings: readonly HeatFinding[]
  /** Empty if the joint is sound. */
  readonly moves: readonly HeatMove[]
}
