import { JobError, type RepairJob } from '@strandwise/planner/job'
import { formatQuantity } from '@strandwise/working/quantity'
import { type Answers, askedFields, unitOf } from './answers.ts'
import { answersFrom } from './answersFrom.ts'
import { jobFromFile } from './jobFile.ts'
import { planForm } from './planForm.ts'
import { type Problem, type ReadJob, readJob } from './readJob.ts'
import type { PlanInParts, PlanShown } from './showPlan.ts'
import { unitSystem } from './units.ts'

export interface NotedProblem extends Problem {
  readonly title: string
}

/** Notes under the fields, and the plan if there is one. */
export interface PlanReply {
  /** How each answer was read, by path. */
  readonly heard: Readonly<Record<string, string>>
  readonly problems: readonly NotedProblem[]
  /** Null if the answers make no plan; the page keeps the last one, marked as outdated. */
  readonly shown: PlanShown | null
  /** Error of a model for a job that passed the checks; none is known. */
  readonly trouble: string | null
}

const holderOf = (path: string): string => path.replace(/\.(low|high)$/, '')

function heardIn(read: ReadJob, answers: Answers): Readonly<Record<string, string>> {
  const system = unitSystem(answers.units)
  const heard = askedFields(planForm, answers).map(({ field, path }) => {
    const names = field.shape === 'interval' ? [`${path}.low`, `${path}.high`] : [path]
    const numbers = names.flatMap((name) => read.heard[name] ?? [])
    return [path, numbers.map((number) => formatQuantity(number.value, number.kind, { system })).join(' to ')] as const
  })
  // No echo for an answer read exactly as typed.
  const typed = (path: string, unit: string) => `${(answers[path] ?? '').trim()} ${unit}`
  const units = new Map(askedFields(planForm, answers).map((asked) => [asked.path, unitOf(asked, answers)]))
  return { ...Object.fromEntries(heard.filter(([path, words]) => words !== '' && words !== typed(path, units.get(path) ?? ''))), ...read.sizes }
}

let last: PlanInParts | null = null

/** The last plan, from which a section's chart and rules are made when it is opened. */
export const lastPlan = (): PlanInParts | null => last

/** Reads the answers, and plans if they make a job. */
export async function planAnswers(answers: Answers): Promise<PlanReply> {
  const read = readJob(answers)
  const titles = new Map(askedFields(planForm, answers).map((item) => [item.path, item.field.title]))
  const problems = read.problems.map((problem) => ({ ...problem, title: titles.get(holderOf(problem.path)) ?? problem.path }))
  const reply = { heard: heardIn(read, answers), problems, shown: null, trouble: null }
  const { showPlan, refusedByCircuit } = await import('./showPlan.ts')
  try {
    if (read.job === null) return { ...reply, shown: refusedByCircuit(read.typed.circuit) }
    const { shown, parts } = showPlan(read.job, answers)
    last = parts
    return { ...reply, shown }
  } catch (error) {
    if (error instanceof JobError) return reply
    // If a model refuses a checked job, the page keeps its plan, marked as outdated.
    return { ...reply, trouble: error instanceof Error ? error.message : String(error) }
  }
}

/** Answers of a demo job, or of a job from a link or file; what only they need is loaded here. */
export const answersOf = {
  example: async (name: string): Promise<Answers> => answersFrom((await import('@strandwise/planner/demo')).demoJobs[name]),
  fragment: async (fragment: string): Promise<Answers> => answersFrom((await import('./jobLink.ts')).jobFromFragment(fragment)),
  file: (text: string): Answers => answersFrom(jobFromFile(text)),
}

/** The job as typed, for a file; null if incomplete. */
export function jobOf(answers: Answers): { readonly job: RepairJob; readonly text: string; readonly title: string | undefined } | null {
  const { job, typed } = readJob(answers)
  return job === null ? null : { job, text: `${JSON.stringify(typed, null, 2)}\n`, title: job.title }
}

/** The job as typed, as the fragment of a link; null if incomplete. */
export async function linkOf(answers: Answers): Promise<string | null> {
  const { job, typed } = readJob(answers)
  return job === null ? null : (await import('./jobLink.ts')).jobToFragment(typed)
}
