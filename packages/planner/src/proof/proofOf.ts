import { type Interval, thermalTimeConstantS } from '@strandwise/core'
import { type Chain, chainOf, circuitInput, healthyOhm, sound, warmthAt } from '../circuit/inner.ts'
import type { PlanValue } from '../facts/index.ts'
import { figure, type JobFacts, planValue, rule, SectionDraft } from '../facts/inner.ts'
import { isSoldered } from '../ways/inner.ts'
import { currentToRead, readsMillivolts, samplePull, settlingS } from '../work/inner.ts'
import type { ProofPlan, ProvenJoint } from './proofShapes.ts'
import { proofWords } from './proofWords.ts'

/** What was mended where nothing is joined: a leak, or a contact between two places with the most that it may drop there. */
export interface MendedWithoutJoint {
  readonly leak: boolean
  readonly contact: { readonly from: string; readonly to: string; readonly allowedV: number } | null
}

function ofContact(draft: SectionDraft<typeof proofWords>, mended: MendedWithoutJoint | null) {
  if (mended?.leak) return draft.say('dry', 'sound', { values: { least: planValue('insulation, at least', sound.leak.goodAboveOhm, 'Ω') } })
  const contact = mended?.contact ?? null
  if (contact === null) return draft.say('works', 'sound', { rule: 'pr-function' })
  const { from, to, allowedV } = contact
  return draft.say('contact', 'sound', {
    values: { allowed: draft.value(`drop from ${from} to ${to}, at most`, allowedV, 'V') },
    names: { from, to },
    rule: 'pr-function',
  })
}

/** Plan of the proof; joint is null for a new run, or if nothing is joined. */
export function proofOf(facts: JobFacts, joint: ProvenJoint | null, mended: MendedWithoutJoint | 'run' | null = null): ProofPlan {
  const draft = new SectionDraft('proof', proofWords, facts.units)
  // What runs only for seconds is read within them.
  const settleS = Math.min(settlingS(facts), facts.job.load.onS ?? Number.POSITIVE_INFINITY)
  const short = settleS < settlingS(facts)
  const settle = draft.value('load on before reading', settleS, 's', rule('pr-load-test-time').source)
  const constant = { ...facts.wire, ambientC: facts.ambientC }
  draft.working('thermalTimeConstantS', constant, draft.value('time constant of the wire', thermalTimeConstantS(constant), 's').name)
  const current = planValue('current', facts.currentA, 'A')
  const doneWhen = []
  if (!readsMillivolts(facts)) doneWhen.push(draft.say('signal', 'sound', { rule: 'pr-function' }))
  else if (joint === null) {
    if (mended === 'run')
      doneWhen.push(draft.say('run', 'sound', { values: { allowed: draft.value('drop over the run, at most', facts.allowedDropV, 'V'), current, settle } }))
    else doneWhen.push(ofContact(draft, mended))
  } else doneWhen.push(...ofJoint(draft, facts, joint, settle))
  if (short) draft.say('duty', 'sound', { values: { on: planValue('on time', settleS, 's') }, rule: 'pr-load-test-time' })
  if (joint !== null) looks(draft, facts, joint)
  draft.say('look-again', 'sound', { rule: 'pr-first-look-again' })
  return { section: draft.done(), doneWhen }
}

function ofJoint(draft: SectionDraft<typeof proofWords>, facts: JobFacts, joint: ProvenJoint, settle: ReturnType<typeof planValue>) {
  const current = planValue('current', facts.currentA, 'A')
  const fresh = draft.value('drop over the new joint, at most', joint.newOhm * facts.currentA, 'V', rule('pr-mv-splice').source)
  const chain = chainOf(circuitInput(facts))
  const metre = plainWireV(draft, chain)
  const length = planValue('as much wire', joint.lengthMm, 'mm')
  const needs = currentToRead(fresh.value, facts.currentA)
  const before =
    needs === null
      ? draft.say('ratio', 'sound', { values: { length }, rule: 'pr-mv-splice' })
      : draft.say('ratio-few', 'sound', { values: { length, needs }, rule: 'rd-two-wire-floor' })
  const found = [
    // Where vapour may stand nothing bare is live: the covered reading alone proves it.
    ...(facts.flammableVapour ? [] : [before]),
    draft.say('covered', 'sound', { values: { current, settle, fresh, metre }, rule: 'pr-load-test-time' }),
  ]
  const { spread, low, high, from, to } = coveredSpread(chain)
  if (spread.value > fresh.value) {
    const band = draft.value(`from ${from} to ${to}`, high + fresh.value, 'V', undefined, { low, high: high + fresh.value })
    draft.say('covered-blind', 'sound', { values: { spread, fresh }, names: { from, to }, rule: 'rd-before-after-same-points' })
    const most = planValue(band.name, band.value, 'V')
    const between = draft.say('covered-between', 'sound', { values: { current, settle, most }, names: { from, to }, rule: 'rd-before-after-same-points' })
    // It comes first where nothing bare may be live, or the circuit's own fuse would not carry the current that a meter needs.
    if (facts.flammableVapour || (needs !== null && needs.value > (facts.job.circuit.fuseA ?? facts.currentA))) found.unshift(between)
  }
  if (joint.outerOhm !== null) {
    const outer = draft.value('make it again from', joint.outerOhm * facts.currentA, 'V', rule('wp-joint-share').source)
    draft.say('outer', 'sound', { values: { fresh, outer }, rule: 'wp-joint-share' })
  }
  return found
}

/** Drop of the plain wire between the probes, to be subtracted: in today's air, from a cold wire to one at its steady temperature. */
function plainWireV(draft: SectionDraft<typeof proofWords>, { input }: Chain): PlanValue {
  const low = sound.lay.low * input.wire.ohmPerM(input.ambientC) * input.currentA
  const high = sound.lay.high * input.wire.ohmPerM(input.wire.steadyC(input.currentA, input.ambientC)) * input.currentA
  return draft.value('plain wire drops, each metre', (low + high) / 2, 'V', undefined, { low, high })
}

/** Between the nearest open metal on both sides of the joint: by how much the healthy pieces there may differ. */
function coveredSpread(chain: Chain): Interval & { readonly spread: PlanValue; readonly from: string; readonly to: string } {
  const { input, places } = chain
  const [from, to] = input.where === 'feed' ? (['fuse-out', 'terminal-wire'] as const) : (['load-', 'source-'] as const)
  const air = { low: input.ambientC, high: input.ambientC }
  const ohm = healthyOhm(chain, warmthAt(input, input.currentA, air))
  const at = (place: (typeof places)[number]) => places.indexOf(place)
  const spans = [ohm(at(from), at('joint-in')), ohm(at('joint-out'), at(to))]
  const lowV = input.currentA * spans.reduce((sum, { low }) => sum + low, 0)
  const highV = input.currentA * spans.reduce((sum, { high }) => sum + high, 0)
  return { spread: planValue('spread of the plain wire', highV - lowV, 'V'), low: lowV, high: highV, from, to }
}

function looks(draft: SectionDraft<typeof proofWords>, facts: JobFacts, joint: ProvenJoint): void {
  draft.say('tug', 'sound', { rule: 'pr-light-tug' })
  if (!isSoldered(joint.method)) {
    const pull = samplePull(facts)
    if (pull === null) draft.say('no-table', 'sound', { rule: 'jg-strength-60' })
    else draft.say('sample', 'sound', { values: { pull: draft.value('sample holds at least', pull.forceN, 'N', pull.source) }, rule: 'pr-pull-reference' })
  }
  const values = {
    most: planValue('warmer than its wire, at most', figure('pr-temperature-rise', 'maxDifferenceK'), 'K', rule('pr-temperature-rise').source),
    away: planValue('compared with the wire', figure('pr-temperature-rise', 'comparedAtMm'), 'mm', rule('pr-temperature-rise').source),
  }
  draft.say('warmth', 'sound', { values, rule: 'pr-temperature-rise' })
  const id = isSoldered(joint.method) ? 'jg-fillet' : 'jg-wire-visible'
  draft.say('looks', 'sound', { names: { statement: rule(id).statement }, rule: id })
}
