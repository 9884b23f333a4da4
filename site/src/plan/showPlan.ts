import { JobError, type RepairJob } from '@strandwise/planner/job'
import { picturedJoint } from '@strandwise/planner/picture'
import { type PlanBeforeRules, type PlanInParts, planInParts } from '@strandwise/planner/report'
import type { Answers } from './answers.ts'
import { cardFacts } from './cardFacts.ts'
import { assumptionsByGroup } from './view/assumptions.ts'
import { type Drawn, decidedDrawings } from './view/drawings.ts'
import { type JobCard, jobCard } from './view/jobCard.ts'
import { type PlanBlock, planBlocks } from './view/planBlocks.ts'

export type { PlanInParts } from '@strandwise/planner/report'

/** A plan for the page: markup by blocks, and text of the status bar. */
export interface PlanShown {
  readonly verdict: PlanBeforeRules['verdict']
  readonly kind: PlanBeforeRules['decision']['kind']
  readonly blocks: readonly PlanBlock[]
  /** Markup of the assumptions, by the form group whose answer would replace them. */
  readonly assumed: Readonly<Record<string, string>>
  readonly card: JobCard
  readonly workings: readonly { readonly key: string; readonly id: string; readonly inputs: Readonly<Record<string, unknown>> }[]
}

const shownOf = (plan: PlanBeforeRules, drawn: readonly Drawn[], answers: Answers): PlanShown => ({
  verdict: plan.verdict,
  kind: plan.decision.kind,
  blocks: planBlocks(plan, drawn),
  assumed: assumptionsByGroup(plan, answers),
  card: jobCard(plan, cardFacts(answers), drawn),
  workings: plan.sections.flatMap((section) => section.workings.map((working, index) => ({ key: `${section.id}.${index}`, ...working }))),
})

/** The plan of a job with its drawings, and the parts from which charts and rules are made on request. */
export function showPlan(job: RepairJob, answers: Answers): { readonly shown: PlanShown; readonly parts: PlanInParts } {
  const parts = planInParts(job)
  return { shown: shownOf(parts.plan, decidedDrawings(picturedJoint(parts), job.damage), answers), parts }
}

/** Stands for the answers still missing: the stop list reads only `circuit`. */
const anyRest = {
  version: 1,
  load: { currentA: 1 },
  wire: { areaMm2: 1, insulation: 'PVC', outLengthM: 1 },
  damage: { kind: 'broken', fromTerminationMm: 500 },
} as const

/** The plan of a refused circuit, whatever else is still unanswered; null if not refused. */
export function refusedByCircuit(circuit: unknown): PlanShown | null {
  try {
    const { plan } = planInParts({ ...anyRest, circuit: circuit as RepairJob['circuit'] })
    return plan.decision.kind === 'refused' ? shownOf(plan, [], {}) : null
  } catch (error) {
    if (!(error instanceof JobError)) throw error
    return null
  }
}
