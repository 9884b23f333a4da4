import { type MethodName, minimumBendRadiusMm } from '@strandwise/core'
import type { JobFacts } from '../facts/jobFacts.ts'
import { solderedMethods } from '../facts/soldered.ts'
import { isSplice } from './methodTitles.ts'
import { mm } from './print.ts'
import type { PlanSection } from './repairPlan.ts'
import { rule } from './rule.ts'
import { SectionDraft } from './sectionDraft.ts'

/** First tie, bend, drip loop and free span, so that it doesn't break again. */
export function strainSection(facts: JobFacts, method: MethodName): PlanSection {
  const draft = new SectionDraft('strain-relief')
  const splice = isSplice(method)
  const soldered = solderedMethods.includes(method)
  const bend = { outsideDiameterMm: facts.outsideMm, rule: 'unsupported' } as const
  const radiusMm = minimumBendRadiusMm(bend)
  draft.working('minimumBendRadiusMm', bend)
  draft.value('least bend radius', radiusMm, 'mm', rule('sr-bend-10d').source)
  if (splice && facts.flexes) draft.say('unsound', rule('cb-splice-not-where-flexed').statement, rule('cb-splice-not-where-flexed').source)
  draft.say(
    'sound',
    `No bend tighter than ${mm(radiusMm)} to its inside, ten outer diameters, near the repair; no pull on it: ${rule('sr-splice-no-load').statement}`,
    rule('sr-bend-10d').source,
    rule('sr-splice-no-load').source,
  )
  const shaken = facts.vibration !== 'none'
  if (soldered && shaken) draft.say(facts.vibration === 'strong' ? 'caution' : 'sound', rule('sr-solder-support').statement, rule('sr-solder-support').source)
  draft.say(
    'sound',
    splice ? rule('sr-ties-splice-ends').statement : rule('sr-first-tie-distance').statement,
    rule(splice ? 'sr-ties-splice-ends' : 'sr-first-tie-distance').source,
  )
  if (facts.wet) {
    draft.say('sound', 'Let the lead hang in a drip loop below the plug, so that water drops off before it reaches the seal.', rule('cb-above-water').source)
    if (facts.location !== 'damp') draft.say('sound', rule('cb-above-water').statement, rule('cb-above-water').source)
  }
  return draft.done()
}
