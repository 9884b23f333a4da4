import { readingInterval } from '@strandwise/core'
import { circuitInput, meterInputs, placedReading, takenReadings } from '../circuit/inner.ts'
import type { Finding, PlanSection } from '../facts/index.ts'
import { type JobFacts, jobFacts, SectionDraft } from '../facts/inner.ts'
import { type PlanAssumption, parseRepairJob, type RepairJob } from '../job/index.ts'
import { diagnosisAssumptions } from './assumptions.ts'
import { defaultCoverage, leadingFrom } from './causes/rankFrom.ts'
import { proofFrom } from './diagnosisFrom.ts'
import type { Diagnosis } from './diagnosisShapes.ts'
import { listedCauses, nextReading } from './nextReading.ts'
import { readingsWords } from './readingsWords.ts'
import { say } from './say.ts'

/** Heading of a finding, with its values filled in. */
function headed({ code, names }: Finding): string {
  const { says } = readingsWords[code as keyof typeof readingsWords]
  return says.replace(/\{(\w+)\}/g, (_, name: string) => names?.[name] ?? '')
}

/** The diagnosis, its section and its assumptions, from computed facts. */
export function diagnosisOf(facts: JobFacts): {
  readonly diagnosis: Diagnosis
  readonly section: PlanSection
  readonly assumptions: readonly PlanAssumption[]
} {
  const { units } = facts
  const placed = (facts.job.readings ?? []).map(placedReading)
  const proof = proofFrom(circuitInput(facts), units, placed)
  const ranking = leadingFrom(proof.chain, takenReadings(proof.chain, placed), defaultCoverage)
  const next = nextReading(units, proof, ranking, placed)
  const diagnosis: Diagnosis = { ...proof.diagnosis, leading: ranking.leading, next }
  const draft = new SectionDraft('readings', readingsWords, units)
  const causes =
    placed.length === 0 || diagnosis.fault === 'none here' ? [] : [say(units, 'causes-leading', 'sound', { names: { causes: listedCauses(ranking.leading) } })]
  const findings = [...proof.summary, ...causes, ...(next === null ? [] : [next.finding]), ...diagnosis.answered.map(({ finding }) => finding)]
  for (const finding of findings) draft.add(finding, headed(finding))
  for (const [index, reading] of (facts.job.readings ?? []).entries()) {
    const inputs = meterInputs(reading)
    const { high } = readingInterval(inputs)
    const told = Object.values(diagnosis.answered[index]?.finding.values ?? {}).find((value) => value.high === high)
    draft.working('readingInterval', inputs, told?.name)
  }
  return { diagnosis, section: draft.done(), assumptions: diagnosisAssumptions(proof.chain, facts.job.readings ?? []) }
}

/**
 * Diagnosis of a job from its readings: stretch by stretch, the place of a proven fault, an answer to each reading, the likely causes and the next reading.
 *
 * @throws JobError where the job is not one that parseRepairJob would return
 * @example
 * diagnose(bilgePumpFeed) // { fault: 'proven', at: { from: 'joint-in', to: 'joint-out' } }
 */
export function diagnose(job: RepairJob): Diagnosis {
  return diagnosisOf(jobFacts(parseRepairJob(job))).diagnosis
}
