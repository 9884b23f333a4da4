import type { AuditResult } from '@strandwise/planner/audit'
import type { Choice, Kind } from './judgedList.ts'

/** Most rows that a page of this browser holds. */
export const mostRows = 1_000_000

/** Requests of the page to the worker of a list. */
export type AuditRequest =
  | { readonly ask: 'judge'; readonly source: Blob }
  | { readonly ask: 'rows'; readonly id: number; readonly choice: Choice; readonly from: number; readonly count: number }
  | { readonly ask: 'csv'; readonly id: number; readonly choice: Choice | null }

/** What a list came to. */
export interface Judged {
  readonly counts: Readonly<Record<Kind, number>>
  readonly rows: number
  readonly unused: readonly string[]
}

/** Rows of one page of the table, and how many there are in all. */
export interface Rows {
  readonly rows: readonly AuditResult[]
  readonly of: number
}

/** Replies of the worker; "judging" tells the rows judged so far. */
export type AuditReply =
  | { readonly told: 'judging'; readonly rows: number }
  | { readonly told: 'judged'; readonly judged: Judged }
  | { readonly told: 'refused'; readonly lines: readonly string[] }
  | { readonly told: 'rows'; readonly id: number; readonly page: Rows }
  | { readonly told: 'csv'; readonly id: number; readonly text: Blob }
