import { type MethodName, slackAfterCutBack } from '@strandwise/core'
import { assumed } from '../facts/assumed.ts'
import type { JobFacts } from '../facts/jobFacts.ts'
import { mm } from './print.ts'
import type { PlanSection } from './repairPlan.ts'
import { figure, rule } from './rule.ts'
import { SectionDraft } from './sectionDraft.ts'

/** Nearer to the plug than this a splice has no room for barrel, sleeve, tie and a straight piece of wire. */
export function spliceNeedsMm(facts: JobFacts): number {
  return facts.job.circuit.rules?.includes('aircraft') ? figure('cb-splice-12in', 'minDistanceMm') : figure('cb-too-near-for-splice', 'spliceNeedsMm')
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
function jointConsumesMm(method: MethodName, facts: JobFacts): number {
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

function slackInputs(method: MethodName, facts: JobFacts, cut: number) {
  return {
    slackMm: facts.job.damage.slackMm,
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

/** Cutting back to bright metal, and whether slack is left. */
export function cutBackSection(facts: JobFacts, method: MethodName): PlanSection {
  const draft = new SectionDraft('cut-back')
  const { damage } = facts.job
  const splice = method !== 'new-crimped-terminal' && method !== 'replace-the-run'
  const needsMm = spliceNeedsMm(facts)
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
      `Cut back ${mm(cut.cutBackMm)}: the dark length and ${assumed.brightMarginMm.value} mm more, until every strand is bright all round.`,
      rule('cb-bright-metal').source,
    )
  if (damage.kind === 'corroded' && facts.job.surroundings.location !== 'dry') draft.say('sound', rule('cb-wicking').statement, rule('cb-wicking').source)
  if (damage.kind === 'overheated') draft.say('caution', rule('wp-overheated-wire').statement, rule('wp-overheated-wire').source)
  if (cut.cutBackMm > figure('cb-bright-metal', 'giveUpAfterMm'))
    draft.say('unsound', `More than ${figure('cb-bright-metal', 'giveUpAfterMm')} mm of dark wire: replace the run.`, rule('cb-bright-metal').source)

  if (splice && damage.fromTerminationMm < needsMm) {
    draft.say(
      'unsound',
      `The break is ${mm(damage.fromTerminationMm)} from the plug; a splice there wants ${needsMm} mm for its barrel, sleeve, a tie and a straight piece of wire. Fit a new terminal on sound wire, or set an inserted length whose splices lie further back, staggered.`,
      rule(facts.job.circuit.rules?.includes('aircraft') ? 'cb-splice-12in' : 'cb-too-near-for-splice').source,
    )
  }
  draft.working('slackAfterCutBack', slackInputs(method, facts, cut.cutBackMm))
  draft.value('slack left', cut.leftMm, 'mm')
  if (method === 'replace-the-run') return draft.done()
  if (cut.insertMm > 0) {
    const insertMm = insertedMm(method, facts)
    draft.value('inserted length', insertMm, 'mm')
    draft.say(
      'caution',
      `${mm(damage.slackMm)} of slack less ${mm(cut.cutBackMm)} cut back leaves ${mm(cut.leftMm)}; ${assumed.serviceSlackMm.value} mm should stay. Put in ${mm(insertMm)} of the same wire with ${cut.joints === 1 ? 'one splice' : 'two staggered splices'}, away from the plug${splice ? ', or replace the run' : ''}.`,
      rule('cb-single-or-two-splices').source,
      rule('wp-same-gauge').source,
    )
  } else draft.say('sound', `${mm(damage.slackMm)} of slack less ${mm(cut.cutBackMm)} cut back leaves ${mm(cut.leftMm)}: enough.`, rule('cb-no-tension').source)
  return draft.done()
}
