import { demoJobs, planRepair, type RepairJob } from '@strandwise/planner'
import { type Answers, missingAnswers, trimmed } from '../../site/src/plan/answers.ts'
import { answersFrom } from '../../site/src/plan/answersFrom.ts'
import { planForm } from '../../site/src/plan/planForm.ts'
import { readJob } from '../../site/src/plan/readJob.ts'
import { measureOnce } from './measure.ts'
import type { Figure } from './report.ts'

/** The bundle that once packed for seconds. */
const loadedWires = 200
const wound = demoJobs['workshop-led-strip'] as RepairJob
const bundled: RepairJob = { ...wound, wire: { ...wound.wire, loadedInBundle: loadedWires, bundleOutsideMm: 60 } }
const jobs: Readonly<Record<string, RepairJob>> = { ...demoJobs, [`${loadedWires} loaded wires`]: bundled }

/** What the page does at a key besides writing into the form: the answers are kept as they stand and searched for what is missing. */
function atKey(answers: Answers): number {
  return JSON.stringify(trimmed(answers)).length + missingAnswers(planForm, answers).length
}

/** The longest median over every answer of every job, its last character typed again. */
function longest(work: (answers: Answers) => unknown): { readonly worst: number; readonly of: string; readonly answers: number } {
  let [worst, of, count] = [0, '', 0]
  for (const [name, job] of Object.entries(jobs)) {
    const answers = answersFrom(job)
    for (const [path, text] of Object.entries(answers)) {
      const typed = { ...answers, [path]: text.slice(0, -1) }
      const { medianMs } = measureOnce(() => [work(typed), work(answers)], 5)
      count += 1
      if (medianMs / 2 > worst) [worst, of] = [medianMs / 2, `${path} of ${name}`]
    }
  }
  return { worst, of, answers: count }
}

/** How long a key of the plan page may block it, and what its worker then does. */
export function keyStroke(): readonly Figure[] {
  const page = longest(atKey)
  const worker = longest(readJob)
  return [
    {
      what: `a key on the plan page without the browser's own work, longest of ${page.answers} answers`,
      value: page.worst,
      unit: 'ms',
      atMost: 50,
      note: page.of,
    },
    { what: 'reading and checking all answers, in its worker', value: worker.worst, unit: 'ms', note: worker.of },
    { what: `the plan with ${loadedWires} loaded wires, in its worker`, value: measureOnce(() => planRepair(bundled), 15).medianMs, unit: 'ms' },
  ]
}
