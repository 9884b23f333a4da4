/** What the plan took because the job does not say it. */
export interface PlanAssumption {
  readonly field: string
  readonly value: unknown
  readonly why: string
  readonly changesVerdict?: boolean
}
