import { type MethodName, slackAfterCutBack } from '@strandwise/core'
import type { JobFacts } from '../facts/jobFacts.ts'
import { assumed } from '../job/assumed.ts'
import { figure } from './rule.ts'

/** Nearer to the plug than this a splice has no room for barrel, sleeve, tie and a straight piece of wire; and the rule that says so. */
export function spliceRoom(facts: JobFacts): { readonly needsMm: number; readonly rule: string } {
  const [rule, key] = facts.job.circuit.rules?.includes('aircraft')
    ? (['cb-splice-12in', 'minDistanceMm'] as const)
    : (['cb-too-near-for-splice', 'spliceNeedsMm'] as const)
  return { needsMm: figure(rule, key), rule }
}

/** An inserted length is at least this long, so that its splices lie clear of the plug and of each other. */
const leastInsertedMm = 150

interface CutBack {
  readonly cutBackMm: number
  readonly leftMm: number
  readonly insertMm: number
  readonly joints: number
}

/** Wire that goes before the metal is bright, past the break. */
function cutBackMm(facts: JobFacts): number {
  const { damage } = facts.job
  return damage.kind === 'broken' && damage.discolouredMm === undefined
    ? assumed.brightMarginMm.value
    : (damage.discolouredMm ?? 0) + assumed.brightMarginMm.value
}

/** Length of wire that goes into one joint of that kind. */
export function jointConsumesMm(method: MethodName, facts: JobFacts): number {
  if (method === 'soldered-lap' || method === 'solder-sleeve') return assumed.overlapDiameters.value * facts.conductorDiameterMm
  return method === 'soldered-lineman-splice' ? 12 * facts.conductorDiameterMm : 0
}

/** What cutting back leaves for the method: a new terminal loses the stub at the plug as well. */
export function cutBackFor(method: MethodName, facts: JobFacts): CutBack {
  const terminal = method === 'new-crimped-terminal'
  const cut = cutBackMm(facts) + (terminal ? facts.job.damage.fromTerminationMm : 0)
  const inputs = slackInputs(method, facts, cut)
  return { cutBackMm: cut, ...slackAfterCutBack(inputs) }
}

export function slackInputs(method: MethodName, facts: JobFacts, cut: number) {
  return {
    slackMm: facts.slackMm,
    cutBackMm: cut,
    jointConsumesMm: jointConsumesMm(method, facts),
    // A new terminal on an inserted length needs one splice; an inserted length between two ends needs two.
    jointsIfInserted: method === 'new-crimped-terminal' ? 1 : 2,
    serviceSlackMm: assumed.serviceSlackMm.value,
  }
}

/** The length of wire to put in; 0 where the slack is enough. Where more goes in than is missing, as much more is cut back. */
export function insertedMm(method: MethodName, facts: JobFacts): number {
  const cut = cutBackFor(method, facts)
  return cut.insertMm === 0 || method === 'replace-the-run' ? 0 : Math.max(leastInsertedMm, cut.insertMm)
}
