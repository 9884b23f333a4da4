import { JobError, type RepairJob } from '@strandwise/planner/job'
import { planWithPictures } from '@strandwise/planner/picture'
import { planRepair, type RepairPlan } from '@strandwise/planner/report'
import type { Answers } from './answers.ts'
import { cardFacts } from './cardFacts.ts'
import { assumptionsByGroup } from './view/assumptions.ts'
import { type DrawnPlan, decidedDrawings, sectionCharts, undrawn } from './view/drawings.ts'
import { type JobCard, jobCard } from './view/jobCard.ts'
import { type PlanBlock, planBlocks } from './view/planBlocks.ts'

/** A plan for the page: markup by blocks, and text of the status bar. */
export interface PlanShown {
  readonly verdict: RepairPlan['verdict']
  readonly kind: RepairPlan['decision']['kind']
  readonly blocks: readonly PlanBlock[]
  /** Markup of the assumptions, by the form group whose answer would replace them. */
  readonly assumed: Readonly<Record<string, string>>
  readonly card: JobCard
  readonly workings: readonly { readonly key: string; readonly id: string; readonly inputs: Readonly<Record<string, unknown>> }[]
}

const shownOf = (plan: RepairPlan, drawn: DrawnPlan, answers: Answers): PlanShown => ({
  verdict: plan.verdict,
  kind: plan.decision.kind,
  blocks: planBlocks(plan, drawn),
  assumed: assumptionsByGroup(plan, answers),
  card: jobCard(plan, cardFacts(answers), drawn),
  workings: plan.sections.flatMap((section) => section.workings.map((working, index) => ({ key: `${section.id}.${index}`, ...working }))),
})

/** The plan of a job with its drawings, in one pass. */
export function showPlan(job: RepairJob, answers: Answers): PlanShown {
  const { plan, pictures } = planWithPictures(job)
  return shownOf(plan, { drawings: decidedDrawings(pictures?.joint ?? null, job.damage), charts: sectionCharts(pictures) }, answers)
}

/** The plan of a refused circuit. The stop list reads only `circuit`; the rest of the job is ignored. Null if not refused. */
export function refusedByCircuit(circuit: unknown, rest: RepairJob): PlanShown | null {
  try {
    const plan = planRepair({ ...rest, circuit: circuit as RepairJob['circuit'] })
    return plan.decision.kind === 'refused' ? shownOf(plan, undrawn, {}) : null
  } catch (error) {
    if (!(error instanceof JobError)) throw error
    return null
  }
}
