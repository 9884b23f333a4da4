import type { Answers } from './answers.ts'
import type { PlanReply } from './planService.ts'
import type { FoundTexts, Proved } from './proveRepair.ts'

/** What the page asks of its worker. */
export type PlanRequest =
  | { readonly ask: 'plan'; readonly answers: Answers }
  | { readonly ask: 'example'; readonly name: string }
  | { readonly ask: 'fragment'; readonly fragment: string }
  | { readonly ask: 'file'; readonly text: string }
  | { readonly ask: 'job'; readonly answers: Answers }
  | { readonly ask: 'link'; readonly answers: Answers }
  | { readonly ask: 'prove'; readonly answers: Answers; readonly found: FoundTexts }
  | { readonly ask: 'working'; readonly id: string; readonly inputs: Readonly<Record<string, unknown>> }

/** What comes back to each. */
export interface PlanReplies {
  readonly plan: PlanReply
  readonly example: Answers
  readonly fragment: Answers
  readonly file: Answers
  readonly job: { readonly text: string; readonly title: string | undefined } | null
  readonly link: string | null
  readonly working: string
  /** Null where there is no whole job. */
  readonly prove: Proved | null
}

/** A value; or a sentence for the person who opened a link or a file; or what went wrong. */
export type PlanResult = { readonly value: unknown } | { readonly refused: string } | { readonly failed: string }
