import { terminalCurrentA, type WireVerdict } from '@strandwise/core'
import { type Finding, figure, type JobFacts, type PlanSection, planValue, rule, SectionDraft } from '../facts/inner.ts'
import { assumed, metalFault } from '../job/inner.ts'
import { verdictOn, wantsFuse } from './wireJob.ts'
import { nearSource, WireTeller } from './wireTeller.ts'
import { wireWords } from './wireWords.ts'
import { noteWireWorkings } from './wireWorkings.ts'

type Draft = SectionDraft<typeof wireWords>

/** Judgement of a wire in service: the section, and the basis for choosing wire and fuse. */
export interface WireJudged {
  readonly section: PlanSection
  readonly verdict: WireVerdict
  /** The smallest standard size that suits; null if none does. */
  readonly size: WireVerdict['size']
  /** Rating of the fuse after the repair; null if none is needed, or none suits. */
  readonly fuseA: number | null
  /** Finding that the fuse must be changed or added; null if the present one stays. */
  readonly fuseChange: Finding | null
  /** Why this wire does not suit; null if it does. */
  readonly against: Finding | null
  /** Finding that the terminal must be replaced, as it does not suit wire or current. */
  readonly terminal: Finding | null
}

const amperes = (name: string, value: number) => planValue(name, value, 'A')

/** Judges wire, terminal and fuse for the current, heat, bundle and duty. `replaced` is the finding against the wire that this one replaces. */
export function judgeWire(facts: JobFacts, replaced: Finding | null = null): WireJudged {
  const draft: Draft = new SectionDraft('wire-and-protection', wireWords, facts.units)
  if (replaced !== null) draft.add(replaced, `the new run is ${facts.sizeText}`)
  if (facts.limitSource !== null) draft.cite(facts.limitSource)
  const metal = ofMetal(draft, facts)
  if (facts.job.damage.kind === 'overheated') draft.say('overheated', 'caution', { rule: 'me-conditions-overloaded' })
  const judged = verdictOn(facts)
  const { verdict } = judged
  noteWireWorkings(draft, facts, verdict)
  if (verdict.conductorC !== null) draft.value('conductor, in the hottest air', verdict.conductorC.high, '°C', undefined, verdict.conductorC)
  if (verdict.dropV !== null) draft.value('drop over the wire, out and back', verdict.dropV, 'V')
  if (verdict.continuousA !== null) draft.value('wire at steady state, in the hottest air', verdict.continuousA.low, 'A', undefined, verdict.continuousA)
  const teller = new WireTeller(draft, facts, judged)
  const wire = verdict.findings.filter(({ topic }) => topic !== 'fuse').flatMap((found) => teller.wire(found) ?? [])
  const fuse = wantsFuse(facts) || facts.job.circuit.fuseA !== undefined ? teller.fuse() : { fuseA: null, change: null, none: null }
  fuseDistance(draft, facts)
  const terminal = judgeTerminal(draft, facts)
  return { section: draft.done(), verdict, size: judged.size, fuseA: fuse.fuseA, fuseChange: fuse.change, against: metal ?? wire[0] ?? fuse.none, terminal }
}

function ofMetal(draft: Draft, facts: JobFacts): Finding | null {
  const fault = metalFault(facts.material, facts.areaMm2)
  if (fault?.code === 'cca') return draft.say('cca', 'unsound', { rule: 'me-cca' })
  if (fault?.code === 'small-aluminium') {
    const least = planValue('least aluminium', fault.leastMm2, 'mm²', rule('me-al-size').source)
    draft.say('small-aluminium', 'caution', { values: { least }, rule: 'me-al-size' })
  }
  return null
}

function fuseDistance(draft: Draft, facts: JobFacts): void {
  const { fuseDistanceM } = facts.job.circuit
  const near = nearSource()
  if (fuseDistanceM !== undefined && fuseDistanceM > near.value)
    draft.say('fuse-far', 'caution', { values: { distance: planValue('fuse from the source', fuseDistanceM, 'm'), near }, rule: 'wp-fuse-near-source' })
}

function judgeTerminal(draft: Draft, facts: JobFacts): Finding | null {
  const { ratedCurrentA, ratedAmbientC = assumed.terminal.ratedAmbientC, limitC = assumed.terminal.limitC, acceptsMm2 } = facts.job.terminal ?? {}
  let found: Finding | null = null
  if (acceptsMm2 !== undefined && (facts.areaMm2 < acceptsMm2.low || facts.areaMm2 > acceptsMm2.high)) {
    const values = {
      low: planValue('terminal takes at least', acceptsMm2.low, 'mm²'),
      high: planValue('terminal takes at most', acceptsMm2.high, 'mm²'),
      area: planValue('wire', facts.areaMm2, 'mm²'),
    }
    found = draft.say('terminal-range', 'caution', { values, names: { size: facts.sizeText }, rule: 'me-barrel-range' })
  }
  if (ratedCurrentA === undefined) return found
  const air = planValue('hottest air', facts.hottestC, '°C')
  if (facts.hottestC >= limitC) return draft.say('terminal-hot', 'unsound', { values: { air, limit: planValue('terminal limit', limitC, '°C') } })
  const inputs = { ratedCurrentA, ratedAmbientC, limitC, ambientC: facts.hottestC, reserveFactor: figure('wp-terminal-derating', 'deratingFactor') }
  const carries = draft.value('terminal, in the hottest air', terminalCurrentA(inputs), 'A')
  draft.working('terminalCurrentA', inputs, carries.name)
  const values = { rated: amperes('rated', ratedCurrentA), carries, air, current: amperes('current', facts.currentA) }
  if (facts.currentA <= carries.value) {
    draft.say('terminal-carries', 'sound', { values, rule: 'wp-terminal-derating' })
    return found
  }
  return draft.say('terminal-too-small', 'unsound', { values, rule: 'wp-terminal-derating' })
}
