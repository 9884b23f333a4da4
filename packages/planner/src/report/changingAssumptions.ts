import { type JobFacts, jobFacts, type PlanSection, type PlanVerdict, type SectionId, worst } from '../facts/inner.ts'
import type { PlanAssumption, RepairJob } from '../job/index.ts'
import { contradictions } from '../job/inner.ts'
import { judgeWire, methodSection, strainSection } from '../ways/inner.ts'
import type { WorkedOut } from './workOut.ts'

/** Hotter air than most plans assume: an engine space or a roof in the sun. */
const hotPlaceC = 65
/** A few loaded wires in a bundle, and its diameter: four equal ones, across two diagonals. */
const fewWires = 4
const fewWiresAcross = 1 + Math.SQRT2

interface Otherwise {
  readonly job: (job: RepairJob, facts: JobFacts) => RepairJob
  /** Sections of the chosen way that the field affects. */
  readonly acts: readonly SectionId[]
}

/** Alternative values of an assumed field, and the parts of the plan they affect. */
const otherwise: Readonly<Record<string, Otherwise>> = {
  'surroundings.flexes': { job: (job) => ({ ...job, surroundings: { ...job.surroundings, flexes: true } }), acts: ['method', 'strain-relief'] },
  'surroundings.flammableVapour': { job: (job) => ({ ...job, surroundings: { ...job.surroundings, flammableVapour: true } }), acts: ['method'] },
  'surroundings.hottestC': {
    job: (job, facts) => ({ ...job, surroundings: { ...job.surroundings, hottestC: Math.max(hotPlaceC, facts.ambientC) } }),
    acts: ['wire-and-protection'],
  },
  'wire.material': { job: (job) => ({ ...job, wire: { ...job.wire, material: 'copper-clad-aluminium' } }), acts: ['wire-and-protection'] },
  'wire.loadedInBundle': {
    job: (job, facts) => ({ ...job, wire: { ...job.wire, loadedInBundle: fewWires, bundleOutsideMm: fewWiresAcross * facts.outsideMm } }),
    acts: ['wire-and-protection'],
  },
}

/** Marks assumptions whose alternatives would change the plan's verdict. */
export function changingAssumptions({ assumptions, deciding }: WorkedOut, verdict: PlanVerdict): readonly PlanAssumption[] {
  const { way } = deciding.decided
  if (way === null) return assumptions
  return assumptions.map((item) => {
    const other = Object.hasOwn(otherwise, item.field) ? otherwise[item.field] : undefined
    if (other === undefined) return item
    const job = other.job(way.facts.job, way.facts)
    // An alternative that makes the job contradictory would get it refused.
    if (contradictions(job).length > 0) return { ...item, changesVerdict: true }
    const changed = jobFacts(job)
    const again: Readonly<Partial<Record<SectionId, () => PlanSection>>> = {
      method: () => methodSection(changed, way.method).section,
      'strain-relief': () => strainSection(changed, way.method),
      'wire-and-protection': () => judgeWire(changed).section,
    }
    const verdicts = way.sections.map((section) => (other.acts.includes(section.id) ? (again[section.id]?.() ?? section) : section).verdict)
    return worst(...verdicts) === worst(...way.sections.map((section) => section.verdict)) || verdict === 'cannot tell'
      ? item
      : { ...item, changesVerdict: true }
  })
}
