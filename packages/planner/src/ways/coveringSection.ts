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
import {
  type Finding,
  figure,
  type JobFacts,
  type PlanOption,
  type PlanSection,
  type PlanVerdict,
  planValue,
  printed,
  rule,
  SectionDraft,
  studKinds,
  worst,
} from '../facts/inner.ts'
import { coveringWords } from './coveringWords.ts'
import { sealRange, throughHousing } from './housing.ts'
import { alloyFor, conductorsMm, isSoldered, jointShape } from './jointShape.ts'
import { isLined, liningMm } from './lining.ts'

type Draft = SectionDraft<typeof coveringWords>

/** Covering of the joint. */
export interface Covering {
  readonly section: PlanSection
  readonly options: readonly PlanOption[]
  readonly sleeve: Sleeve | null
  /** Cut length of the sleeve used or needed; 0 without one. */
  readonly cutMm: number
  /** Sleeve to fetch if none at hand fits. */
  readonly needed: { readonly words: string; readonly lined: boolean } | null
  readonly toFetch: readonly string[]
  readonly against: Finding | null
}

/** A joint farther than this from a plug does not have to pass its housing: common practice. */
const housingReachMm = 100

/** Overlap past each edge of insulation after shrinking: sources differ, and the largest figure that applies to the place is used. */
export function overlapEachSideMm(facts: JobFacts): number {
  const diameters = figure('co-overlap-min', 'overlapEachSideMinDiameters')
  return Math.max(diameters * conductorsMm(facts).outsideMm.high, figure('co-conflict-overlap', facts.wet ? 'wetMinMm' : 'dryMinMm'))
}

/** The widest part that the sleeve slides over, and the thinnest that it must grip. */
function spanned(facts: JobFacts, method: MethodName): { readonly largestMm: number; readonly smallestMm: number } {
  const { outsideMm } = conductorsMm(facts)
  return { largestMm: Math.max(outsideMm.high, jointShape(method, facts).widthMm), smallestMm: outsideMm.low }
}

const cover = (facts: JobFacts, method: MethodName, longitudinalChange: number | Interval) => ({
  jointMm: jointShape(method, facts).lengthMm,
  overlapEachSideMm: overlapEachSideMm(facts),
  longitudinalChange,
})

export const sleeveName = (sleeve: Sleeve): string => sleeve.name ?? `${sleeve.material} ${sleeve.suppliedInsideMm} to ${sleeve.recoveredInsideMm} mm`

const reasonWords: Readonly<Record<string, string>> = {
  'does-not-slide-over': 'it does not slide over the joint',
  'does-not-grip': 'it stays loose on the insulation',
  'outside-too-large': 'it comes out larger than the housing passes',
}

function inWords(reason: Reason, facts: JobFacts): string {
  const words = reasonWords[reason.code] ?? reason.code.replaceAll('-', ' ')
  if (reason.value === undefined || reason.limit === undefined) return words
  return `${words} (${printed(reason.value, 'mm', facts.units)} against ${printed(reason.limit, 'mm', facts.units)})`
}

/** Covering of a method: which tube, length, wall after shrinking, passage through the housing, heat resistance, and order of heating. */
export function judgeCovering(facts: JobFacts, method: MethodName, jointC: number | null): Covering {
  const draft: Draft = new SectionDraft('covering', coveringWords, facts.units)
  const done = (more: Partial<Covering> = {}): Covering => ({
    options: [],
    sleeve: null,
    cutMm: 0,
    needed: null,
    toFetch: [],
    against: null,
    ...more,
    section: draft.done(),
  })
  if (method === 'replace-the-run') {
    draft.say('no-joint', 'sound')
    throughHousing(draft, facts)
    return done()
  }
  if (method === 'new-crimped-terminal') return done(atTerminal(draft, facts))
  if (method === 'crimped-and-sealed-butt-splice') {
    draft.say('own-seal', 'sound', { rule: 'me-sleeve-not-cut' })
    return done()
  }
  const own = method === 'solder-sleeve'
  const stock = own ? (facts.job.solderSleeve === undefined ? [] : [facts.job.solderSleeve.tube]) : (facts.job.sleeves ?? [])
  if (own && stock.length === 0) return done()
  if (facts.wet) draft.say('creep', 'sound', { rule: 'me-wet-seal' })
  if (stock.length === 0) {
    const wanted = toFetch(facts, method)
    // Without a list of sleeves one may be at hand; an empty list means none.
    draft.say('none-named', facts.job.sleeves === undefined ? 'sound' : 'caution', { names: { needed: wanted.needed.words }, rule: 'co-recovery-margin' })
    draft.say('slide-first', 'sound', { rule: 'co-slide-first' })
    return done({ ...wanted, toFetch: facts.job.sleeves === undefined ? [] : [wanted.needed.words] })
  }
  return done(fitted(draft, facts, method, stock, jointC))
}

const terminalWords: Readonly<Record<string, string>> = { ring: 'ring', fork: 'fork', 'cable-lug': 'lug' }

function atTerminal(draft: Draft, facts: JobFacts): Partial<Covering> {
  throughHousing(draft, facts)
  if (!studKinds.includes(facts.terminal.kind)) {
    draft.say('in-housing', 'sound', { rule: 'co-every-termination' })
    return {}
  }
  const wanted = toFetch(facts, 'new-crimped-terminal')
  const cut = draft.value('cut length', wanted.cutMm, 'mm')
  draft.say('on-stud', 'sound', {
    values: { cut },
    names: { terminal: terminalWords[facts.terminal.kind] ?? 'terminal', needed: wanted.needed.words },
    rule: 'co-every-termination',
  })
  return wanted
}

/** A suitable sleeve to fetch, if none at hand fits. */
function toFetch(facts: JobFacts, method: MethodName): Pick<Covering, 'cutMm'> & { readonly needed: NonNullable<Covering['needed']> } {
  const lined = facts.wet
  const { longitudinalChange } = sleeveMaterial(lined ? 'polyolefin-adhesive-lined' : 'polyolefin')
  const { largestMm, smallestMm } = spanned(facts, method)
  const cutMm = cutLengthMm(cover(facts, method, longitudinalChange ?? 0))
  const share = figure('co-recovery-margin', 'recoveredMaxShareOfSmallest')
  const words = `${lined ? 'adhesive-lined ' : ''}heat-shrink sleeve that slides over ${printed(largestMm, 'mm', facts.units)} and recovers below ${printed(share * smallestMm, 'mm', facts.units)}`
  return { needed: { words, lined }, cutMm }
}

/** One sleeve on this joint, with the reasons against it. */
interface Fitted {
  readonly sleeve: Sleeve
  readonly outsideMm: number
  readonly fits: boolean
  readonly verdict: PlanVerdict
  readonly why: readonly { readonly code: keyof typeof coveringWords; readonly verdict: PlanVerdict; readonly limitC?: number }[]
  readonly reasons: readonly string[]
}

function fitted(draft: Draft, facts: JobFacts, method: MethodName, stock: readonly Sleeve[], jointC: number | null): Partial<Covering> {
  const outsideLimitMm = facts.job.damage.fromTerminationMm > housingReachMm ? undefined : facts.job.terminal?.housingHoleMm
  const inputs = { ...spanned(facts, method), stock, ...(outsideLimitMm === undefined ? {} : { outsideLimitMm }) }
  const ranked = chooseSleeve(inputs).map((item) => weigh(facts, method, jointC, item))
  const best = ranked.reduce((one, other) => (worst(one.verdict, other.verdict) === other.verdict ? one : other))
  const options = ranked.map(
    (item): PlanOption => ({
      of: 'sleeve',
      name: sleeveName(item.sleeve),
      verdict: item.verdict,
      reasons: item.fits ? item.why.map(({ code }) => coveringWords[code].says.replace('{sleeve}', sleeveName(item.sleeve))) : item.reasons,
    }),
  )
  const name = sleeveName(best.sleeve)
  if (!best.fits) {
    const wanted = toFetch(facts, method)
    const found = draft.say('does-not-fit', method === 'solder-sleeve' ? 'unsound' : 'caution', {
      names: { sleeve: name, why: best.reasons.join('; '), needed: wanted.needed.words },
      rule: 'co-recovery-margin',
    })
    return { options, ...wanted, toFetch: [wanted.needed.words], against: found.verdict === 'unsound' ? found : null }
  }
  let against: Finding | null = null
  for (const { code, verdict, limitC } of best.why) {
    const values = {
      joint: planValue('joint, full load in the hottest air', jointC ?? 0, '°C'),
      coldest: planValue('coldest air', facts.coldestC, '°C'),
      limit: planValue('limit of the sleeve', limitC ?? 0, '°C', sleeveMaterial(best.sleeve.material).continuousC?.provenance),
    }
    const found = draft.say(code, verdict, { values, names: { sleeve: name, alloy: alloyFor(method, facts), insulation: facts.insulationName } })
    if (verdict === 'unsound') against ??= found
  }
  const length = cover(facts, method, best.sleeve.longitudinalChange)
  const cutMm = cutLengthMm(length)
  const outside = draft.value('outside after shrinking', best.outsideMm, 'mm')
  draft.working('chooseSleeve', { ...inputs, stock: [best.sleeve] }, outside.name)
  const cutName = method === 'solder-sleeve' ? 'length of the solder sleeve, at least' : 'cut length'
  const cut = draft.value(cutName, cutMm, 'mm')
  draft.working('cutLengthMm', length, cut.name)
  const onto = Math.max(conductorsMm(facts).outsideMm.low, best.sleeve.recoveredInsideMm)
  const wall = { recoveredWallMm: best.sleeve.recoveredWallMm, recoveredInsideMm: best.sleeve.recoveredInsideMm, ontoMm: onto }
  draft.working('recoveredWallMm', wall, draft.value('wall on the insulation', recoveredWallMm(wall), 'mm').name)
  const { adhesiveWallMm } = best.sleeve
  if (adhesiveWallMm !== undefined) draft.value('lining on the insulation', liningMm(best.sleeve.recoveredInsideMm, adhesiveWallMm, onto), 'mm')
  if (method === 'solder-sleeve') draft.say('own-tube', 'sound', { values: { outside, least: cut }, rule: 'co-slide-first' })
  else {
    const overlap = planValue('past each cut edge', length.overlapEachSideMm, 'mm', rule('co-conflict-overlap').source)
    draft.say('fits', 'sound', { values: { outside, cut, overlap }, names: { sleeve: name }, rule: 'co-overlap-min' })
  }
  draft.say('slide-first', 'sound', { rule: 'co-slide-first' })
  sealRange(draft, facts, best.outsideMm)
  return { options, sleeve: best.sleeve, cutMm, against }
}

function weigh(facts: JobFacts, method: MethodName, jointC: number | null, item: ReturnType<typeof chooseSleeve>[number]): Fitted {
  const { sleeve } = item
  const material = sleeveMaterial(sleeve.material)
  const soldered = isSoldered(method) && method !== 'solder-sleeve'
  const order = temperatureOrder({ sleeve: sleeve.material, insulation: facts.insulationName, ...(soldered ? { alloy: alloyFor(method, facts) } : {}) })
  const why: Fitted['why'][number][] = []
  if (order.remelts === true) why.push({ code: 'remelts', verdict: 'unsound' })
  if (order.spoilsInsulation === true) why.push({ code: 'spoils', verdict: 'unsound' })
  if (facts.wet && !isLined(sleeve)) why.push({ code: 'not-lined', verdict: 'caution' })
  const limit = material.continuousC
  if (limit !== null && jointC !== null && jointC > limit.high)
    why.push({ code: 'too-hot-for-sleeve', verdict: limit.provenance.status === 'published' ? 'unsound' : 'caution', limitC: limit.high })
  if (limit !== null && facts.coldestC < limit.low) why.push({ code: 'too-cold-for-sleeve', verdict: 'caution', limitC: limit.low })
  const reasons = item.reasons.map((reason) => inWords(reason, facts))
  return {
    sleeve,
    outsideMm: item.outsideMm,
    fits: item.fits,
    verdict: worst(item.fits ? 'sound' : 'unsound', ...why.map(({ verdict }) => verdict)),
    why,
    reasons,
  }
}
