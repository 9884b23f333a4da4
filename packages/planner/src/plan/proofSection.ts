import { minimumPullForceN, type Provenance, pullForce, thermalTimeConstantS, UnknownEntryError } from '@strandwise/core'
import type { JobFacts } from '../facts/jobFacts.ts'
import { solderedMethods } from '../facts/soldered.ts'
import { assumed } from '../job/assumed.ts'
import { jointLimits } from './jointSection.ts'
import type { MethodChoice } from './methodSection.ts'
import { methodTitles } from './methodTitles.ts'
import { ampere, ohm, volt } from './print.ts'
import type { PlanSection } from './repairPlan.ts'
import { figure, rule } from './rule.ts'
import { SectionDraft } from './sectionDraft.ts'

/** What a hand meter's millivolt range shows: one count. */
const millivoltCountV = 0.0001

/** What a sample made the same way must hold, by the wire's gauge, else by its area; null where no table has the size. */
function samplePull(facts: JobFacts): { readonly forceN: number; readonly source: Provenance } | null {
  const standard = facts.gauge === null ? 'IEC 60352-2' : 'UL 486A-486B'
  try {
    const forceN = minimumPullForceN(facts.gauge === null ? { standard, areaMm2: facts.areaMm2 } : { standard, gauge: facts.gauge })
    return { forceN, source: pullForce[standard].provenance }
  } catch (error) {
    if (error instanceof UnknownEntryError) return null
    throw error
  }
}

/** Time that the real load must stand before the reading counts. */
function settlingS(facts: JobFacts): number {
  const tau = thermalTimeConstantS({ ...facts.wire, ambientC: facts.ambientC, currentA: 0 })
  return Math.max(figure('pr-load-test-time', 'minS'), figure('pr-load-test-time', 'minTimeConstants') * tau)
}

/** How the repair is shown to be good: drop under load, four-wire, tug, sample, warmth, eye. */
export function proofSection(facts: JobFacts, { recommended: method, considered }: MethodChoice): PlanSection {
  const draft = new SectionDraft('proof')
  if (method !== considered) draft.say('sound', `For the ${methodTitles[method]} that the plan advises; a ${methodTitles[considered]} need not be proven here.`)
  const settleS = settlingS(facts)
  draft.working('thermalTimeConstantS', { ...facts.wire, ambientC: facts.ambientC })
  draft.value('load on before reading', settleS, 's', rule('pr-load-test-time').source)
  if (method !== 'replace-the-run') {
    const limits = jointLimits(method, facts)
    const newV = limits.newOhm * facts.currentA
    const outerV = limits.outerOhm === null ? null : limits.outerOhm * facts.currentA
    const metreV = facts.ohmPerM * facts.currentA
    draft.value('drop over the new joint, at most', newV, 'V', rule('pr-mv-splice').source)
    if (outerV !== null) draft.value('make it again from', outerV, 'V', assumed.ours)
    draft.value('plain wire drops, each metre', metreV, 'V')
    const between =
      outerV === null
        ? ''
        : ` Between that and ${volt(outerV)} clean the probe points and read again with a larger known current; from ${volt(outerV)} on make it again.`
    draft.say(
      'sound',
      `Drop under load: with the real ${ampere(facts.currentA)} flowing for ${Math.ceil(settleS / 60)} minutes, read millivolts over the joint: from bare metal to bare metal before it is covered, else between the nearest open metal less ${volt(metreV)} for each metre of plain wire. At most ${volt(newV)}, as over as much of its own wire.${between}`,
      rule('pr-mv-splice').source,
      rule('pr-load-test-time').source,
    )
    if (newV < 10 * millivoltCountV) {
      const readable = outerV !== null && outerV >= 10 * millivoltCountV
      draft.say(
        readable ? 'sound' : 'caution',
        `${volt(newV)} is only a few counts of a millivolt range: ${readable ? `${volt(outerV)} is plain on it, and a larger known current shows the rest` : 'put a larger known current through it for the test, or read four-wire'}. ${ohm(limits.newOhm)} is the limit.`,
      )
    } else
      draft.say(
        'sound',
        `Four wires, or millivolts at a known current, can show ${ohm(limits.newOhm)}; the ohms range with two leads cannot.`,
        rule('rd-two-wire-floor').source,
      )
  }
  draft.say('sound', rule('pr-light-tug').statement, rule('pr-light-tug').source)
  if (!solderedMethods.includes(method) && method !== 'replace-the-run') {
    const pull = samplePull(facts)
    if (pull === null) draft.say('sound', rule('jg-strength-60').statement, rule('jg-strength-60').source)
    else {
      draft.value('sample holds at least', pull.forceN, 'N', pull.source)
      draft.say(
        'sound',
        `Make a sample the same way and pull it apart: it must hold ${Math.round(pull.forceN)} N. Never pull the repair itself so.`,
        rule('pr-pull-reference').source,
      )
    }
  } else if (method !== 'replace-the-run') draft.say('sound', rule('jg-strength-by-table').statement, rule('jg-strength-by-table').source)
  draft.say('sound', rule('pr-temperature-rise').statement, rule('pr-temperature-rise').source)
  const looks = solderedMethods.includes(method) ? ['jg-fillet', 'jg-appearance'] : ['pr-visual-list']
  for (const id of looks) draft.say('sound', rule(id).statement, rule(id).source)
  draft.say('sound', rule('pr-no-short-before-power').statement, rule('pr-no-short-before-power').source)
  draft.say('sound', rule('pr-record').statement, rule('pr-record').source)
  draft.say('sound', rule('pr-first-look-again').statement, rule('pr-first-look-again').source)
  return draft.done()
}
