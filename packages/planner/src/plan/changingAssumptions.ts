import { type JobFacts, jobFacts } from '../facts/jobFacts.ts'
import { contradictions } from '../job/contradictions.ts'
import type { RepairJob } from '../job/repairJob.ts'
import { jointSection } from './jointSection.ts'
import { chooseMethod, methodSection } from './methodSection.ts'
import type { PlanAssumption, PlanSection, PlanVerdict, SectionId } from './repairPlan.ts'
import { strainSection } from './strainSection.ts'
import { worst } from './verdict.ts'
import { wireSection } from './wireSection.ts'

/** Hotter air than most plans assume: an engine space or a roof in the sun. */
const hotPlaceC = 65
/** A few loaded wires tied together, and how thick they lie: four equal ones across two diagonals. */
const fewWires = 4
const fewWiresAcross = 1 + Math.SQRT2

interface Otherwise {
  readonly job: (job: RepairJob, facts: JobFacts) => RepairJob
  /** The sections that the field acts on, again. */
  readonly sections: (facts: JobFacts) => readonly PlanSection[]
}

const methodOf = (facts: JobFacts) => chooseMethod(facts)

/** What else an assumed field could well be, and what of the plan it acts on. */
const otherwise: Readonly<Record<string, Otherwise>> = {
  'surroundings.flexes': {
    job: (job) => ({ ...job, surroundings: { ...job.surroundings, flexes: true } }),
    sections: (facts) => [methodSection(facts, methodOf(facts)), strainSection(facts, methodOf(facts).considered)],
  },
  'surroundings.flammableVapour': {
    job: (job) => ({ ...job, surroundings: { ...job.surroundings, flammableVapour: true } }),
    sections: (facts) => [methodSection(facts, methodOf(facts))],
  },
  'surroundings.hottestC': {
    job: (job, facts) => ({ ...job, surroundings: { ...job.surroundings, hottestC: Math.max(hotPlaceC, facts.ambientC) } }),
    sections: (facts) => [wireSection(facts), jointSection(facts, methodOf(facts))],
  },
  'wire.material': {
    job: (job) => ({ ...job, wire: { ...job.wire, material: 'copper-clad-aluminium' } }),
    sections: (facts) => [wireSection(facts)],
  },
  'wire.loadedInBundle': {
    job: (job, facts) => ({ ...job, wire: { ...job.wire, loadedInBundle: fewWires, bundleOutsideMm: fewWiresAcross * facts.outsideMm } }),
    sections: (facts) => [wireSection(facts)],
  },
}

/** Marks the assumptions which, if known better, would change the plan's verdict. */
export function changingAssumptions(
  facts: JobFacts,
  assumptions: readonly PlanAssumption[],
  sections: readonly PlanSection[],
  verdict: PlanVerdict,
): readonly PlanAssumption[] {
  return assumptions.map((item) => {
    const other = Object.hasOwn(otherwise, item.field) ? otherwise[item.field] : undefined
    if (other === undefined) return item
    const job = other.job(facts.job, facts)
    // What no job can be, such as a load that gets its power no more, the plan would refuse.
    if (contradictions(job).length > 0) return { ...item, changesVerdict: true }
    const replaced = new Map<SectionId, PlanVerdict>(other.sections(jobFacts(job)).map((section) => [section.id, section.verdict]))
    return worst(...sections.map((section) => replaced.get(section.id) ?? section.verdict)) === verdict ? item : { ...item, changesVerdict: true }
  })
}
