import type { SectionId } from '@strandwise/planner'
import type { Answers } from './answers.ts'
import type { PlanReply } from './planService.ts'
import type { FoundTexts, Proved } from './proveRepair.ts'

/** Requests of the page to its worker. */
export type PlanRequest =
  | { readonly ask: 'plan'; readonly answers: Answers }
  | { readonly ask: 'example'; readonly name: string }
  | { readonly ask: 'fragment'; readonly fragment: string }
  | { readonly ask: 'file'; readonly text: string }
  | { readonly ask: 'job'; readonly answers: Answers }
  | { readonly ask: 'link'; readonly answers: Answers }
  | { readonly ask: 'prove'; readonly answers: Answers; readonly found: FoundTexts }
  | { readonly ask: 'section'; readonly id: SectionId }
  | { readonly ask: 'working'; readonly id: string; readonly inputs: Readonly<Record<string, unknown>> }

/** Reply to each request. */
export interface PlanReplies {
  readonly plan: PlanReply
  readonly example: Answers
  readonly fragment: Answers
  readonly file: Answers
  readonly job: { readonly text: string; readonly title: string | undefined } | null
  readonly link: string | null
  readonly working: string
  /** Chart and rules of a section of the last plan; empty if there are none. */
  readonly section: string
  /** Null without a complete job. */
  readonly prove: Proved | null
}

/** A value, a message for the person who opened a link or a file, or an internal error. */
export type PlanResult = { readonly value: unknown } | { readonly refused: string } | { readonly failed: string }
