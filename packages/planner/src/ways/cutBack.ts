import { type MethodName, slackAfterCutBack } from '@strandwise/core'
import { figure, type JobFacts } from '../facts/inner.ts'
import { assumed } from '../job/inner.ts'
import { jointShape } from './jointShape.ts'
import { isSplice } from './methodTitles.ts'

/** Least distance from the plug that leaves room for a splice with barrel, sleeve, tie and a straight piece of wire; and its rule. */
export function spliceRoom({ job }: JobFacts): { readonly needsMm: number; readonly rule: string } {
  const [rule, key] = job.circuit.rules?.includes('aircraft')
    ? (['cb-splice-12in', 'minDistanceMm'] as const)
    : (['cb-too-near-for-splice', 'spliceNeedsMm'] as const)
  return { needsMm: figure(rule, key), rule }
}

/** True if the break is too near to its terminal for a splice. */
export const nearTerminal = (facts: JobFacts): boolean => facts.job.damage.fromTerminationMm < spliceRoom(facts).needsMm

/** Lengths of the cut-back. */
export interface CutBack {
  /** Cut from each end. */
  readonly eachMm: number
  /** 1 at a terminal, 2 for a break in the run. */
  readonly ends: 1 | 2
  /** Total, including the stub at the plug. */
  readonly totalMm: number
  readonly leftMm: number
  /** Inserted length; 0 if the slack is enough. If it exceeds the missing length, the excess is cut back too. */
  readonly insertMm: number
  /** Number of wire-to-wire splices. */
  readonly splices: 0 | 1 | 2
  readonly inputs: Parameters<typeof slackAfterCutBack>[0]
}

/** Past the last dark copper, plus a short cut. */
function eachMm({ job: { damage } }: JobFacts): number {
  return (damage.discolouredMm ?? 0) + figure('cb-bright-metal', 'extraCutMm')
}

/** True for a moving lead whose inserted length is spliced at both ends outside the moving zone. */
export const splicedOutside = (method: MethodName, facts: JobFacts): boolean =>
  facts.flexes && method !== 'replace-the-run' && (isSplice(method) || !nearTerminal(facts))

/** The cut-back for a method: a new terminal loses the stub at the plug, a break in the run is cut on both sides. */
export function cutBackFor(method: MethodName, facts: JobFacts): CutBack {
  const each = eachMm(facts)
  const terminal = method === 'new-crimped-terminal'
  const totalMm = terminal ? each + facts.job.damage.fromTerminationMm : 2 * each
  const shape = jointShape(method, facts)
  const inputs = {
    slackMm: facts.slackMm,
    cutBackMm: totalMm,
    jointConsumesMm: terminal || method === 'replace-the-run' ? 0 : shape.consumesMm,
    // A new terminal on an inserted length needs one splice; an inserted length between two ends needs two.
    jointsIfInserted: terminal ? 1 : 2,
    serviceSlackMm: assumed.serviceSlackMm.value,
  }
  const slack = slackAfterCutBack(inputs)
  const least = figure('cb-jumper-15cm', 'minRemovedMm')
  const ends = terminal ? 1 : 2
  if (method === 'replace-the-run') return { eachMm: each, ends, totalMm, leftMm: slack.leftMm, insertMm: 0, splices: 0, inputs }
  const outside = splicedOutside(method, facts)
  const insertMm = slack.insertMm > 0 || outside ? Math.max(least, slack.insertMm) : 0
  return { eachMm: each, ends, totalMm, leftMm: slack.leftMm, insertMm, splices: insertMm === 0 ? (terminal ? 0 : 1) : terminal ? 1 : 2, inputs }
}
