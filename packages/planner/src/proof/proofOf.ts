import { figure, type JobFacts, type PlanVerdict, planValue, rule, SectionDraft } from '../facts/inner.ts'
import { isSoldered } from '../ways/inner.ts'
import { readsMillivolts, samplePull, settlingS } from '../work/inner.ts'
import type { ProofPlan, ProvenJoint } from './proofShapes.ts'
import { proofWords } from './proofWords.ts'

/** What a hand meter's millivolt range shows: one count. */
const millivoltCountV = 0.0001

/** How the repair is shown to be good; joint is null for a new run, or where nothing is joined. */
export function proofOf(facts: JobFacts, joint: ProvenJoint | null, runMade = false): ProofPlan {
  const draft = new SectionDraft('proof', proofWords, facts.units)
  const settleS = settlingS(facts)
  draft.working('thermalTimeConstantS', { ...facts.wire, ambientC: facts.ambientC })
  const settle = draft.value('load on before reading', settleS, 's', rule('pr-load-test-time').source)
  const current = planValue('current', facts.currentA, 'A')
  const doneWhen = []
  if (!readsMillivolts(facts)) doneWhen.push(draft.say('signal', 'sound', { rule: 'pr-function' }))
  else if (joint === null) {
    if (runMade)
      doneWhen.push(draft.say('run', 'sound', { values: { allowed: draft.value('drop over the run, at most', facts.allowedDropV, 'V'), current, settle } }))
    else doneWhen.push(draft.say('works', 'sound', { rule: 'pr-function' }))
  } else doneWhen.push(...ofJoint(draft, facts, joint, settle))
  if (joint !== null) looks(draft, facts, joint)
  draft.say('look-again', 'sound', { rule: 'pr-first-look-again' })
  return { section: draft.done(), doneWhen }
}

function ofJoint(draft: SectionDraft<typeof proofWords>, facts: JobFacts, joint: ProvenJoint, settle: ReturnType<typeof planValue>) {
  const current = planValue('current', facts.currentA, 'A')
  const fresh = draft.value('drop over the new joint, at most', joint.newOhm * facts.currentA, 'V', rule('pr-mv-splice').source)
  const metre = draft.value('plain wire drops, each metre', facts.ohmPerM * facts.currentA, 'V')
  const found = [
    draft.say('ratio', 'sound', { values: { length: planValue('as much wire', joint.lengthMm, 'mm') }, rule: 'pr-mv-splice' }),
    draft.say('covered', 'sound', { values: { current, settle, fresh, metre }, rule: 'pr-load-test-time' }),
  ]
  if (joint.outerOhm !== null) {
    const outer = draft.value('make it again from', joint.outerOhm * facts.currentA, 'V', rule('wp-joint-share').source)
    draft.say('outer', 'sound', { values: { fresh, outer }, rule: 'wp-joint-share' })
  }
  if (fresh.value < 10 * millivoltCountV) {
    const verdict: PlanVerdict = 'sound'
    draft.say('few-counts', verdict, { values: { fresh, limit: planValue('limit', joint.newOhm, 'Ω') }, rule: 'rd-two-wire-floor' })
  }
  return found
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
