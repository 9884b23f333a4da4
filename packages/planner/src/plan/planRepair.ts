import type { Provenance } from '@strandwise/core'
import { jobFacts } from '../facts/jobFacts.ts'
import { parseRepairJob } from '../job/parseRepairJob.ts'
import type { RepairJob } from '../job/repairJob.ts'
import { cautionsFor, generalCautions, localCodes } from './cautions.ts'
import { changingAssumptions } from './changingAssumptions.ts'
import { planFrom } from './planFrom.ts'
import { type PlanSection, type RepairPlan, sectionIds } from './repairPlan.ts'
import { SectionDraft } from './sectionDraft.ts'
import { type Stop, stopList } from './stopList.ts'
import { worst } from './verdict.ts'

/**
 * The plan of a repair, in nine sections, from a job in its fixed units; the verdict is the worst section's.
 *
 * @throws JobError where the job is not one that parseRepairJob would return
 * @example
 * planRepair(trailerTailLamp) // { version: 1, verdict: 'sound' }
 */
export function planRepair(job: RepairJob): RepairPlan {
  const checked = parseRepairJob(job)
  const stops = stopList(checked)
  if (stops.some((stop) => stop.verdict === 'refused')) return refusal(stops)
  return fullPlan(checked, stops)
}

/** Nothing is computed for a circuit that this plan must not touch: each section says so. */
function refusal(stops: readonly Stop[]): RepairPlan {
  const [first] = sectionIds
  const sections = sectionIds.map((id): PlanSection => {
    const draft = new SectionDraft(id)
    if (id !== first) return draft.say('refused', 'Not planned: the stop list ends it.').done()
    for (const stop of stops) draft.say('refused', stop.text, stop.source)
    return draft.done()
  })
  return {
    version: 1,
    verdict: 'refused',
    cautions: [...stops.map((stop) => stop.text), ...generalCautions, localCodes],
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
  const assumptions = changingAssumptions(facts, plan.assumptions, plan.sections, verdict)
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
