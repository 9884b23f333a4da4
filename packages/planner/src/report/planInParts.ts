import { cautionRules, type PracticeRule, type Provenance, type RuleFacts } from '@strandwise/core'
import type { Diagnosis } from '../diagnosis/index.ts'
import { type Finding, type PlanOption, type PlanSection, type PlanVerdict, worst } from '../facts/inner.ts'
import { parseRepairJob, type RepairJob } from '../job/index.ts'
import { type MendedWithoutJoint, proofOf } from '../proof/inner.ts'
import type { JudgedWay } from '../ways/inner.ts'
import { partsFor, sequenceFor } from '../work/inner.ts'
import { cautionsFor, stopCautions } from './cautions.ts'
import { changingAssumptions } from './changingAssumptions.ts'
import type { PlanBeforeRules, RepairPlan } from './repairPlan.ts'
import { ruleFactsOf } from './ruleFacts.ts'
import { toldAmong } from './rulesTold.ts'
import { type WorkedOut, workOut } from './workOut.ts'

/** What the rules are told by: the topics of the plan and the facts of the job as decided. */
interface Ruled {
  readonly topics: readonly PracticeRule['decides'][]
  readonly facts: RuleFacts
}

/** A plan whose rules and pictures are still to be made, with the results that they are made from; null if the job is refused. */
export interface PlanInParts {
  readonly plan: PlanBeforeRules
  readonly worked: WorkedOut | null
  readonly ruled: Ruled | null
}

/**
 * The plan of a repair without its rules and pictures, for a page that shows the decision first and fetches the rest on request: see rulesTold, picturedJoint and picturedCurves.
 *
 * @throws JobError where the job is not one that parseRepairJob would return
 * @example
 * planInParts(trailerTailLamp) // { plan: { version: 2, verdict: 'sound' } }
 */
export function planInParts(job: RepairJob): PlanInParts {
  return planOf(parseRepairJob(job))
}

/** The plan of a parsed job in parts. */
function planOf(job: RepairJob): PlanInParts {
  const worked = workOut(job)
  if ('stops' in worked) return { plan: refusal(job, worked.stops), worked: null, ruled: null }
  return fullPlan(job, worked)
}

const nothingRead: Diagnosis = { stretches: [], fault: 'not shown', at: null, answered: [], leading: [], next: null }

function refusal(job: RepairJob, stops: readonly Finding[]): PlanBeforeRules {
  const [first] = stops
  return {
    version: 2,
    title: job.title ?? null,
    units: job.units ?? 'metric',
    decision: {
      kind: 'refused',
      method: null,
      says: first?.text ?? '',
      why: first as Finding,
      notAsMeant: null,
      wire: null,
      fuseA: null,
      lengths: [],
      before: [],
      doneWhen: [],
    },
    verdict: 'refused',
    cautions: stopCautions(stops, job.circuit.kind),
    diagnosis: nothingRead,
    sections: [],
    ways: [],
    assumptions: [],
    options: [],
    sequence: [],
    parts: [],
    tables: unique(stops.flatMap((stop) => stop.sources)),
  }
}

function fullPlan(job: RepairJob, worked: WorkedOut): PlanInParts {
  const { facts, diagnosis, readings, wire, ways, deciding } = worked
  const { decided, decision } = deciding
  const { way } = decided
  const to = way?.facts ?? facts
  const joint = way === null || way.limits === null ? null : { method: way.method, ...way.limits }
  const proof = proofOf(to, joint, way?.method === 'replace-the-run' ? 'run' : way === null ? withoutJoint(worked) : null)
  const own = way === null ? [wire.found.section] : way.advised()
  const sections: readonly PlanSection[] = [readings, ...own, proof.section]
  const verdict = verdictOf(worked, own)
  const work = { facts, diagnosis, wire, decided, decision }
  const limits = proof.section.values.filter(({ name }) => name === 'drop over the new joint, at most' || /^from \S+ to \S+$/.test(name))
  const shown = decided.kind === 'mend' || decided.kind === 'replace the run'
  const ruled = ruleFactsOf(to, way, decided.code === 'leave' || decided.code === 'data-pair' ? 'none' : way === null ? 'measuring' : 'joining')
  const plan: PlanBeforeRules = {
    version: 2,
    title: job.title ?? null,
    units: facts.units,
    decision: { ...decision, doneWhen: decided.kind === 'measure first' || decided.kind === 'leave it' ? [] : proof.doneWhen },
    verdict,
    cautions: cautionsFor(facts, decided, toldAmong('cautions', cautionRules, ruled)),
    diagnosis,
    sections,
    ways: shown && way !== null ? shownWays(ways, way) : [],
    assumptions: changingAssumptions(worked, verdict),
    options: [...wire.options, ...fuseOptions(worked), ...(way?.options ?? [])],
    sequence: sequenceFor(work, limits),
    parts: partsFor(work),
    tables: unique(sections.flatMap((section) => section.sources)),
  }
  return { plan, worked, ruled: { topics: ['cautions', ...sections.map(({ id }) => id)], facts: ruled } }
}

/** What is proven where nothing is joined. */
function withoutJoint({ diagnosis, deciding: { decided } }: WorkedOut): MendedWithoutJoint {
  const { at, stretches } = diagnosis
  const contacts: readonly string[] = ['fuse-contact', 'return-contact']
  const contact = contacts.includes(decided.code) && at !== null ? stretches.find(({ from, to }) => from === at.from && to === at.to) : undefined
  return { leak: decided.code === 'leak', contact: contact ?? null }
}

/** Verdict on the repair as decided: its state once the steps are done. */
function verdictOf({ deciding: { decided }, wire, facts }: WorkedOut, own: readonly PlanSection[]): PlanVerdict {
  if (decided.kind === 'measure first') return 'cannot tell'
  const judged = own.map(({ verdict }) => verdict)
  const least: PlanVerdict = facts.temporary || decided.code === 'data-pair' || decided.why.verdict === 'caution' ? 'caution' : 'sound'
  if (decided.code === 'data-pair') return worst(least, wire.found.section.verdict === 'unsound' ? 'unsound' : 'caution')
  return worst(least, ...judged)
}

function shownWays(ways: readonly JudgedWay[], chosen: JudgedWay): RepairPlan['ways'] {
  const sorted = [chosen, ...ways.filter((way) => way !== chosen)]
  return sorted.map((way) => {
    const { method, meant, verdict, decides, sections } = way
    return { method, meant, chosen: way === chosen, verdict, decides, sections: meant || way === chosen ? way.advised() : sections }
  })
}

function fuseOptions({ facts, deciding }: WorkedOut): readonly PlanOption[] {
  const given = facts.job.circuit.fuseA
  const { fuseA } = deciding.decision
  const options: PlanOption[] = []
  if (given !== undefined && given !== fuseA) options.push({ of: 'fuse', name: `${given} A`, verdict: 'unsound', reasons: ['as found'] })
  if (fuseA !== null) options.push({ of: 'fuse', name: `${fuseA} A`, verdict: 'sound', reasons: [given === fuseA ? 'as found' : 'to fit'] })
  return options
}

function unique(sources: readonly Provenance[]): readonly Provenance[] {
  return [...new Map(sources.map((source) => [`${source.source}|${source.clause ?? ''}|${source.status}`, source])).values()]
}
