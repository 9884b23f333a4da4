import { type Deciding, decide, stopList } from '../decision/inner.ts'
import type { Diagnosis } from '../diagnosis/index.ts'
import { diagnosisOf } from '../diagnosis/inner.ts'
import { type Finding, type JobFacts, jobFacts, type PlanSection } from '../facts/inner.ts'
import type { PlanAssumption, RepairJob } from '../job/index.ts'
import type { Assume } from '../job/inner.ts'
import { chooseWire, type JudgedWay, judgeWays, type WireChoice } from '../ways/inner.ts'

/** Intermediate results of a job, the source of both plan and pictures. */
export interface WorkedOut {
  readonly facts: JobFacts
  readonly assumptions: readonly PlanAssumption[]
  readonly diagnosis: Diagnosis
  readonly readings: PlanSection
  readonly wire: WireChoice
  /** Empty if nothing is joined. */
  readonly ways: readonly JudgedWay[]
  readonly deciding: Deciding
}

/** Facts, diagnosis, ways and decision of a parsed job; or the reasons to refuse it. */
export function workOut(job: RepairJob): WorkedOut | { readonly stops: readonly Finding[] } {
  const stops = stopList(job)
  if (stops.length > 0) return { stops }
  const facts = jobFacts(job)
  const assumptions: PlanAssumption[] = [...facts.assumptions]
  const assume: Assume = (field, given, value, why) => {
    if (given !== undefined) return given
    if (!assumptions.some((item) => item.field === field)) assumptions.push({ field, value, why })
    return value
  }
  const { diagnosis, section, assumptions: taken } = diagnosisOf(facts)
  assumptions.push(...taken)
  const wire = chooseWire(facts)
  let judged: readonly JudgedWay[] = []
  const ways = () => {
    if (judged.length === 0) judged = judgeWays(facts, wire, assume)
    return judged
  }
  const waysAtTerminal = () => {
    const at = jobFacts({ ...job, damage: { ...job.damage, fromTerminationMm: 0 } })
    judged = judgeWays(at, chooseWire(at), assume)
    return judged
  }
  const deciding = decide({ facts, diagnosis, readings: section, wire, ways, waysAtTerminal })
  return { facts, assumptions, diagnosis, readings: section, wire, ways: judged, deciding }
}
