import { type HeatVerdict, heatVerdict, heatVerdictDefaults, type MethodName, solder } from '@strandwise/core'
import { type Finding, type JobFacts, type PlanOption, type PlanSection, planValue, rule, SectionDraft, worst } from '../facts/inner.ts'
import type { JobTool } from '../job/index.ts'
import type { Assume } from '../job/inner.ts'
import { heatAdvice } from './heatAdvice.ts'
import { heatingWords } from './heatingWords.ts'
import { heatObstacles } from './heatObstacles.ts'
import { type ToolHeat, toolInputs } from './heatTool.ts'
import { noteHeat } from './heatWorking.ts'
import { isSoldered, jointShape, solderFill } from './jointShape.ts'

type Draft = SectionDraft<typeof heatingWords>

/** Heating of a way; advice is computed on demand. */
interface HeatJudged {
  readonly section: () => PlanSection
  /** Adds the advice to the section. */
  readonly advise: () => void
  readonly best: ToolHeat | null
  readonly all: readonly ToolHeat[]
  readonly options: readonly PlanOption[]
  readonly toFetch: readonly string[]
  readonly against: Finding | null
}

const toolName: Readonly<Record<'iron' | 'hot-air', string>> = { iron: 'a soldering iron', 'hot-air': 'a hot-air tool' }

/** Section on heating: wetting in time and the insulation, for each tool; the best tool's verdict counts. */
export function judgeHeat(facts: JobFacts, method: MethodName, assume: Assume): HeatJudged {
  const draft: Draft = new SectionDraft('heating', heatingWords, facts.units)
  const done = (more: Partial<HeatJudged> = {}): HeatJudged => ({
    section: () => draft.done(),
    advise: () => undefined,
    best: null,
    all: [],
    options: [],
    toFetch: [],
    against: null,
    ...more,
  })
  const hot = isSoldered(method) || method === 'crimped-and-sealed-butt-splice'
  const against = facts.flammableVapour && hot ? draft.say('vapour', 'unsound', { rule: 'ca-no-hot-work-fuel' }) : null
  if (!isSoldered(method)) {
    draft.say('no-solder', 'sound')
    return done({ against })
  }
  if (method === 'solder-sleeve' && facts.job.solderSleeve === undefined) {
    draft.say('no-sleeve-data', 'cannot tell')
    return done({ against })
  }
  const obstacles = heatObstacles(facts, method)
  const stopped = obstacles.map(({ code, verdict, values, names, sources }) => draft.say(code, verdict, { values, names, sources }))
  if (obstacles.length > 0) return done({ against: against ?? stopped.find(({ verdict }) => verdict === 'unsound') ?? null })
  const wanted = method === 'solder-sleeve' ? 'hot-air' : 'iron'
  const { tools } = facts.job
  const usable = (tools ?? []).map((tool, index) => ({ tool, index })).filter(({ tool }) => method !== 'solder-sleeve' || tool.kind === 'hot-air')
  if (usable.length === 0) {
    if (tools === undefined) draft.say('no-tool-named', 'cannot tell', { names: { tool: toolName[wanted] } })
    else draft.say('no-tool', 'caution', { names: { tool: toolName[wanted].replace(/^a /, '') } })
    return done({ against, toFetch: tools === undefined ? [] : [toolName[wanted]] })
  }
  const all = usable.map(({ tool, index }) => runTool(facts, method, tool, index, assume))
  const best = all.reduce((one, other) => (worst(one.heat.verdict, other.heat.verdict) === other.heat.verdict ? one : other))
  const told = tellTool(draft, facts, method, best)
  const options = all.map((item): PlanOption => ({ of: 'tool', name: item.tool.name, verdict: item.heat.verdict, reasons: toolReasons(facts, method, item) }))
  return done({
    best,
    all,
    options,
    against: against ?? told.find(({ verdict }) => verdict === 'unsound') ?? null,
    advise: () => heatAdvice(draft, facts, method, best),
  })
}

function runTool(facts: JobFacts, method: MethodName, tool: JobTool, index: number, assume: Assume): ToolHeat {
  const inputs = toolInputs(facts, method, tool, index, assume)
  return { tool, index, inputs, heat: heatVerdict(inputs) }
}

const secondsOf = (name: string, value: number) => planValue(name, value, 's')

/** Adds the findings on the best tool. */
function tellTool(draft: Draft, facts: JobFacts, method: MethodName, { tool, index, inputs, heat }: ToolHeat): readonly Finding[] {
  const { alloy } = solderFill(method, facts)
  const material = solder(alloy)
  const defaults = heatVerdictDefaults[tool.kind]
  const { favourable, nominal, unfavourable } = heat.ends
  const liquidus = draft.value('liquidus', material.liquidusC.nominal, '°C', material.liquidusC.provenance)
  const steady = draft.value(`joint at steady state under the ${tool.name}`, nominal.result.steadyC, '°C')
  if (nominal.wettedAtS !== null) {
    draft.value('wetted after about', nominal.wettedAtS, 's')
    draft.value('lift the tool at', nominal.toolOffS, 's')
  }
  draft.value('bare wire to the insulation', jointShape(method, facts).stubMm, 'mm', rule('jg-insulation-gap-solder').source)
  noteHeat(draft, { tool, index, inputs, heat }, steady.name)
  const values = {
    nominal: secondsOf('wetted', nominal.wettedAtS ?? 0),
    slow: secondsOf('wetted, unfavourable end', unfavourable.wettedAtS ?? 0),
    favourable: secondsOf('wetted, favourable end', favourable.wettedAtS ?? 0),
    lift: secondsOf('lift the tool at', nominal.toolOffS),
    soon: secondsOf('in good time', defaults.soundWithinS),
    most: secondsOf('tool held on at most', defaults.wettedWithinS),
    steady,
    liquidus,
    superheat: planValue('superheat to wet', inputs.wettingSuperheatK ?? 30, 'K'),
  }
  const names = { tool: tool.name, alloy }
  return heat.findings.map((found) => {
    if (found.code === 'limit-kept' || found.code === 'limit-passed') return tellLimit(draft, facts, method, found)
    if (found.code === 'tube-limit-passed') {
      const limit = Number(found.values.limitC ?? 0)
      return draft.say('tube-limit-passed', found.verdict, { values: { limit: planValue('tube, for seconds', limit, '°C') } })
    }
    return draft.say(found.code, found.verdict, { values, names, rule: 'he-superheat' })
  })
}

function tellLimit(draft: Draft, facts: JobFacts, method: MethodName, found: HeatVerdict['findings'][number]): Finding {
  const second = found.values.conductor === 1 && facts.beyond !== null
  const insulation = second ? (facts.beyond?.insulationName ?? facts.insulationName) : facts.insulationName
  const limitC = Number(found.values.limitC ?? 0)
  const nominalC = Number(found.values.nominalC ?? 0)
  const hottestC = Math.max(nominalC, Number(found.values.favourableC ?? 0), Number(found.values.unfavourableC ?? 0))
  // Where only another end passes the limit, that end is told.
  const asNominal = found.code === 'limit-kept' || nominalC > limitC
  const values = {
    stub: planValue('bare wire to the insulation', jointShape(method, facts).stubMm, 'mm'),
    peak: planValue('edge of the insulation', asNominal ? nominalC : hottestC, '°C'),
    limit: planValue('for seconds', limitC, '°C'),
  }
  const names = { insulation, end: asNominal ? '' : ' at the hotter end' }
  return draft.say(found.code === 'limit-kept' ? 'limit-kept' : 'limit-passed', found.verdict, { values, names })
}

/** The same in brief, for the list of tools. */
function toolReasons(facts: JobFacts, method: MethodName, item: ToolHeat): readonly string[] {
  return tellTool(new SectionDraft('heating', heatingWords, facts.units), facts, method, item).map(({ text }) => text)
}
