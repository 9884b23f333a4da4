import type { Provenance } from '@strandwise/core'
import { type Assume, type JobFacts, jobFacts } from '../facts/jobFacts.ts'
import { parseRepairJob } from '../job/parseRepairJob.ts'
import type { RepairJob } from '../job/repairJob.ts'
import { cautionsFor } from './cautions.ts'
import { changingAssumptions } from './changingAssumptions.ts'
import { coveringSection } from './coveringSection.ts'
import { cutBackSection } from './cutBackSection.ts'
import { heatingSection } from './heatingSection.ts'
import { jointSection } from './jointSection.ts'
import { chooseMethod, methodSection } from './methodSection.ts'
import { proofSection } from './proofSection.ts'
import { readingsSection } from './readingsSection.ts'
import { type PlanAssumption, type PlanSection, type PlanVerdict, type RepairPlan, sectionIds } from './repairPlan.ts'
import { SectionDraft } from './sectionDraft.ts'
import { partsFor, sequenceFor } from './sequence.ts'
import { type Stop, stopList } from './stopList.ts'
import { strainSection } from './strainSection.ts'
import { worst } from './verdict.ts'
import { wireSection } from './wireSection.ts'

/**
 * The plan of a repair, in nine sections, from a job in its fixed units; the verdict is the worst section's.
 *
 * @throws JobError where the job is not one that parseRepairJob would return
 */
export function planRepair(job: RepairJob): RepairPlan {
  const checked = parseRepairJob(job)
  const stops = stopList(checked)
  if (stops.some((stop) => stop.verdict === 'refused')) return refusal(stops)
  return fullPlan(checked, stops)
}

/** Nothing is computed for a circuit that this plan must not touch: each section says so. */
function refusal(stops: readonly Stop[]): RepairPlan {
  const sections = sectionIds.map((id): PlanSection => {
    const draft = new SectionDraft(id)
    for (const stop of stops) draft.say('refused', stop.text, stop.source)
    return draft.done()
  })
  return {
    version: 1,
    verdict: 'refused',
    cautions: [...stops.map((stop) => stop.text), 'Local codes and licensed practice come before this plan.'],
    sections,
    assumptions: [],
    options: [],
    sequence: [],
    parts: [],
    tables: unique(stops.map((stop) => stop.source)),
  }
}

function fullPlan(job: RepairJob, stops: readonly Stop[]): RepairPlan {
  const facts = jobFacts(job)
  const { verdict, ...plan } = planFrom(facts)
  const cautions = [...stops.map((stop) => stop.text), ...cautionsFor(facts, plan.recommended)]
  const sections = stops.length === 0 ? plan.sections : plan.sections.map((section) => (section.id === 'method' ? withStops(section, stops) : section))
  const assumptions = changingAssumptions(job, plan.assumptions, verdict)
  return {
    version: 1,
    verdict: worst(verdict, ...stops.map((stop) => stop.verdict)),
    cautions,
    sections,
    assumptions,
    options: plan.options,
    sequence: plan.sequence,
    parts: plan.parts,
    tables: unique(sections.flatMap((section) => section.sources)),
  }
}

/** The sections of a plan and what follows from them; also run on the job with an assumption changed. */
export function planFrom(facts: JobFacts) {
  const assumptions: PlanAssumption[] = [...facts.assumptions]
  const assume: Assume = (field, given, value, why) => {
    if (given !== undefined) return given
    if (!assumptions.some((item) => item.field === field)) assumptions.push({ field, value, why })
    return value
  }
  const choice = chooseMethod(facts)
  const { considered, recommended } = choice
  const heating = heatingSection(facts, considered, assume)
  const covering = coveringSection(facts, considered)
  const sections: readonly PlanSection[] = [
    readingsSection(facts),
    wireSection(facts),
    cutBackSection(facts, considered),
    methodSection(facts, choice),
    jointSection(facts, considered),
    heating.section,
    covering.section,
    strainSection(facts, considered),
    proofSection(facts, considered),
  ]
  const same = recommended === considered
  const coveringDone = same ? covering : coveringSection(facts, recommended)
  const done = same ? sections : [cutBackSection(facts, recommended), strainSection(facts, recommended), proofSection(facts, recommended)]
  return {
    verdict: worst(...sections.map((section) => section.verdict)) as PlanVerdict,
    considered,
    recommended,
    sections,
    assumptions,
    options: [...choice.options, ...heating.options, ...covering.options],
    sequence: sequenceFor(facts, recommended, done, coveringDone),
    parts: partsFor(facts, recommended, coveringDone),
  }
}

function withStops(section: PlanSection, stops: readonly Stop[]): PlanSection {
  return {
    ...section,
    verdict: worst(section.verdict, ...stops.map((stop) => stop.verdict)),
    reasons: [...stops.map((stop) => stop.text), ...section.reasons],
    sources: unique([...stops.map((stop) => stop.source), ...section.sources]),
  }
}

function unique(sources: readonly Provenance[]): readonly Provenance[] {
  return [...new Map(sources.map((source) => [`${source.source}|${source.clause ?? ''}|${source.status}`, source])).values()]
}
