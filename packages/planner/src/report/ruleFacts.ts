import type { MethodName, RuleFacts } from '@strandwise/core'
import { clampedKinds, type JobFacts, studKinds } from '../facts/inner.ts'
import { alloyFor, isSoldered, type JudgedWay } from '../ways/inner.ts'

/** Facts implied by a rule set that no field states: the negative side tied to the frame, the battery disconnected, other batteries close by. */
const ofBodies: Readonly<Record<string, readonly string[]>> = {
  'road-vehicle': ['battery-disconnect', 'negative-ground'],
  'small-craft': ['battery-disconnect', 'negative-ground', 'battery-near'],
}

/** Situations that follow from the job and the way. */
function situations(facts: JobFacts, way: JudgedWay | null): readonly string[] {
  const { job, terminal } = facts
  const found = (job.circuit.rules ?? []).flatMap((body) => ofBodies[body] ?? [])
  if (way !== null && way.cut.insertMm > 0) found.push('inserted-length')
  if (way !== null && way.cut.splices > 1) found.push('more-than-one-splice')
  if (facts.beyond !== null && facts.beyond.material !== facts.material) found.push('unlike-metals')
  if (job.terminal?.metal !== undefined && job.terminal.matingMetal !== undefined && job.terminal.metal !== job.terminal.matingMetal)
    found.push('unlike-metals')
  if (facts.loadedInBundle > 1) found.push('bundle')
  if (studKinds.includes(terminal.kind)) found.push('stud-terminal')
  if (clampedKinds.includes(terminal.kind)) found.push('screw-clamp')
  if (terminal.kind === 'push-on') found.push('push-on-connector')
  if (facts.temporary) found.push('emergency-repair')
  if (facts.slackMm === 0) found.push('no-slack')
  if (facts.duty !== null && facts.duty.onS < 120) found.push('short-time-load')
  if (facts.strandCount === 1) found.push('solid-or-solder-tinned')
  if (facts.material === 'copper-clad-aluminium') found.push('light-or-silvery-wire')
  if ((job.readings ?? []).some(({ when }) => when === 'moved')) found.push('intermittent-fault')
  if (job.sleeves?.length === 0) found.push('no-sleeve')
  return [...new Set(found)]
}

/** Work on the wire in the decision: without cutting, rules on cutting do not apply. */
type StepsTaken = 'none' | 'measuring' | 'joining'

/** The facts of the job by the field names of the trade rules; a list means any of them. */
export function ruleFactsOf(facts: JobFacts, way: JudgedWay | null, taken: StepsTaken): RuleFacts {
  const { job } = facts
  const method: MethodName | null = way?.method ?? null
  const soldered = method !== null && isSoldered(method)
  const measuring = taken === 'none' ? [] : ['measuring', 'proving']
  const hot = soldered || (way !== null && way.covering.cutMm > 0) || method === 'crimped-and-sealed-butt-splice'
  const joins = taken === 'joining' && way !== null
  const step = [...measuring, ...(joins ? ['cutting', 'stripping'] : []), ...(hot ? ['heating'] : []), ...(soldered ? ['tinning'] : [])]
  const covered = way?.covering.sleeve?.material ?? (way?.covering.needed?.lined === true ? 'polyolefin-adhesive-lined' : undefined)
  const sleeves = joins
    ? [...new Set([...(covered === undefined ? [] : [covered]), ...(method === 'crimped-and-sealed-butt-splice' ? ['polyolefin-adhesive-lined'] : [])])]
    : []
  const used = joins && way.heat !== null ? [way.heat.tool.kind] : []
  const shrinks = hot && !soldered ? ['hot-air'] : []
  return {
    circuit: job.circuit.kind,
    rules: job.circuit.rules ?? [],
    situation: situations(facts, way),
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
    tool: [...new Set([...used, ...shrinks])],
    sleeve: sleeves,
    fuse: job.circuit.fuseA === undefined ? 'missing' : 'given',
    reading: taken === 'none' ? [] : [...new Set([...(job.readings ?? []).map((reading) => reading.kind), ...(joins ? ['drop'] : [])])],
    step,
    ...(method === null ? {} : { method }),
    ...(job.terminal === undefined && method !== 'new-crimped-terminal' ? {} : { terminal: 'given' }),
    ...(job.circuit.fuseDistanceM === undefined ? {} : { fuseDistanceM: job.circuit.fuseDistanceM }),
    ...(job.damage.brokenStrands === undefined ? {} : { brokenStrands: job.damage.brokenStrands }),
    ...(soldered && method !== null ? { solder: [alloyFor(method, facts)] } : {}),
  }
}
