import {
  chooseSleeve,
  cutLengthMm,
  type Interval,
  type MethodName,
  type Reason,
  recoveredWallMm,
  type Sleeve,
  sleeveMaterial,
  temperatureOrder,
} from '@strandwise/core'
import type { JobFacts } from '../facts/jobFacts.ts'
import { alloyFor, solderedMethods } from '../facts/soldered.ts'
import { jointLengthMm } from './jointSection.ts'
import { mm } from './print.ts'
import type { PlanOption, PlanSection, PlanVerdict } from './repairPlan.ts'
import { rule } from './rule.ts'
import { SectionDraft } from './sectionDraft.ts'
import { worst } from './verdict.ts'

export interface Covering {
  readonly section: PlanSection
  readonly options: readonly PlanOption[]
  readonly sleeve: Sleeve | null
  /** Cut length of the sleeve that is taken or needed; 0 where none is. */
  readonly cutMm: number
  /** Where the job names no sleeve and the joint wants one: what to fetch. */
  readonly needed: { readonly words: string; readonly lined: boolean } | null
}

/** Cover past each cut edge of insulation: two outer diameters, and 6 mm at the least. */
function overlapEachSideMm(facts: JobFacts): number {
  return Math.max(6, 2 * facts.outsideMm)
}

/** What a sleeve has to cover, for its cut length. */
function coverOf(facts: JobFacts, method: MethodName, longitudinalChange: number | Interval) {
  return { jointMm: jointLengthMm(method, facts), overlapEachSideMm: overlapEachSideMm(facts), longitudinalChange }
}

function largestMm(facts: JobFacts, method: MethodName): number {
  if (solderedMethods.includes(method)) return Math.max(facts.outsideMm, 2 * facts.conductorDiameterMm)
  // A common uninsulated barrel stands about a millimetre proud of the wire's insulation.
  return facts.outsideMm + 1
}

function nameOf(sleeve: Sleeve): string {
  return sleeve.name ?? `${sleeve.material} ${sleeve.suppliedInsideMm} to ${sleeve.recoveredInsideMm} mm`
}

const reasonWords: Readonly<Record<string, string>> = {
  'does-not-slide-over': 'does not slide over the joint',
  'does-not-grip': 'stays loose on the insulation',
  'outside-too-large': 'comes out larger than the housing passes',
}

function inWords(reason: Reason): string {
  const words = reasonWords[reason.code] ?? reason.code.replaceAll('-', ' ')
  return reason.value !== undefined && reason.limit !== undefined ? `${words} (${mm(reason.value)} against ${mm(reason.limit)})` : words
}

/** Which tube, how long, how thick after, whether it fits through the housing, and in which order heat may come. */
export function coveringSection(facts: JobFacts, method: MethodName): Covering {
  const draft = new SectionDraft('covering')
  const none = (section: PlanSection): Covering => ({ section, options: [], sleeve: null, cutMm: 0, needed: null })
  if (method === 'replace-the-run') return none(draft.say('sound', 'No joint to cover.').done())
  if (method === 'new-crimped-terminal') {
    seal(draft, facts, facts.outsideMm)
    draft.say('sound', 'The terminal sits in its housing; no sleeve is needed unless the housing is open.')
    return none(draft.done())
  }
  if (method === 'crimped-and-sealed-butt-splice') {
    draft.say(
      'sound',
      'The splice brings its own sealing sleeve: shrink it from the middle outwards until adhesive shows all round at both ends.',
      rule('me-sleeve-not-cut').source,
    )
    return none(draft.done())
  }
  const stock = method === 'solder-sleeve' && facts.job.solderSleeve !== undefined ? [facts.job.solderSleeve.tube] : (facts.job.sleeves ?? [])
  if (stock.length === 0) {
    const wanted = sleeveToFetch(facts, method)
    draft.say('caution', `No sleeve is named. Fetch ${wanted.needed.words}.`, rule('co-recovery-margin').source)
    return { section: draft.done(), options: [], sleeve: null, ...wanted }
  }
  return fitted(draft, facts, method, stock)
}

/** A sleeve that would do, where none at hand is one. */
function sleeveToFetch(facts: JobFacts, method: MethodName): { readonly needed: NonNullable<Covering['needed']>; readonly cutMm: number } {
  const lined = facts.wet
  const { longitudinalChange } = sleeveMaterial(lined ? 'polyolefin-adhesive-lined' : 'polyolefin')
  const cutMm = cutLengthMm(coverOf(facts, method, longitudinalChange ?? 0))
  const words = `${lined ? 'adhesive-lined ' : ''}heat-shrink sleeve that slides over ${mm(largestMm(facts, method))} and recovers to less than ${mm(0.8 * facts.outsideMm)}`
  return { needed: { words, lined }, cutMm }
}

function fitted(draft: SectionDraft, facts: JobFacts, method: MethodName, stock: readonly Sleeve[]): Covering {
  const outsideLimitMm = facts.job.terminal?.housingHoleMm
  const inputs = {
    largestMm: largestMm(facts, method),
    smallestMm: facts.outsideMm,
    stock,
    ...(outsideLimitMm === undefined || facts.job.damage.fromTerminationMm > 100 ? {} : { outsideLimitMm }),
  }
  const ranked = chooseSleeve(inputs)
  draft.working('chooseSleeve', inputs)
  const options = ranked.map((item): PlanOption => {
    const order = orderFinding(item.sleeve, facts, method)
    const lining: PlanVerdict = facts.wet && item.sleeve.material !== 'polyolefin-adhesive-lined' ? 'caution' : 'sound'
    return {
      of: 'sleeve',
      name: nameOf(item.sleeve),
      verdict: worst(item.fits ? 'sound' : 'unsound', order.verdict, lining),
      reasons: [
        item.fits ? `fits; ${mm(item.outsideMm)} over the joint afterwards` : item.reasons.map(inWords).join('; '),
        ...(lining === 'sound' ? [] : ['not lined: it does not seal in the wet']),
        ...(order.text === '' ? [] : [order.text]),
      ],
    }
  })
  const index = options.map((option) => option.verdict).reduce((best, verdict, at, all) => (worst(verdict, all[best] ?? 'refused') === verdict ? best : at), 0)
  const chosen = ranked[index]
  const option = options[index]
  if (chosen === undefined || option === undefined) return { section: draft.done(), options, sleeve: null, cutMm: 0, needed: null }
  const length = coverOf(facts, method, chosen.sleeve.longitudinalChange)
  const cutMm = cutLengthMm(length)
  draft.working('cutLengthMm', length)
  draft.say(option.verdict, `${option.name}: ${option.reasons.join('; ')}.`, rule('co-size-rule').source)
  if (chosen.fits) {
    draft.value('outside after shrinking', chosen.outsideMm, 'mm')
    if (method !== 'solder-sleeve') draft.value('cut length', cutMm, 'mm')
    const onto = Math.max(facts.outsideMm, chosen.sleeve.recoveredInsideMm)
    draft.value(
      'wall on the insulation',
      recoveredWallMm({ recoveredWallMm: chosen.sleeve.recoveredWallMm, recoveredInsideMm: chosen.sleeve.recoveredInsideMm, ontoMm: onto }),
      'mm',
    )
    if (method === 'solder-sleeve')
      draft.say('sound', 'The solder sleeve is used whole: slide it on before you join, and park it away from the heat.', rule('co-slide-first').source)
    else
      draft.say(
        'sound',
        `Cut it ${mm(cutMm)} long: it covers the joint and ${mm(length.overlapEachSideMm)} of insulation on each side even if it shortens by ${Math.round(-100 * Math.min(0, chosen.sleeve.longitudinalChange.low))} %. Slide it on before you join, and park it away from the heat.`,
        rule('co-slide-first').source,
        rule('co-overlap-min').source,
      )
    seal(draft, facts, chosen.outsideMm)
  }
  if (facts.wet) draft.say('sound', rule('me-wet-seal').statement, rule('me-wet-seal').source)
  if (chosen.fits) return { section: draft.done(), options, sleeve: chosen.sleeve, cutMm, needed: null }
  const wanted = sleeveToFetch(facts, method)
  draft.say(option.verdict, `Fetch ${wanted.needed.words}.`, rule('co-recovery-margin').source)
  return { section: draft.done(), options, sleeve: null, ...wanted }
}

function orderFinding(sleeve: Sleeve, facts: JobFacts, method: MethodName): { readonly verdict: PlanVerdict; readonly text: string } {
  const soldered = solderedMethods.includes(method) && method !== 'solder-sleeve'
  const order = temperatureOrder({ sleeve: sleeve.material, insulation: facts.insulationName, ...(soldered ? { alloy: alloyFor(method, facts) } : {}) })
  if (order.remelts === true)
    return { verdict: 'unsound', text: `shrinking ${sleeve.material} takes more heat than ${alloyFor(method, facts)} stands: it melts the joint again` }
  if (order.spoilsInsulation === true) return { verdict: 'unsound', text: `shrinking ${sleeve.material} takes more heat than ${facts.insulationName} stands` }
  return { verdict: 'sound', text: '' }
}

function seal(draft: SectionDraft, facts: JobFacts, outsideMm: number): void {
  const { sealInsideMm } = facts.job.terminal ?? {}
  if (sealInsideMm === undefined) return
  if (outsideMm < sealInsideMm.low || outsideMm > sealInsideMm.high) {
    draft.say(
      'caution',
      `${mm(outsideMm)} outside lies outside the seal's ${sealInsideMm.low} to ${sealInsideMm.high} mm: keep the sleeve clear of the seal.`,
      rule('co-seal-range').source,
    )
  }
}
