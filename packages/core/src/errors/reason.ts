/** Reason of a verdict: a stable code with its values; planner and site write the text. */
export interface Reason {
  readonly code: string
  readonly parameter?: string
  readonly value?: number
  readonly limit?: number
}
