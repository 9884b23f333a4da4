import type { MethodName } from '@strandwise/core'
import { bySeverity, type Finding, type JobFacts, type PlanSection, sectionIds, worst } from '../facts/inner.ts'
import type { Assume } from '../job/inner.ts'
import { judgeCovering } from './coveringSection.ts'
import { cutBackSection } from './cutBackSection.ts'
import { judgeHeat } from './heatingSection.ts'
import { type JointGround, jointGround } from './jointGround.ts'
import { jointSection } from './jointSection.ts'
import { type Assess, assessor, methodSection } from './methodSection.ts'
import { isSplice } from './methodTitles.ts'
import { strainSection } from './strainSection.ts'
import type { JudgedWay } from './way.ts'
import type { WireChoice } from './wireChoice.ts'
import { warmingA } from './wireJob.ts'

const methods: readonly MethodName[] = [
  'crimped-and-sealed-butt-splice',
  'crimped-butt-splice',
  'new-crimped-terminal',
  'soldered-lineman-splice',
  'soldered-lap',
  'solder-sleeve',
  'replace-the-run',
]

/** Criteria by which ways are ranked, in order; for each a lower number is better. */
export const rankNames = [
  'forbidden by a rule that binds',
  'unsafe',
  'unsound',
  'cannot be told',
  'something to fetch',
  'on conditions',
  'the whole run',
  'ends to make',
  'joints',
  'wire to put in',
  'conditions',
  'steps',
  'not what was meant',
] as const

/** Steps beyond stripping and joining, the last criterion. */
const stepsOf: Readonly<Record<MethodName, number>> = {
  'crimped-and-sealed-butt-splice': 3,
  'new-crimped-terminal': 3,
  'solder-sleeve': 3,
  'crimped-butt-splice': 4,
  'soldered-lap': 5,
  'soldered-lineman-splice': 6,
  'replace-the-run': 4,
}

/** All ways, best first, judged by the same checks. */
export function judgeWays(facts: JobFacts, wire: WireChoice, assume: Assume): readonly JudgedWay[] {
  const ground = jointGround(facts, warmingA(facts, wire.found.verdict))
  const assess = assessor(facts)
  return methods.map((method) => judgeWay({ found: facts, wire, ground, assess, assume }, method)).sort((one, other) => compareRanks(one.rank, other.rank))
}

export function compareRanks(one: readonly number[], other: readonly number[]): number {
  for (const [index, value] of one.entries()) {
    const difference = value - (other[index] ?? 0)
    if (difference !== 0) return difference
  }
  return 0
}

/** Caches the first result. */
function once<T extends object>(ask: () => T): () => T {
  let known: T | null = null
  return () => {
    known ??= ask()
    return known
  }
}

/** Common input of all ways. */
interface Bench {
  readonly found: JobFacts
  readonly wire: WireChoice
  readonly ground: JointGround
  readonly assess: Assess
  readonly assume: Assume
}

function judgeWay({ found, wire, ground, assess, assume }: Bench, method: MethodName): JudgedWay {
  const newRun = method === 'replace-the-run'
  // Only a new run uses other wire: a joint to the old wire is limited by the old wire.
  const facts = newRun ? wire.facts : found
  const judged = newRun ? wire.judged : wire.found
  const wireSection = method === 'new-crimped-terminal' || newRun ? terminalRenewed(judged.section) : judged.section
  const cut = cutBackSection(facts, method)
  const rules = methodSection(facts, method, facts === found ? assess : assessor(facts))
  const joint = jointSection(facts, method, ground)
  const heat = judgeHeat(facts, method, assume)
  const jointC = joint.section.values.find(({ unit }) => unit === '°C')?.value ?? null
  const covering = judgeCovering(facts, method, jointC)
  const strain = strainSection(facts, method)
  const sections = [wireSection, cut.section, rules.section, joint.section, heat.section(), covering.section, strain].sort(
    (one, other) => sectionIds.indexOf(one.id) - sectionIds.indexOf(other.id),
  )
  const verdict = worst(...sections.map((section) => section.verdict))
  const toFetch = [...rules.toFetch, ...heat.toFetch, ...covering.toFetch]
  const conditions = conditionsOf(sections, rules.section)
  const meant = found.job.intendedMethod === method
  const ends = newRun ? 2 : method === 'new-crimped-terminal' ? 2 + 2 * cut.cut.splices : 2 * cut.cut.splices
  const joints = newRun ? 2 : method === 'new-crimped-terminal' ? 1 + cut.cut.splices : cut.cut.splices
  const rank = [
    rules.forbidden === null ? 0 : 1,
    heat.against?.code === 'vapour' ? 1 : 0,
    verdict === 'unsound' ? 1 : 0,
    verdict === 'cannot tell' ? 1 : 0,
    toFetch.length > 0 ? 1 : 0,
    conditions > 0 ? 1 : 0,
    newRun ? 1 : 0,
    ends,
    joints,
    newRun ? 0 : cut.cut.insertMm,
    conditions,
    stepsOf[method],
    meant ? 0 : 1,
  ]
  const against = [rules.forbidden, heat.against, cut.against, covering.against].find((finding) => finding !== null) ?? null
  return {
    method,
    meant,
    facts,
    verdict,
    decides: decidesOf(method, against, sections),
    sections,
    advised: once(() => {
      heat.advise()
      const heated = heat.section()
      return sections.map((section) => (section.id === 'heating' ? heated : section))
    }),
    options: [...heat.options, ...covering.options],
    cut: cut.cut,
    limits: joint.limits,
    covering,
    heat: heat.best,
    heatAll: heat.all,
    toFetch,
    rank,
  }
}

/** Number of unmet conditions, each once, plus other sections with a caution; the wire's is the same for all. */
function conditionsOf(sections: readonly PlanSection[], rules: PlanSection): number {
  const conditions = new Set(
    rules.findings
      .filter(({ verdict, code }) => verdict === 'caution' && code !== 'fetch-tool' && code !== 'fetch-way')
      .map(({ code, names }) => names?.changesIf ?? code),
  )
  const others = sections.filter(({ id, verdict }) => id !== 'method' && id !== 'wire-and-protection' && verdict === 'caution')
  return conditions.size + others.length
}

/** The deciding finding: the one against the way, else its worst, else one in favour. */
function decidesOf(method: MethodName, against: Finding | null, sections: readonly PlanSection[]): Finding {
  const order = isSplice(method) ? ['heating', 'cut-back', 'method', 'joint', 'covering'] : ['method', 'cut-back', 'joint', 'covering', 'heating']
  const findings = sections
    .toSorted((one, other) => order.indexOf(one.id) - order.indexOf(other.id))
    .flatMap((section) => (order.includes(section.id) ? section.findings : []))
    .toSorted((one, other) => bySeverity(one.verdict, other.verdict))
  const [worstOne] = findings
  const rules = sections.find(({ id }) => id === 'method')?.findings[0]
  const wire = sections.find(({ id }) => id === 'wire-and-protection')?.findings[0]
  if (against !== null) return against
  if (worstOne !== undefined && worstOne.verdict !== 'sound' && worstOne.verdict !== 'caution') return worstOne
  if (wire?.verdict === 'unsound') return wire
  return (worstOne?.verdict === 'caution' ? worstOne : rules) ?? (worstOne as Finding)
}

/** A terminal too small for its current is replaced in this way: the one to fit is a caution. */
function terminalRenewed(section: PlanSection): PlanSection {
  const findings = section.findings.map((finding) => (finding.code === 'terminal-too-small' ? ({ ...finding, verdict: 'caution' } as const) : finding))
  return {
    ...section,
    findings: findings.toSorted((one, other) => bySeverity(one.verdict, other.verdict)),
    verdict: worst(...findings.map(({ verdict }) => verdict)),
  }
}
