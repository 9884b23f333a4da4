import { type Chain, circuitInput, type PlacedReading, placedReading, sound, takenReadings } from '../circuit/inner.ts'
import type { Finding, PlanSection } from '../facts/index.ts'
import { type JobFacts, jobFacts, SectionDraft } from '../facts/inner.ts'
import { type PlanAssumption, parseRepairJob, type RepairJob } from '../job/index.ts'
import { defaultCoverage, rankFrom } from './causes/rankFrom.ts'
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

/** Limits of a sound circuit that decided something, as assumptions. */
function soundAssumptions({ input }: Chain, { fault }: Pick<Diagnosis, 'fault'>, placed: readonly PlacedReading[]): readonly PlanAssumption[] {
  if (fault === 'not shown' || placed.length === 0) return []
  const millimetres = ({ low, high }: { readonly low: number; readonly high: number }) => `${low} to ${high} mm of its wire`
  const { jointMm, contactMm, fuseV, lay, lengthShare } = sound
  return [
    { field: 'circuit.soundJoint', value: millimetres(jointMm), why: jointMm.source.source },
    { field: 'circuit.soundContact', value: millimetres(contactMm), why: contactMm.source.source },
    { field: 'circuit.soundFuse', value: `${fuseV.low} to ${fuseV.high} V${input.fuseA === null ? '' : ` at ${input.fuseA} A`}`, why: fuseV.source.source },
    {
      field: 'circuit.soundWire',
      value: `lay ${lay.low} to ${lay.high}, length within ${Math.round(100 * (lengthShare.high - 1))} %`,
      why: `${lay.source.source}; ${lengthShare.source.source}`,
    },
  ]
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
  const ranking = rankFrom(proof.chain, takenReadings(proof.chain, placed), placed, defaultCoverage)
  const next = nextReading(units, proof, ranking, placed)
  const diagnosis: Diagnosis = { ...proof.diagnosis, leading: ranking.leading, next }
  const draft = new SectionDraft('readings', readingsWords, units)
  const causes =
    placed.length === 0 || diagnosis.fault === 'none here' ? [] : [say(units, 'causes-leading', 'sound', { names: { causes: listedCauses(ranking.leading) } })]
  const findings = [...proof.summary, ...causes, ...(next === null ? [] : [next.finding]), ...diagnosis.answered.map(({ finding }) => finding)]
  for (const finding of findings) draft.add(finding, headed(finding))
  for (const { kind, value, percentOfReading, counts, resolution } of facts.job.readings ?? [])
    if (kind !== 'temperature' && percentOfReading !== undefined && counts !== undefined && resolution !== undefined)
      draft.working('readingInterval', { reading: value, percentOfReading, counts, resolution })
  return { diagnosis, section: draft.done(), assumptions: soundAssumptions(proof.chain, diagnosis, placed) }
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
