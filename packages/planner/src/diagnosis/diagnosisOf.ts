import { circuitInput, type PlacedReading, placedReading } from '../circuit/inner.ts'
import type { PlanSection } from '../facts/index.ts'
import { type JobFacts, jobFacts, SectionDraft, type Units } from '../facts/inner.ts'
import { parseRepairJob, type RepairJob } from '../job/index.ts'
import { type Proof, proofFrom } from './diagnosisFrom.ts'
import type { Diagnosis } from './diagnosisShapes.ts'
import { readingsWords } from './readingsWords.ts'

const unitsOf = (facts: JobFacts): Units => facts.job.units ?? 'metric'
const placedOf = (facts: JobFacts): readonly PlacedReading[] => (facts.job.readings ?? []).map(placedReading)

/** The heading of a finding: its code's, with its words in place. */
function headed(finding: Proof['summary'][number]): string {
  const { says } = readingsWords[finding.code as keyof typeof readingsWords]
  return says.replace(/\{(\w+)\}/g, (_, name: string) => finding.names?.[name] ?? '')
}

/** The diagnosis and its section, from facts that are already computed. */
export function diagnosisOf(facts: JobFacts): {
  readonly diagnosis: Diagnosis
  readonly section: PlanSection
} {
  const { diagnosis, summary } = proofFrom(circuitInput(facts), unitsOf(facts), placedOf(facts))
  const draft = new SectionDraft('readings', readingsWords, unitsOf(facts))
  for (const finding of [...summary, ...diagnosis.answered.map(({ finding }) => finding)]) draft.add(finding, headed(finding))
  return {
    diagnosis: { ...diagnosis, leading: [], next: null },
    section: draft.done(),
  }
}

/**
 * What the readings of a job show: stretch by stretch, where a fault is proven, and an answer to each reading.
 *
 * @throws JobError where the job is not one that parseRepairJob would return
 * @example
 * diagnose(bilgePumpFeed) // { fault: 'proven', at: { from: 'joint-in', to: 'joint-out' } }
 */
export function diagnose(job: RepairJob): Diagnosis {
  return diagnosisOf(jobFacts(parseRepairJob(job))).diagnosis
}
