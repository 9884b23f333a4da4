import {
  acceptanceResistanceOhm,
  breakEvenOverlapMm,
  filletConductanceSPerM,
  type JointSite,
  jointTemperatureC,
  lapJointResistanceOhm,
  type MethodName,
  NoSteadyStateError,
  resistivityOhmM,
  solder,
  transferLengthMm,
} from '@strandwise/core'
import { airAroundJointC } from '../facts/bundle.ts'
import { stubMm } from '../facts/heatInputs.ts'
import type { JobFacts } from '../facts/jobFacts.ts'
import { solderedJoint, solderedMethods } from '../facts/soldered.ts'
import { assumed } from '../job/assumed.ts'
import type { MethodChoice } from './methodSection.ts'
import { methodTitles } from './methodTitles.ts'
import { ampere, degrees, mm, ohm, span } from './print.ts'
import { jointShareOfDropV } from './readingsSection.ts'
import type { PlanSection } from './repairPlan.ts'
import { figure, rule } from './rule.ts'
import { SectionDraft } from './sectionDraft.ts'

/** Length of the repair that is compared with as much plain wire. */
export function jointLengthMm(method: MethodName, facts: JobFacts): number {
  if (solderedMethods.includes(method)) return assumed.overlapDiameters.value * facts.conductorDiameterMm + 2 * stubMm(facts)
  return assumed.barrelMm.value
}

function siteOf(facts: JobFacts): JointSite {
  const side = {
    areaMm2: facts.areaMm2,
    material: facts.material,
    conductorDiameterMm: facts.conductorDiameterMm,
    insulationThicknessMm: facts.insulationThicknessMm,
    insulationConductivityWPerMK: facts.insulationConductivityWPerMK,
  }
  return { currentA: facts.currentA, ambientC: airAroundJointC(facts), conductors: [side, side] }
}

interface JointLimits {
  /** A new joint: at most its own length of wire. */
  readonly newOhm: number
  /** Once aged. */
  readonly agedOhm: number
  /** By drop, temperature or as much wire as a joint may be worth, whichever comes first: beyond it the joint is to be made again. null where that leaves nothing beyond an aged joint. */
  readonly outerOhm: number | null
}

/** What the joint may measure, new and aged, and its outer limit. */
export function jointLimits(method: MethodName, facts: JobFacts, place: JointSite = siteOf(facts)): JointLimits {
  const base = { ...place, jointLengthMm: jointLengthMm(method, facts) }
  const newOhm = acceptanceResistanceOhm({ ...base, plainWireMultiple: 1 }).resistanceOhm
  const agedOhm = figure('pr-mv-splice', 'agedMaxRatio') * newOhm
  const outer = acceptanceResistanceOhm({ ...base, limitC: facts.limitC, allowedDropV: jointShareOfDropV(facts) })
  const asWireOhm = facts.ohmPerM * (assumed.jointAsWireMm.value / 1000)
  const outerOhm = Math.min(outer.resistanceOhm, asWireOhm)
  return { newOhm, agedOhm, outerOhm: outerOhm < agedOhm ? null : outerOhm }
}

/** Predicted resistance of a soldered overlap; the band is the width of bond, half to one wire diameter. */
function predicted(draft: SectionDraft, method: MethodName, facts: JobFacts): number {
  const joint = solderedJoint(method, facts)
  const conductorsOhmPerM = [facts.ohmPerM, facts.ohmPerM] as const
  const diameterMm = facts.conductorDiameterMm
  const wireOhmM = resistivityOhmM(facts.material, facts.hottestC)
  const fillet = (bondWidthMm: number) => ({
    diameterMm,
    resistivityOhmM: wireOhmM,
    gapMm: Math.min(assumed.solderLayerMm.value, diameterMm),
    bondWidthMm,
    solderOhmM: joint.alloyOhmM,
  })
  const found = [0.5, 1].map((share) => {
    const interfaceSPerM = filletConductanceSPerM(fillet(share * diameterMm))
    return lapJointResistanceOhm({ overlapMm: joint.overlapMm, conductorsOhmPerM, interfaceSPerM })
  })
  const narrowSPerM = filletConductanceSPerM(fillet(0.5 * diameterMm))
  draft.working('filletConductanceSPerM', fillet(0.5 * diameterMm))
  draft.working('lapJointResistanceOhm', { overlapMm: joint.overlapMm, conductorsOhmPerM, interfaceSPerM: narrowSPerM })
  const low = Math.min(...found)
  const high = Math.max(...found)
  draft.value('overlap', joint.overlapMm, 'mm', assumed.ours)
  draft.value('solder', joint.solderMm3, 'mm³')
  draft.value('resistance, well wetted', high, 'Ω', undefined, { low, high })
  draft.value('transfer length', transferLengthMm({ conductorsOhmPerM, interfaceSPerM: narrowSPerM }), 'mm')
  const breakEven = breakEvenOverlapMm({ conductorsOhmPerM, interfaceSPerM: narrowSPerM })
  const asWire = breakEven === null ? '' : `; ${mm(breakEven)} of overlap already conducts as well as the wire it replaces`
  draft.say(
    'sound',
    `Overlap ${mm(joint.overlapMm)}, ${assumed.overlapDiameters.value} wire diameters: ${span(low, high, ohm)} where the solder has wetted, its strands through; strands that are not wetted are not computed${asWire}. A soldered joint that runs hot is not wetted or is cracked; the solder's own resistance is not the cause.`,
    rule('jg-lap-overlap').source,
  )
  draft.say(
    'sound',
    'The overlap is sized for the current, not for the full strength of the wire: a lap carries no lasting pull. Tie the wire on both sides.',
    rule('sr-splice-no-load').source,
  )
  return high
}

/** How good the joint is: predicted resistance, temperature at full load in the hottest air, and what it may measure. */
export function jointSection(facts: JobFacts, { considered: method, recommended }: MethodChoice): PlanSection {
  const draft = new SectionDraft('joint')
  if (method === 'replace-the-run') return draft.say('sound', 'No joint: the run is replaced from terminal to terminal.', rule('cb-end-to-end').source).done()
  const place = siteOf(facts)
  const base = { ...place, jointLengthMm: jointLengthMm(method, facts) }
  const limits = jointLimits(method, facts, place)
  draft.working('acceptanceResistanceOhm', { ...base, plainWireMultiple: 1 })
  draft.value('limit, new', limits.newOhm, 'Ω', rule('pr-mv-splice').source)
  draft.value('limit, aged', limits.agedOhm, 'Ω', rule('pr-mv-splice').source)
  if (limits.outerOhm !== null) draft.value('outer limit', limits.outerOhm, 'Ω', assumed.ours)
  const soldered = solderedMethods.includes(method)
  const expectedOhm = soldered ? predicted(draft, method, facts) : limits.newOhm
  if (expectedOhm > limits.newOhm) draft.say('caution', `Predicted ${ohm(expectedOhm)} is more than as much plain wire, ${ohm(limits.newOhm)}.`)
  if (!soldered)
    draft.say(
      'sound',
      `A sound crimp measures at most as much as ${mm(base.jointLengthMm)} of its own wire: ${ohm(limits.newOhm)} new, ${ohm(limits.agedOhm)} once aged.`,
      rule('pr-mv-splice').source,
    )
  warmth(draft, facts, place, method, { new: expectedOhm, outer: limits.outerOhm })
  if (method !== recommended)
    draft.say('sound', `Joint, heat and covering are reckoned for the ${methodTitles[method]} you mean to make; the steps make a ${methodTitles[recommended]}.`)
  return draft.done()
}

function warmth(
  draft: SectionDraft,
  facts: JobFacts,
  place: JointSite,
  method: MethodName,
  resistance: { readonly new: number; readonly outer: number | null },
): void {
  try {
    const inputs = { ...place, jointResistanceOhm: resistance.new }
    const bands = (['churchill-chu', 'morgan'] as const).map((correlation) => jointTemperatureC({ ...inputs, correlation }))
    const high = Math.max(...bands)
    draft.working('jointTemperatureC', inputs)
    draft.value('joint, full load in the hottest air', high, '°C', undefined, { low: Math.min(...bands), high })
    const settles = `At ${ampere(facts.currentA)} and ${degrees(facts.hottestC)}${facts.loadedInBundle > 1 ? ' in its bundle' : ''} it settles at ${degrees(high)}`
    if (high > facts.limitC)
      draft.say('unsound', `${settles}, above the ${degrees(facts.limitC)} of ${facts.limitOf}. Help the wire first: thicker, or out of the heat.`)
    else if (resistance.outer === null)
      draft.say(
        'caution',
        `${settles}. What heat, drop and ${assumed.jointAsWireMm.value} mm of its wire allow leaves nothing beyond an aged joint: hold it to that.`,
      )
    else {
      const outerC = jointTemperatureC({ ...place, jointResistanceOhm: resistance.outer })
      draft.value('joint at its outer limit', outerC, '°C')
      draft.say('sound', `${settles}; at the outer limit of ${ohm(resistance.outer)} it would be ${degrees(outerC)}.`)
    }
    if (solderedMethods.includes(method)) solidusMargin(draft, facts, method, high)
  } catch (error) {
    if (!(error instanceof NoSteadyStateError)) throw error
    draft.say('unsound', `No steady temperature at ${ampere(facts.currentA)}; up to ${ampere(error.largestCurrentA)} there is one.`)
  }
}

function solidusMargin(draft: SectionDraft, facts: JobFacts, method: MethodName, jointC: number): void {
  const { alloy } = solderedJoint(method, facts)
  const solidus = solder(alloy).solidusC.nominal
  const margin = solidus - jointC
  const source = rule('me-temp-zone').source
  const [unloadedK, loadedK] = [figure('me-temp-zone', 'unloadedMarginBelowSolidusK'), figure('me-temp-zone', 'loadedMarginBelowSolidusK')]
  if (margin < unloadedK)
    draft.say(
      'unsound',
      `${alloy} begins to melt at ${degrees(solidus)}: only ${Math.floor(margin)} K above the joint. ${unloadedK} K is the least for an unloaded joint.`,
      source,
    )
  else if (margin < loadedK && facts.vibration === 'strong')
    draft.say(
      'caution',
      `${alloy} begins to melt at ${degrees(solidus)}, ${Math.floor(margin)} K above the joint; a joint that is shaken wants ${loadedK} K.`,
      source,
    )
}
