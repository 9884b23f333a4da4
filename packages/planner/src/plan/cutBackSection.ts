import type { MethodName } from '@strandwise/core'
import type { JobFacts } from '../facts/jobFacts.ts'
import { assumed } from '../job/assumed.ts'
import { cutBackFor, insertedMm, jointConsumesMm, slackInputs, spliceRoom } from './cutBack.ts'
import { isSplice, methodTitles } from './methodTitles.ts'
import { mm } from './print.ts'
import type { PlanSection } from './repairPlan.ts'
import { figure, rule } from './rule.ts'
import { SectionDraft } from './sectionDraft.ts'

/** Cutting back to bright metal, and whether slack is left; told as well for the way that the steps make, where that is another. */
export function cutBackSection(facts: JobFacts, method: MethodName, advised: MethodName = method): PlanSection {
  const draft = new SectionDraft('cut-back')
  const { damage } = facts.job
  const splice = isSplice(method)
  const room = spliceRoom(facts)
  const cut = cutBackFor(method, facts)
  draft.value('cut back', cut.cutBackMm, 'mm', assumed.ours)
  if (damage.discolouredMm === undefined && damage.kind !== 'broken')
    draft.say(
      'caution',
      'How far the dark copper runs is not known: open the insulation until every strand is bright all round, and plan again with that length.',
      rule('cb-bright-metal').source,
    )
  else
    draft.say(
      'sound',
      `Cut back ${mm(cut.cutBackMm)}: ${method === 'new-crimped-terminal' ? `the ${mm(damage.fromTerminationMm)} between plug and break, ` : ''}the dark length and ${assumed.brightMarginMm.value} mm more, until every strand is bright all round.`,
      rule('cb-bright-metal').source,
    )
  if (damage.kind === 'corroded' && facts.wet) draft.say('sound', rule('cb-wicking').statement, rule('cb-wicking').source)
  if (damage.kind === 'overheated') draft.say('caution', rule('wp-overheated-wire').statement, rule('wp-overheated-wire').source)
  if (cut.cutBackMm > figure('cb-bright-metal', 'giveUpAfterMm'))
    draft.say('unsound', `More than ${figure('cb-bright-metal', 'giveUpAfterMm')} mm of dark wire: replace the run.`, rule('cb-bright-metal').source)

  if (splice && damage.fromTerminationMm < room.needsMm) {
    draft.say(
      'unsound',
      `The break is ${mm(damage.fromTerminationMm)} from the plug; a splice there wants ${room.needsMm} mm for its barrel, sleeve, a tie and a straight piece of wire. Fit a new terminal on sound wire, or set an inserted length whose splices lie further back, staggered.`,
      rule(room.rule).source,
    )
  }
  draft.working('slackAfterCutBack', slackInputs(method, facts, cut.cutBackMm))
  draft.value('slack left', cut.leftMm, 'mm')
  if (method === 'replace-the-run') return draft.done()
  const intoJointMm = jointConsumesMm(method, facts)
  const balance = `${mm(facts.slackMm)} of slack less ${mm(cut.cutBackMm)} cut back${intoJointMm > 0 ? ` and ${mm(intoJointMm)} that go into the joint` : ''} leaves ${mm(cut.leftMm)}`
  if (cut.insertMm > 0) {
    const insertMm = insertedMm(method, facts)
    draft.value('inserted length', insertMm, 'mm')
    draft.say(
      'caution',
      `${balance}; ${assumed.serviceSlackMm.value} mm should stay. Put in ${mm(insertMm)} of the same wire with ${cut.joints === 1 ? 'one splice' : 'two staggered splices'}, away from the plug${splice ? ', or replace the run' : ''}.`,
      rule('cb-single-or-two-splices').source,
      rule('wp-same-gauge').source,
    )
  } else draft.say('sound', `${balance}: enough.`, rule('cb-no-tension').source)
  if (advised !== method && advised !== 'replace-the-run') draft.say('sound', inAll(facts, advised))
  return draft.done()
}

/** What another way cuts back in all. */
function inAll(facts: JobFacts, method: MethodName): string {
  const { cutBackMm, leftMm, joints } = cutBackFor(method, facts)
  const insertMm = insertedMm(method, facts)
  const put = insertMm > 0 ? `${mm(insertMm)} put in with ${joints === 1 ? 'one splice' : 'two splices'}` : 'nothing put in'
  return `For the ${methodTitles[method]} of the steps: ${mm(cutBackMm)} cut back in all, ${mm(leftMm)} left, ${put}.`
}
