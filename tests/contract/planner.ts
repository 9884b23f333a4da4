import type { RepairJob } from './job.ts'
import type { Interval, ProofVerdict } from './names.ts'
import type { AuditResult, CauseId, PlacedReading, RepairPlan } from './plan.ts'

// The public contract: The package planner.

export interface Planner {
  readonly repairJobSchema: unknown
  readonly demoJobs: Readonly<Record<string, RepairJob>>
  planRepair(job: RepairJob): RepairPlan
  reportMarkdown(plan: RepairPlan): string
  reportHtml(plan: RepairPlan): string
  auditRow(row: unknown, line: number): AuditResult
  auditStream(rows: AsyncIterable<unknown> | Iterable<unknown>): AsyncIterable<AuditResult>
}

export interface PlannerInDepth {
  parseRepairJob(input: unknown): RepairJob
  rankCauses(
    job: RepairJob,
    options?: { readonly coverage?: number },
  ): {
    readonly causes: readonly {
      readonly id: CauseId
      readonly logLikelihood: number
      readonly tiedWith: readonly CauseId[]
      readonly predicted: readonly PlacedReading[]
    }[]
    readonly leading: readonly CauseId[]
    readonly next: { readonly probe: Omit<PlacedReading, 'low' | 'high'>; readonly expected: Readonly<Partial<Record<CauseId, Interval>>> } | null
  }
  verifyRepair(
    job: RepairJob,
    found: {
      readonly date: string
      readonly readings: readonly PlacedReading[]
      readonly tugN?: number
      readonly samplePullN?: number
      readonly riseK?: { readonly jointK: number; readonly wireK: number; readonly afterS: number }
      readonly visual?: Readonly<Record<string, boolean>>
    },
  ): {
    readonly verdict: 'proven' | 'not proven' | 'failed'
    readonly checks: readonly {
      readonly id: string
      readonly verdict: ProofVerdict
      readonly low?: number
      readonly high?: number
      readonly limit: number
      readonly unit: string
    }[]
    readonly record: Readonly<Record<string, unknown>>
  }
  readonly repairJobJsonSchema: Readonly<Record<string, unknown>>
  migrateJob(input: unknown): unknown
}
