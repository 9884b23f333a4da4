/** A default that the plan used for a field left out of the job. */
export interface PlanAssumption {
  readonly field: string
  readonly value: unknown
  readonly why: string
  readonly changesVerdict?: boolean
}
