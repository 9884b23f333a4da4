import type { SectionId } from './context.ts'
import type { Place, ReadingKind } from './job.ts'
import type { InsulationName, MetalName, Provenance } from './names.ts'

// The public contract: A repair plan, an audit.

export type PlanVerdict = 'sound' | 'caution' | 'cannot tell' | 'unsound' | 'refused'

export interface PlanValue {
  readonly name: string
  readonly value: number
  readonly unit: string
  readonly low?: number
  readonly high?: number
  readonly provenance: Provenance
}

export interface RepairPlan {
  readonly version: 1
  readonly verdict: PlanVerdict
  readonly cautions: readonly string[]
  readonly sections: readonly {
    readonly id: SectionId
    readonly title: string
    readonly verdict: PlanVerdict
    readonly values: readonly PlanValue[]
    readonly reasons: readonly string[]
    readonly workings: readonly { readonly id: string; readonly inputs: Readonly<Record<string, unknown>> }[]
    readonly sources: readonly Provenance[]
  }[]
  readonly assumptions: readonly { readonly field: string; readonly value: unknown; readonly why: string; readonly changesVerdict?: boolean }[]
  readonly options: readonly {
    readonly of: 'method' | 'tool' | 'sleeve' | 'barrel'
    readonly name: string
    readonly verdict: PlanVerdict
    readonly reasons: readonly string[]
  }[]
  readonly sequence: readonly { readonly text: string; readonly values: readonly PlanValue[]; readonly check: string }[]
  readonly parts: readonly { readonly name: string; readonly quantity: number; readonly unit: string }[]
  readonly tables: readonly Provenance[]
}

export interface AuditRow {
  readonly name: string
  readonly areaMm2?: number
  readonly size?: string
  readonly material?: MetalName
  readonly insulation: InsulationName
  readonly insulationThicknessMm?: number
  readonly outLengthM: number
  readonly returnLengthM?: number
  readonly currentA: number
  readonly supplyV: number
  readonly allowedDropV?: number
  readonly ambientC: number
  readonly loadedInBundle?: number
  readonly limitC?: number
  readonly fuseA?: number
  readonly fuseSeries?: 'ISO 8820-3'
}

export type AuditResult =
  | {
      readonly line: number
      readonly name: string
      readonly verdict: PlanVerdict
      readonly conductorLowC: number | null
      readonly conductorHighC: number | null
      readonly allowedA: number | null
      readonly dropV: number | null
      readonly dropShare: number | null
      readonly fuseVerdict: PlanVerdict | null
      readonly reasons: readonly string[]
    }
  | { readonly line: number; readonly error: { readonly field: string; readonly value: unknown; readonly allowed: string } }

export interface PlacedReading {
  readonly kind: ReadingKind
  readonly from: Place
  readonly to: Place
  readonly load: 'on' | 'off'
  readonly when?: 'still' | 'moved'
  readonly low: number
  readonly high: number
}

export type CauseId =
  | 'open-lead'
  | 'high-resistance-pin'
  | 'corroded-strands'
  | 'overloaded-terminal'
  | 'lost-spring-force'
  | 'bad-return'
  | 'weak-supply'
  | 'load-failed'
  | 'load-stalled'
  | 'coil-open'
  | 'coil-short'
  | 'short-to-circuit'
  | 'dry-joint'
  | 'fracture-in-contact'
  | 'water-in-run'
