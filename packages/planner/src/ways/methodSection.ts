import { assessMethods, galvanicDifferenceV, type MethodAssessment, type MethodName, UnknownEntryError } from '@strandwise/core'
import { clampedKinds, type Finding, figure, type JobFacts, methodContext, type PlanSection, planValue, rule, SectionDraft } from '../facts/inner.ts'
import { assumed } from '../job/inner.ts'
import { splicedOutside } from './cutBack.ts'
import { methodTitles } from './methodTitles.ts'
import { methodWords } from './methodWords.ts'

type Draft = SectionDraft<typeof methodWords>

/** Tools of the rules, as parts to fetch. */
const toolOf: Readonly<Record<string, string>> = {
  'me-ratchet-tool': 'a ratchet crimp tool made for barrel and wire',
  'me-barrel-range': 'the die for that terminal',
  'co-from-centre': 'a hot-air tool',
  'he-solder-sleeve-order': 'a hot-air tool',
  'he-heat-the-work': 'a soldering iron with a tip as wide as the joint',
}
/** Conditions that this plan's steps and covering meet. */
const metBySteps: readonly string[] = [
  'me-wet-seal',
  'me-unsealed-not-in-wet',
  'me-al-clean',
  'me-al-clean-time',
  'me-thermocouple',
  'me-thermocouple-junction-pair',
  'me-sealed-splice-permanent',
]
/** Rules reported in the section on cutting back or elsewhere. */
const toldElsewhere: readonly string[] = ['cb-no-room-at-plug', 'cb-splice-12in', 'me-databus']
/** General rule on solder, listed among the rules only. */
const solderOrder = 'me-conflict-solder'
/** Days until a temporary repair is due for renewal: ours. */
const temporaryDays = 30

/** What the rules say about one method: its section, and the findings that exclude it or attach a condition. */
interface MethodJudged {
  readonly section: PlanSection
  /** The finding of a binding prohibition. */
  readonly forbidden: Finding | null
  readonly conditional: Finding | null
  readonly toFetch: readonly string[]
}

/** All methods by the rules, for a place that moves or not. */
export type Assess = (flexes: boolean) => readonly MethodAssessment[]

/** Evaluates the rules once for moving and once for still places. */
export function assessor(facts: JobFacts): Assess {
  const context = methodContext(facts)
  const asked = new Map<boolean, readonly MethodAssessment[]>()
  return (flexes) => {
    const found = asked.get(flexes) ?? assessMethods({ ...context, flexes })
    asked.set(flexes, found)
    return found
  }
}

/** Section on the method: whether the rules of the trade allow it here. */
export function methodSection(facts: JobFacts, method: MethodName, assess: Assess = assessor(facts)): MethodJudged {
  const draft: Draft = new SectionDraft('method', methodWords, facts.units)
  const title = methodTitles[method]
  const outside = splicedOutside(method, facts)
  const assessed = assess(outside ? false : facts.flexes).find((item) => item.method === method)
  let forbidden: Finding | null = null
  let conditional: Finding | null = null
  const toFetch: string[] = []
  for (const reason of assessed?.reasons ?? []) {
    if (toldElsewhere.includes(reason.rule)) continue
    const found = told(draft, facts, method, reason, toFetch)
    if (found?.code === 'forbidden') forbidden ??= found
    if (found?.code === 'condition') conditional ??= found
  }
  if (facts.job.methods !== undefined && !facts.job.methods.includes(method) && method !== 'replace-the-run') {
    draft.say('fetch-way', 'caution', { names: { title } })
    toFetch.push(`what a ${title} needs`)
  }
  if (outside) conditional = draft.say('out-of-zone', 'caution', { rule: 'cb-splice-not-where-flexed' })
  const longRun = planValue('run drawn without more ado, at most', assumed.longRunM.value, 'm', assumed.longRunM.source)
  if (method === 'replace-the-run' && facts.outLengthM > longRun.value)
    conditional ??= draft.say('long-run', 'caution', {
      values: { run: planValue('run', facts.outLengthM, 'm'), most: longRun },
      rule: 'cb-end-to-end',
      sources: [longRun.provenance],
    })
  if (method === 'replace-the-run') runTools(draft, facts, toFetch)
  if (facts.temporary)
    draft.say('temporary', 'caution', {
      values: { days: planValue('to be renewed within', temporaryDays, 'days', { status: 'common practice', source: 'choice of this plan' }) },
      rule: 'me-emergency-temporary',
    })
  metals(draft, facts, method)
  if (forbidden === null && conditional === null && draft.verdict === 'sound') draft.say('suits', 'sound', { names: { title } })
  return { section: draft.done(), forbidden, conditional, toFetch }
}

function told(draft: Draft, facts: JobFacts, method: MethodName, reason: MethodAssessment['reasons'][number], toFetch: string[]): Finding | null {
  const title = methodTitles[method]
  const { rule: id, text: statement, changesIf = 'the place changes' } = reason
  const names = { title, statement, changesIf }
  if (reason.effect === 'forbids') {
    if (facts.temporary && id === 'me-boat-lap-and-sleeve') return draft.say('condition', 'caution', { names, rule: id })
    return draft.say('forbidden', 'unsound', { names, rule: id })
  }
  if (reason.effect === 'favours') return id === solderOrder ? null : draft.say('favoured', 'sound', { names, rule: id })
  const tool = toolOf[id]
  // A clamp takes the bare strands: no crimp tool and no die.
  const clamped = method === 'new-crimped-terminal' && clampedKinds.includes(facts.terminal.kind)
  if (clamped && (id === 'me-ratchet-tool' || id === 'me-barrel-range')) return null
  if (tool !== undefined) {
    if (!toFetch.includes(tool)) {
      toFetch.push(tool)
      draft.say('fetch-tool', 'caution', { names: { tool }, rule: id })
    }
    return null
  }
  if (metBySteps.includes(id)) return draft.say('in-the-steps', 'sound', { names, rule: id })
  return draft.say('condition', 'caution', { names, rule: id })
}

/** Tools of a new run: both ends crimped, except in clamps. */
function runTools(draft: Draft, facts: JobFacts, toFetch: string[]): void {
  if (clampedKinds.includes(facts.terminal.kind) || (facts.job.hasTerminalDie ?? facts.job.hasCrimpTool) !== false) return
  const tool = 'the die for that terminal'
  toFetch.push(tool)
  draft.say('fetch-tool', 'caution', { names: { tool }, rule: 'me-barrel-range' })
}

/** Pairs of metals in contact. */
function metals(draft: Draft, facts: JobFacts, method: MethodName): void {
  const { metal, matingMetal } = facts.job.terminal ?? {}
  const pairs: (readonly [string, Parameters<typeof galvanicDifferenceV>[0], Parameters<typeof galvanicDifferenceV>[1]])[] = []
  const terminal = method === 'new-crimped-terminal' || method === 'replace-the-run'
  if (terminal && metal !== undefined) {
    pairs.push(['wire and terminal', facts.material, metal])
    if (matingMetal !== undefined) pairs.push(['terminal and its mate', metal, matingMetal])
  }
  if (!terminal && facts.beyond !== null) pairs.push(['the two wires', facts.material, facts.beyond.material])
  const most = planValue('apart, at most', figure('me-galvanic-harsh', facts.wet ? 'harshMaxV' : 'normalMaxV'), 'V', rule('me-galvanic-harsh').source)
  for (const [pair, one, other] of pairs) {
    try {
      const apartV = galvanicDifferenceV(one, other)
      if (apartV > most.value)
        draft.say('metals', facts.wet ? 'caution' : 'sound', {
          values: { apart: planValue('apart', apartV, 'V'), most },
          names: { pair },
          rule: 'me-galvanic-harsh',
        })
    } catch (error) {
      if (!(error instanceof UnknownEntryError)) throw error
      draft.say('metals-unknown', 'caution', { names: { metal: one, other } })
    }
  }
}
