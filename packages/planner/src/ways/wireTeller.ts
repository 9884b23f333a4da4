import type { WireFinding, WireJob, WireVerdict } from '@strandwise/core'
import { type Finding, figure, fuseKindWords, type JobFacts, type PlanValue, planValue, printed, rule, type SectionDraft } from '../facts/inner.ts'
import type { WireOffer } from './wireJob.ts'
import type { wireWords } from './wireWords.ts'

type Draft = SectionDraft<typeof wireWords>

const thickerTodo = 'Take thicker wire or better insulation.'
/** Fraction of its rating above which a continuous load ages a fuse. A limit of ours. */
const tiredShare = 0.9
const amperes = (name: string, value: number) => planValue(name, value, 'A')

/** Core's findings that reject the wire itself. */
const againstWire: readonly WireFinding['code'][] = ['current-over-limit', 'no-steady-state', 'air-at-limit']
/** Rules behind core's findings. */
const ruleOf: Readonly<Partial<Record<WireFinding['code'], string>>> = {
  'drop-within-budget': 'wp-conflict-drop-budget',
  'drop-over-budget': 'wp-conflict-drop-budget',
  'fuse-missing': 'wp-no-fuse',
  'fuse-guards-wire': 'wp-overload-zone',
  'fuse-over-wire': 'wp-overload-zone',
  'fuse-none-serves': 'wp-overload-zone',
  'fuse-no-band': 'wp-overload-zone',
  'fuse-within-rule': 'wp-cfr-150pct',
  'fuse-slower-than-wire': 'wp-overload-zone',
  'fuse-near-load': 'wp-continuous-75',
  'fuse-below-load': 'wp-continuous-75',
  'fuse-may-open-on-inrush': 'wp-inrush',
  'fuse-opens-stall': 'wp-motor-stall',
  'fuse-passes-stall': 'wp-motor-stall',
  'fuse-opens-far-fault': 'wp-far-end-fault',
  'fuse-slow-on-far-fault': 'wp-far-end-fault',
}

/** Words core's findings, and decides on the fuse. */
export class WireTeller {
  readonly #draft: Draft
  readonly #facts: JobFacts
  readonly #verdict: WireVerdict
  readonly #fitA: number | null
  readonly #stallPasses: boolean
  readonly #run: NonNullable<WireJob['run']>

  constructor(draft: Draft, facts: JobFacts, { job, verdict, fitA, stallPasses }: WireOffer) {
    this.#draft = draft
    this.#facts = facts
    this.#verdict = verdict
    this.#fitA = fitA
    this.#stallPasses = stallPasses
    this.#run = job.run as NonNullable<WireJob['run']>
  }

  /** Adds the finding; returns it if it rejects this wire, else null. */
  wire(found: WireFinding): Finding | null {
    const code = found.code === 'drop-over-budget' && found.verdict !== 'unsound' ? 'drop-over-ours' : found.code
    const said = this.#say(code, found.verdict, found)
    return said.verdict === 'unsound' && (againstWire.includes(found.code) || found.code === 'drop-over-budget') ? said : null
  }

  fuse(): { readonly fuseA: number | null; readonly change: Finding | null; readonly none: Finding | null } {
    const given = this.#facts.job.circuit.fuseA ?? null
    const findings = this.#verdict.findings.filter(({ topic }) => topic === 'fuse')
    const says = (code: WireFinding['code']) => findings.find((found) => found.code === code)
    // If no current is allowed, the wire's finding has said so.
    if (this.#verdict.continuousA === null) return { fuseA: given, change: null, none: null }
    if (given === null && this.#limited()) return { fuseA: null, change: null, none: null }
    if (says('fuse-no-band') !== undefined) return this.#only(findings, given)
    const wrong = ['fuse-over-wire', 'fuse-below-load', 'fuse-passes-stall', 'fuse-none-serves'] as const
    const [first] = wrong.flatMap((code) => says(code) ?? [])
    const larger = says('fuse-may-open-on-inrush') !== undefined && this.#fitA !== null && given !== null && this.#fitA > given
    const missing = says('fuse-missing')
    // A fuse near its rating is replaced if a larger one also protects the wire.
    const near = says('fuse-near-load')
    const tired = near !== undefined && (near.values.share ?? 0) > tiredShare && this.#fitA !== null && given !== null && this.#fitA > given
    const swaps = (first !== undefined && first.code !== 'fuse-none-serves') || larger || missing !== undefined
    let change: Finding | null = null
    let none: Finding | null = null
    for (const found of findings) {
      // A fuse to fit is a caution, as the steps include it. If none suits, the wire is rejected.
      if (found.code === 'fuse-none-serves' || found.code === 'fuse-missing') continue
      if (found.code === 'fuse-passes-stall' && this.#stallPasses && this.#fitA === given) this.#say(found.code, 'caution', found)
      else if (
        wrong.some((code) => code === found.code) ||
        (larger && found.code === 'fuse-may-open-on-inrush') ||
        (tired && found.code === 'fuse-near-load')
      ) {
        if (this.#fitA === null) continue
        change ??= this.#say(found.code, 'caution', found)
      } else this.#say(found.code, found.verdict, found)
    }
    if (missing !== undefined && this.#fitA !== null) change = this.#say('fuse-missing', 'caution', missing)
    if (this.#stallPasses && swaps && this.#fitA !== given) this.#stall()
    if (
      this.#fitA === null &&
      (first !== undefined || missing !== undefined) &&
      says('fuse-air-beyond-data') === undefined &&
      says('fuse-load-beyond-series') === undefined
    )
      none = this.#say('fuse-none-serves', 'unsound', says('fuse-none-serves') ?? first ?? (missing as WireFinding))
    const keeps = first === undefined || (first.code === 'fuse-passes-stall' && this.#fitA === given)
    const stays = keeps && !larger && !tired && missing === undefined
    return { fuseA: stays ? given : this.#fitA, change: stays ? null : change, none }
  }

  /** True for a source, such as a dynamo, whose short-circuit current is below the wire's continuous current: it needs no fuse. */
  #limited(): boolean {
    const { sourceOhm } = this.#run
    const bearsA = this.#verdict.continuousA?.low ?? 0
    if (sourceOhm === undefined || sourceOhm === 0 || this.#facts.supplyV / sourceOhm > bearsA) return false
    const values = { source: amperes('source into a short', this.#facts.supplyV / sourceOhm), bears: amperes('wire bears', bearsA) }
    this.#draft.say('source-limited', 'sound', { values, names: { size: this.#facts.sizeText } })
    return true
  }

  /** Without a band no rating is named to fit. A fuse whose own rating is wrong has to go all the same; the steps say so. */
  #only(findings: readonly WireFinding[], given: number | null) {
    let change: Finding | null = null
    for (const found of findings) {
      if (found.code === 'fuse-missing') continue
      const wrong = found.code === 'fuse-over-wire' || found.code === 'fuse-below-load'
      const said = this.#say(found.code, wrong ? 'caution' : found.verdict, found)
      if (wrong) change ??= said
    }
    return { fuseA: change === null ? given : null, change, none: null }
  }

  /** The fuse to fit protects the wire but does not open a stalled motor. */
  #stall(): void {
    const { stallA = 0 } = this.#facts.job.load
    const values = { stall: amperes('stalled', stallA), fuse: amperes('fuse', this.#fitA ?? 0), sure: amperes('sure to open from', 1.35 * (this.#fitA ?? 0)) }
    this.#draft.say('fuse-passes-stall', 'caution', { values, names: { fit: stallTodo }, rule: 'wp-motor-stall' })
  }

  #say(code: keyof typeof wireWords, verdict: Finding['verdict'], found: WireFinding): Finding {
    const id = ruleOf[found.code]
    return this.#draft.say(code, verdict, {
      values: this.#values(found),
      names: this.#names(found),
      sources: found.sources,
      ...(id === undefined ? {} : { rule: id }),
    })
  }

  #names(found: WireFinding): Readonly<Record<string, string>> {
    const { sizeText, limitOf, duty, units, fuseKind } = this.#facts
    const fit = this.#fitA === null ? 'one by its maker’s curve' : `a ${printed(this.#fitA, 'A', units)} blade fuse`
    const kind = fuseKindWords[fuseKind ?? 'bolt-down']
    const { largestFuseA, smallestFuseA } = this.#verdict
    const ends = [
      largestFuseA === null ? '' : `${printed(largestFuseA, 'A')} is the largest for the wire`,
      smallestFuseA === null ? '' : `${printed(smallestFuseA, 'A')} the smallest for the load`,
    ].filter((text) => text !== '')
    const stall = found.code === 'fuse-passes-stall' ? { fit: this.#stallPasses ? stallTodo : `Fit ${fit}.` } : { fit }
    return {
      size: sizeText,
      limitOf,
      how: duty === null ? 'settles at' : 'peaks at',
      todo: thickerTodo,
      kind,
      holds: duty === null ? printed(this.#facts.currentA, 'A') : `${printed(this.#facts.currentA, 'A')} for ${printed(duty.onS, 's')}`,
      ends: ends.length === 0 ? '' : `${ends.join(', ')}.`,
      ...stall,
    }
  }

  /** Core's values under the names in the texts. */
  #values({ values }: WireFinding): Readonly<Record<string, PlanValue>> {
    const facts = this.#facts
    const { conductorC, continuousA, largestFuseA } = this.#verdict
    const roomK = values.roomK ?? 0
    const wireA = values.wireA ?? values.mustOpenA ?? continuousA?.low ?? largestFuseA ?? 0
    return {
      current: amperes('current', facts.currentA),
      air: planValue('hottest air', values.ambientC ?? facts.hottestC, '°C'),
      conductor: planValue('conductor, in the hottest air', conductorC?.high ?? 0, '°C', undefined, conductorC ?? undefined),
      limit: planValue('limit', facts.limitC, '°C'),
      room: planValue('below its limit', Math.floor(Math.max(0, roomK)), 'K'),
      over: planValue('above its limit', Math.ceil(Math.max(0, -roomK)), 'K'),
      largest: amperes('largest steady current', values.largestA ?? 0),
      ceiling: planValue('ceiling', values.ceilingC ?? facts.limitC, '°C'),
      drop: planValue('drop over the wire, out and back', values.dropV ?? 0, 'V'),
      allowed: planValue('allowed drop', facts.allowedDropV, 'V'),
      share: planValue('share', 100 * (values.shareOfSupply ?? values.share ?? 0), '%'),
      usual: planValue('usual share', 100 * (values.usualShare ?? 0), '%'),
      fuse: amperes('fuse', values.ratedA ?? facts.job.circuit.fuseA ?? 0),
      passes: amperes('fuse may pass', values.opensForSureA ?? 0),
      bears: amperes('wire bears', wireA),
      hold: amperes('must hold', values.mustHoldA ?? facts.currentA),
      load: amperes('load', values.loadA ?? facts.currentA),
      carries: amperes('fuse carries', values.atAmbientA ?? 0),
      inrush: amperes('inrush', values.inrushA ?? 0),
      lasts: planValue('inrush lasts', values.inrushS ?? 0, 's'),
      shortest: planValue('opens at the soonest after', values.shortestS ?? 0, 's'),
      opens: planValue('opens within', values.longestS ?? 0, 's'),
      within: planValue('should open within', values.withinS ?? 0, 's'),
      stall: amperes('stalled', values.stallA ?? 0),
      sure: amperes('sure to open from', values.opensForSureA ?? 0),
      fault: amperes('short circuit', values.faultA ?? 0),
      breaks: amperes('a blade fuse breaks', values.breakingA ?? 0),
      supply: planValue('supply', values.supplyV ?? facts.supplyV, 'V'),
      rated: planValue('blade fuses, up to', values.ratedV ?? 0, 'V'),
      highest: planValue('air round a fuse, at most', values.highestC ?? 0, '°C'),
      low: amperes('from', values.lowA ?? 0),
      high: amperes('up to', values.highA ?? 0),
      near: nearSource(),
    }
  }
}

const stallTodo = 'Give the motor a thermal cut-out of its own.'
export const nearSource = () =>
  planValue('fuse from the source, at most', figure('wp-fuse-near-source', 'maxDistanceMm') / 1000, 'm', rule('wp-fuse-near-source').source)
