import { thermalTimeConstantS } from '@strandwise/core'
import { wireText } from '../decision/inner.ts'
import { figure, type JobFacts, type PlanStep, type PlanValue, planValue, printed, rule } from '../facts/inner.ts'
import { assumed } from '../job/inner.ts'
import { isLined, isSoldered, methodTitles, splicedOutside } from '../ways/inner.ts'
import { currentToRead } from './fewCounts.ts'
import { fuseKindText } from './fuseText.ts'
import { joining, releasing, seating } from './joining.ts'
import { newRun } from './newRun.ts'
import { step } from './step.ts'
import { torqueWords } from './torque.ts'
import { fuseChangeOf, type Mending, type Work } from './worked.ts'

/** Steps of the work in order, each with its check; `proof` has the limits of the final reading. */
export function sequenceFor(work: Work, proof: readonly PlanValue[]): readonly PlanStep[] {
  const { facts, decided } = work
  const { units } = facts
  switch (decided.code) {
    case 'refused':
    case 'leave':
      return []
    case 'measure':
      return [step(units, 'take-reading', { names: { next: work.decision.says } })]
    case 'measure-short':
      return [step(units, 'find-short')]
    case 'data-pair':
      return [step(units, 'switch-off'), step(units, 'makers-procedure')]
    default:
      return decided.way === null ? withoutJoint(work) : mending({ ...work, way: decided.way, to: decided.way.facts }, proof)
  }
}

function withoutJoint(work: Work): readonly PlanStep[] {
  const { facts, decided } = work
  const { units } = facts
  const fuse = planValue('fuse', work.decision.fuseA ?? facts.job.circuit.fuseA ?? 0, 'A')
  const done = {
    'fit-fuse': fuseSteps(work),
    'fit-fuse-by-curve': fuseSteps(work),
    'fuse-contact': [step(units, 'clean-fuse', { values: { fuse } })],
    'return-contact': [step(units, 'clean-return', { names: { torque: torqueWords(facts) } })],
    supply: [step(units, 'clean-supply')],
    load: [step(units, 'mend-load')],
    leak: [step(units, 'find-leak')],
  }[decided.code as 'fit-fuse'] as readonly PlanStep[]
  return [...vented(facts), step(units, 'switch-off'), ...done, step(units, 'power-on'), step(units, 'record')]
}

const vented = (facts: JobFacts): readonly PlanStep[] => (facts.flammableVapour ? [step(facts.units, 'vent')] : [])

/** The step that changes or adds a fuse, if any. */
function fuseSteps(work: Work): readonly PlanStep[] {
  const { facts, decision } = work
  const change = fuseChangeOf(work)
  const old = facts.job.circuit.fuseA
  const names = { kind: fuseKindText(facts) }
  if (change !== null && decision.fuseA === null && old !== undefined) return [step(facts.units, 'swap-by-curve', { values: change.values, names })]
  if (decision.fuseA === null || (change === null && decision.fuseA === old)) return []
  const values = {
    fuse: planValue('fuse to fit', decision.fuseA, 'A'),
    old: planValue('fuse as found', old ?? 0, 'A'),
    near: planValue('fuse from the source, at most', figure('wp-fuse-near-source', 'maxDistanceMm') / 1000, 'm', rule('wp-fuse-near-source').source),
  }
  return [step(facts.units, old === undefined ? 'add-fuse' : 'swap-fuse', { values, names })]
}

/** The first step: wire and fuse to fetch. */
function fetched(work: Work): readonly PlanStep[] {
  const { facts, decision, decided } = work
  const { wire, fuseA } = decision
  const list: string[] = []
  if (wire !== null)
    list.push(
      `${printed(wire.lengthM < 1 ? 1000 * wire.lengthM : wire.lengthM, wire.lengthM < 1 ? 'mm' : 'm', facts.units)} of ${wireText(decided.way?.facts ?? facts)}`,
    )
  if (fuseA !== null && fuseA !== facts.job.circuit.fuseA) list.push(`a ${printed(fuseA, 'A', facts.units)} ${fuseKindText(facts)}`)
  list.push(...(decided.way?.toFetch ?? []))
  return list.length === 0 ? [] : [step(facts.units, 'fetch', { names: { list: list.join('; ') } })]
}

function mending(work: Mending, proof: readonly PlanValue[]): readonly PlanStep[] {
  const { facts, way } = work
  return [
    ...vented(facts),
    ...fetched(work),
    step(facts.units, 'switch-off'),
    ...fuseSteps(work),
    ...(way.method === 'replace-the-run' ? newRun(work) : cutAndJoin(work, proof)),
    ...afterwards(work, proof),
  ]
}

function cutAndJoin(work: Mending, proof: readonly PlanValue[]): readonly PlanStep[] {
  const { to, way } = work
  const { cut, method } = way
  const { units } = to
  const each = planValue('cut back', cut.eachMm, 'mm', rule('cb-bright-metal').source)
  const terminal = method === 'new-crimped-terminal'
  return [
    ...(terminal ? [releasing(work)] : []),
    step(units, cut.ends === 1 ? 'cut-one-end' : 'cut-both-ends', { values: { each } }),
    ...(cut.insertMm > 0 ? [inserting(work)] : []),
    ...slideOn(work),
    ...joining(work),
    ...(isSoldered(method) && method !== 'solder-sleeve' ? [step(units, 'wash-flux')] : []),
    // Nothing bare is live where vapour may stand.
    ...(readsMillivolts(to) && !terminal && !to.flammableVapour ? [ratioStep(to, proof)] : []),
    ...shrink(work),
    ...(terminal ? [seating(work)] : []),
  ]
}

function ratioStep({ units, currentA }: JobFacts, [limit]: readonly PlanValue[]): PlanStep {
  const needs = limit === undefined ? null : currentToRead(limit.value, currentA)
  return needs === null ? step(units, 'ratio') : step(units, 'ratio-few', { values: { needs } })
}

function inserting({ to, way }: Mending): PlanStep {
  const outside = splicedOutside(way.method, to)
  const lay = outside
    ? 'strands as fine as the old, long enough that both splices lie where nothing moves'
    : way.cut.splices === 1
      ? 'its splice well back from the end'
      : 'its two splices staggered, well back from the end'
  const values = {
    insert: planValue('to put in', way.cut.insertMm, 'mm', rule('cb-jumper-15cm').source),
    keep: planValue('slack to keep', assumed.serviceSlackMm.value, 'mm', assumed.ours),
  }
  return step(to.units, 'insert', { values, names: { wire: wireText(to), lay } })
}

/** Sleeves go onto the wire before it is joined. */
function slideOn({ to, way }: Mending): readonly PlanStep[] {
  const { covering, method } = way
  if (to.job.circuit.kind === 'thermocouple') return []
  if (method === 'solder-sleeve') return [step(to.units, 'slide-solder-sleeve')]
  if (method === 'new-crimped-terminal' && to.job.terminal?.sealInsideMm !== undefined) return [step(to.units, 'slide-seal')]
  const name = covering.sleeve === null ? covering.needed?.words.split(' that ')[0] : covering.sleeve.name
  if (covering.cutMm === 0) return []
  return [step(to.units, 'slide-sleeve', { values: { cut: planValue('cut length', covering.cutMm, 'mm') }, names: { sleeve: name ?? 'sleeve' } })]
}

function shrink({ to, way }: Mending): readonly PlanStep[] {
  if (to.job.circuit.kind === 'thermocouple') return []
  const { covering, method, cut } = way
  const sealed = method === 'crimped-and-sealed-butt-splice' || (method === 'new-crimped-terminal' && cut.insertMm > 0)
  const own = covering.cutMm > 0 && method !== 'solder-sleeve'
  if (!own && !sealed) return []
  if (to.flammableVapour) return [step(to.units, 'shrink-later')]
  const lined = sealed || (covering.sleeve !== null && isLined(covering.sleeve)) || covering.needed?.lined === true
  const names = {
    sleeve: own ? 'sleeve' : `sealing sleeve of the ${method === 'new-crimped-terminal' ? 'splice' : methodTitles[method].replace('crimped and sealed ', '')}`,
    seal: lined ? 'Adhesive shows all round at both ends.' : 'Tight on the insulation at both ends, no scorch.',
  }
  return [step(to.units, 'shrink', { names })]
}

/** False for signals, whose millivolts a hand meter cannot show. */
export const readsMillivolts = ({ job }: JobFacts): boolean => !['signal', 'thermocouple', 'data-pair'].includes(job.circuit.kind)

/** Time under real load before the reading counts. */
export function settlingS(facts: JobFacts): number {
  const tau = thermalTimeConstantS({ ...facts.wire, ambientC: facts.ambientC, currentA: 0 })
  return Math.max(figure('pr-load-test-time', 'minS'), figure('pr-load-test-time', 'minTimeConstants') * tau)
}

function afterwards(work: Mending, proof: readonly PlanValue[]): readonly PlanStep[] {
  const { facts, to, decision } = work
  const { units } = facts
  const place = to.terminal.place
  const steps: PlanStep[] = [to.wet ? step(units, 'tie-drip', { names: { place } }) : step(units, 'tie')]
  const fuse = decision.fuseA
  if (facts.job.circuit.kind === 'thermocouple') steps.push(step(units, 'switch-on-instrument'))
  else
    steps.push(
      step(units, 'shorts'),
      fuse === null ? step(units, 'power-on') : step(units, 'power-on-fuse', { values: { fuse: planValue('fuse', fuse, 'A') } }),
    )
  steps.push(lastReading(work, proof))
  steps.push(step(units, facts.temporary ? 'record-temporary' : 'record'))
  return steps
}

/** The joint is covered now and insulation is not pierced: the reading is taken between open metal on both sides. */
function lastReading({ facts, to, way }: Mending, proof: readonly PlanValue[]): PlanStep {
  const { units } = facts
  if (!readsMillivolts(facts)) return step(units, 'last-reading-signal')
  const settle = planValue('load on before reading', settlingS(to), 's', rule('pr-load-test-time').source)
  const { duty } = facts
  const on = duty !== null && duty.onS < settle.value ? planValue('on at most', duty.onS, 's') : null
  if (way.method === 'replace-the-run') {
    const allowed = planValue('drop over the run, at most', to.allowedDropV, 'V')
    return on === null ? step(units, 'last-reading-run', { values: { settle, allowed } }) : step(units, 'last-reading-run-duty', { values: { on, allowed } })
  }
  const [limit, between] = proof
  const names = {
    limit:
      limit === undefined
        ? 'No more than as much of its own wire drops.'
        : between !== undefined
          ? `At most ${printed(between.high ?? between.value, between.unit, units)} ${between.name}; more means the joint.`
          : `At most ${printed(limit.value, limit.unit, units)} over the joint, less what the plain wire between drops.`,
  }
  if (on !== null) return step(units, 'last-reading-duty', { values: { on }, names }, proof)
  return step(units, 'last-reading', { values: { settle }, names }, proof)
}
