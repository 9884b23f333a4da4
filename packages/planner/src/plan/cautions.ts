import { cautionRules, type MethodName, type RuleFacts, rulesHolding } from '@strandwise/core'
import type { JobFacts } from '../facts/jobFacts.ts'
import { alloyFor, solderedMethods } from '../facts/soldered.ts'
import { rule } from './rule.ts'

/** Said whatever the job: the rules have conditions of place that a job does not carry. */
const always = ['ca-power-off', 'ca-prove-dead', 'ca-all-sources', 'ca-jewellery', 'ca-eyes-cutting', 'ca-identify-wire'] as const
export const generalCautions: readonly string[] = always.map((id) => rule(id).statement)
export const localCodes = 'Local codes and licensed practice come before this plan.'

/** What comes with a body of rules, though no answer names it: the negative side tied to the frame, a battery taken off and others close by. */
const situations: Readonly<Record<string, readonly string[]>> = {
  'road-vehicle': ['battery-disconnect', 'negative-ground', 'restraint-system-near'],
  'small-craft': ['battery-disconnect', 'negative-ground', 'battery-near'],
}

/** The facts of the job in the words of the trade rules; a list means any of them. */
function jobRuleFacts(facts: JobFacts, method: MethodName): RuleFacts {
  const { job } = facts
  const soldered = solderedMethods.includes(method)
  return {
    circuit: job.circuit.kind,
    rules: job.circuit.rules ?? [],
    situation: (job.circuit.rules ?? []).flatMap((name) => situations[name] ?? []),
    location: facts.location,
    vibration: facts.vibration,
    flexes: facts.flexes,
    flammableVapour: facts.flammableVapour,
    supplyV: facts.supplyV,
    currentA: facts.currentA,
    areaMm2: facts.areaMm2,
    loadedInBundle: facts.loadedInBundle,
    ambientC: facts.ambientC,
    hottestC: facts.hottestC,
    coldestC: facts.coldestC,
    fromTerminationMm: job.damage.fromTerminationMm,
    metal: facts.material,
    insulation: facts.insulationName,
    damage: job.damage.kind,
    method,
    tool: (job.tools ?? []).map((tool) => tool.kind),
    sleeve: ['any', ...(job.sleeves ?? []).map((sleeve) => sleeve.material)],
    fuse: job.circuit.fuseA === undefined ? 'missing' : 'given',
    reading: (job.readings ?? []).map((reading) => reading.kind),
    step: ['measuring', 'cutting', 'stripping', 'heating', 'proving', ...(soldered ? ['tinning'] : [])],
    ...(job.terminal === undefined ? {} : { terminal: 'given' }),
    ...(job.circuit.fuseDistanceM === undefined ? {} : { fuseDistanceM: job.circuit.fuseDistanceM }),
    ...(job.damage.brokenStrands === undefined ? {} : { brokenStrands: job.damage.brokenStrands }),
    ...(soldered ? { solder: [alloyFor(method, facts)] } : {}),
  }
}

/** The cautions that this job needs, the general ones first. The stop list comes before them. */
export function cautionsFor(facts: JobFacts, method: MethodName): readonly string[] {
  const held = rulesHolding(cautionRules, jobRuleFacts(facts, method))
  const acting = held.filter((item) => item.effect === 'forbids' || item.effect === 'requires' || item.effect === 'limits')
  const lines = [...generalCautions, ...acting.map((item) => item.statement)]
  if (facts.flammableVapour) lines.unshift(rule('ca-no-hot-work-fuel').statement)
  lines.push(localCodes)
  return [...new Set(lines)]
}
