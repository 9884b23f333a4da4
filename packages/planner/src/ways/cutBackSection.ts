import { type MethodName, remainingAreaMm2 } from '@strandwise/core'
import { type Finding, figure, type JobFacts, type PlanSection, planValue, rule, SectionDraft } from '../facts/inner.ts'
import { assumed } from '../job/inner.ts'
import { type CutBack, cutBackFor, nearTerminal, splicedOutside, spliceRoom } from './cutBack.ts'
import { cutBackWords } from './cutBackWords.ts'
import { isSplice } from './methodTitles.ts'

type Draft = SectionDraft<typeof cutBackWords>

/** Section on cutting back to bright metal, remaining slack, and room for a splice. */
export function cutBackSection(
  facts: JobFacts,
  method: MethodName,
): { readonly section: PlanSection; readonly cut: CutBack; readonly against: Finding | null } {
  const draft: Draft = new SectionDraft('cut-back', cutBackWords, facts.units)
  const cut = cutBackFor(method, facts)
  if (method === 'replace-the-run') {
    draft.say('new-run', 'sound')
    return { section: draft.done(), cut, against: null }
  }
  const against = [ends(draft, facts, cut, method), room(draft, facts, method)].find((finding) => finding !== null) ?? null
  strands(draft, facts)
  slack(draft, facts, cut, method)
  return { section: draft.done(), cut, against }
}

function ends(draft: Draft, facts: JobFacts, cut: CutBack, method: MethodName): Finding | null {
  const { damage } = facts.job
  const each = draft.value('cut back', cut.eachMm, 'mm', rule('cb-bright-metal').source)
  const names = { place: facts.terminal.place }
  if (cut.ends === 1)
    draft.say('cut-one-end', 'sound', {
      values: { each, stub: planValue('break from the terminal', damage.fromTerminationMm, 'mm') },
      names,
      rule: 'cb-bright-metal',
    })
  else draft.say('cut-both-ends', 'sound', { values: { each }, rule: 'cb-bright-metal' })
  if (method === 'new-crimped-terminal' && !nearTerminal(facts))
    draft.say('gives-away', 'caution', { values: { stub: planValue('break from the terminal', damage.fromTerminationMm, 'mm') }, names })
  if (damage.discolouredMm === undefined && (damage.kind === 'corroded' || damage.kind === 'overheated' || damage.kind === 'unknown'))
    draft.say('length-unknown', 'caution', { rule: 'cb-bright-metal' })
  if (damage.kind === 'corroded' && facts.wet) draft.say('wicking', 'sound', { rule: 'cb-wicking' })
  const most = planValue('dark wire, at most', figure('cb-bright-metal', 'giveUpAfterMm'), 'mm', rule('cb-bright-metal').source)
  if (cut.eachMm <= most.value || !isSplice(method)) return null
  const dark = planValue('dark wire', damage.discolouredMm ?? cut.eachMm, 'mm')
  return draft.say('dark-too-long', 'unsound', { values: { dark, most }, rule: 'cb-bright-metal' })
}

function room(draft: Draft, facts: JobFacts, method: MethodName): Finding | null {
  if (!isSplice(method) || !nearTerminal(facts)) return null
  const { needsMm, rule: id } = spliceRoom(facts)
  const values = {
    from: planValue('break from the terminal', facts.job.damage.fromTerminationMm, 'mm'),
    needs: planValue('room for a splice', needsMm, 'mm', rule(id).source),
  }
  return draft.say('no-room', 'unsound', { values, names: { place: facts.terminal.place }, rule: id })
}

/** Remaining area after broken strands. */
function strands(draft: Draft, facts: JobFacts): void {
  const { brokenStrands = 0 } = facts.job.damage
  const count = facts.strandCount ?? 0
  if (brokenStrands === 0 || count === 0 || brokenStrands > count) return
  const inputs = { areaMm2: facts.areaMm2, strandCount: count, brokenStrands, corrodedDepthMm: 0 }
  const area = draft.value('metal left at the damage', remainingAreaMm2(inputs), 'mm²')
  draft.working('remainingAreaMm2', inputs, area.name)
  const counted = planValue('strands', count, '')
  const severe = brokenStrands / count > figure('cb-quarter-severed', 'spliceIfSeveredShareAbove')
  const broken = planValue('broken strands', brokenStrands, '')
  if (severe)
    draft.say('strands-left', 'sound', {
      values: { left: planValue('strands left', count - brokenStrands, ''), count: counted, area },
      rule: 'cb-quarter-severed',
    })
  else draft.say('strands-few-gone', 'sound', { values: { broken, count: counted }, rule: 'cb-quarter-severed' })
}

function slack(draft: Draft, facts: JobFacts, cut: CutBack, method: MethodName): void {
  const left = draft.value('slack left', cut.leftMm, 'mm')
  draft.working('slackAfterCutBack', cut.inputs, left.name)
  const values = {
    slack: planValue('slack', facts.slackMm, 'mm'),
    cut: planValue('cut back in all', cut.totalMm + cut.inputs.jointConsumesMm, 'mm'),
    left,
  }
  if (cut.insertMm === 0) {
    draft.say('slack-enough', 'sound', { values, rule: 'cb-no-tension' })
    return
  }
  const insert = draft.value('inserted length', cut.insertMm, 'mm', rule('cb-jumper-15cm').source)
  if (splicedOutside(method, facts)) draft.say('insert-outside', 'caution', { values: { insert }, rule: 'cb-splice-not-where-flexed' })
  else {
    const names = { splices: cut.splices === 1 ? 'one splice' : 'two staggered splices', place: facts.terminal.place }
    draft.say('insert', 'caution', {
      values: { ...values, insert, keep: planValue('slack to keep', assumed.serviceSlackMm.value, 'mm', assumed.ours) },
      names,
      rule: 'cb-single-or-two-splices',
    })
  }
  if (facts.beyond !== null && Math.abs(facts.beyond.areaMm2 / facts.areaMm2 - 1) > 0.05) draft.say('insert-unlike', 'sound', { rule: 'wp-same-gauge' })
}
