/** Why a verdict came out as it did: a stable code with its values; the words are the planner's and the site's. */
export interface Reason {
  readonly code: string
  readonly parameter?: string
  readonly value?: number
  readonly limit?: number
}
