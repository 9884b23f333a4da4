import { sound } from '../circuit/inner.ts'
import type { Diagnosis, Stretch } from '../diagnosis/index.ts'
import { type Finding, figure, findingOf, type JobFacts, type PlanSection, planValue } from '../facts/inner.ts'
import type { JudgedWay, WireChoice } from '../ways/inner.ts'
import { jointShape } from '../ways/inner.ts'
import type { DecisionKind } from './decisionShapes.ts'
import { decisionWords } from './decisionWords.ts'

/** The decision before it is worded. */
export interface Decided {
  readonly kind: DecisionKind
  readonly code: keyof typeof decisionWords
  /** null if nothing is joined. */
  readonly way: JudgedWay | null
  readonly why: Finding
}

const damageWords: Readonly<Record<string, string>> = {
  broken: 'broken',
  'partly-broken': 'partly broken',
  chafed: 'chafed',
  corroded: 'corroded',
  overheated: 'overheated',
}

/** Basis of the decision. */
export interface Grounds {
  readonly facts: JobFacts
  readonly diagnosis: Diagnosis
  readonly readings: PlanSection
  readonly wire: WireChoice
  /** Best first; computed on demand, as not every decision needs them. */
  readonly ways: () => readonly JudgedWay[]
  /** The same for a fault in the terminal, whatever place of damage was given. */
  readonly waysAtTerminal: () => readonly JudgedWay[]
}

/** Decides: visible damage is mended whatever the readings say; without it the readings decide. */
export function decideKind(grounds: Grounds): Decided {
  const { facts, wire, ways } = grounds
  if (facts.job.circuit.kind === 'data-pair') return { kind: 'mend', code: 'data-pair', way: null, why: found(facts, 'data-pair', 'caution') }
  const { kind } = facts.job.damage
  if (kind !== 'unknown') {
    const why = findingOf(decisionWords, facts.units, 'damage-seen', 'sound', { names: { damage: damageWords[kind] ?? kind } })
    return mend(ways(), why)
  }
  const unseen = decideUnseen(grounds)
  // An unsuitable wire is replaced whatever else was found, once the fault is known or excluded.
  if (unseen.kind !== 'measure first' && wire.found.against !== null && unseen.code !== 'supply' && unseen.code !== 'load') {
    const run = ways().find(({ method }) => method === 'replace-the-run')
    if (run !== undefined) return { kind: 'replace the run', code: 'new-run', way: run, why: wire.found.against }
  }
  return unseen
}

const found = (facts: JobFacts, code: keyof typeof decisionWords, verdict: Finding['verdict']): Finding => findingOf(decisionWords, facts.units, code, verdict)

function mend(ways: readonly JudgedWay[], why: Finding, only?: JudgedWay['method']): Decided {
  const way = (only === undefined ? undefined : ways.find(({ method }) => method === only)) ?? (ways[0] as JudgedWay)
  const { cut, method } = way
  if (method === 'replace-the-run') return { kind: 'replace the run', code: 'new-run', way, why }
  if (method === 'new-crimped-terminal') return { kind: 'mend', code: cut.insertMm > 0 ? 'terminal-insert' : 'terminal', way, why }
  if (way.facts.job.circuit.kind === 'thermocouple') return { kind: 'mend', code: 'thermocouple', way, why }
  return { kind: 'mend', code: cut.insertMm === 0 ? 'splice' : way.facts.flexes ? 'splice-outside' : 'splice-insert', way, why }
}

/** Decides by the readings alone. */
function decideUnseen({ facts, diagnosis, readings, wire, ways, waysAtTerminal }: Grounds): Decided {
  const summary = (code: string) => readings.findings.find((finding) => finding.code === code)
  const [first] = readings.findings
  const short = summary('short-proven')
  if (short !== undefined) return { kind: 'measure first', code: 'measure-short', way: null, why: short }
  const weak = summary('supply-proven-weak')
  if (weak !== undefined) return { kind: 'mend', code: 'supply', way: null, why: weak }
  const load = summary('load-proven')
  if (load !== undefined) return { kind: 'mend', code: 'load', way: null, why: load }
  const leak = summary('leak-proven')
  if (leak !== undefined) return { kind: 'mend', code: 'leak', way: null, why: leak }
  if (diagnosis.fault === 'proven' && diagnosis.at !== null) {
    const why = summary('fault-proven') ?? (first as Finding)
    return decideAt(diagnosis.at, diagnosis, { ways, waysAtTerminal }, why)
  }
  const worn = wornJoint(facts, diagnosis)
  if (worn !== null) return mend(ways(), worn)
  if (diagnosis.fault === 'none here') {
    const { fuseChange } = wire.found
    if (fuseChange !== null) return { kind: 'mend', code: wire.found.fuseA === null ? 'fit-fuse-by-curve' : 'fit-fuse', way: null, why: fuseChange }
    return { kind: 'leave it', code: 'leave', way: null, why: summary('none-here') ?? (first as Finding) }
  }
  return { kind: 'measure first', code: 'measure', way: null, why: first as Finding }
}

const atPlaces = (at: Pick<Stretch, 'from' | 'to'>, from: string, to: string): boolean => at.from === from && at.to === to
/** Stretches of plain wire without a place for a probe. */
const wirePieces = [
  ['source+', 'fuse-in'],
  ['fuse-out', 'joint-in'],
  ['joint-out', 'terminal-wire'],
] as const

function decideAt(
  at: Pick<Stretch, 'from' | 'to'>,
  diagnosis: Diagnosis,
  { ways, waysAtTerminal }: Pick<Grounds, 'ways' | 'waysAtTerminal'>,
  why: Finding,
): Decided {
  if (atPlaces(at, 'joint-in', 'joint-out')) return mend(ways(), why)
  if (atPlaces(at, 'fuse-in', 'fuse-out')) return { kind: 'mend', code: 'fuse-contact', way: null, why }
  if (atPlaces(at, 'terminal-wire', 'terminal-mate') || atPlaces(at, 'terminal-mate', 'load+')) return mend(waysAtTerminal(), why, 'new-crimped-terminal')
  if (atPlaces(at, 'load+', 'load-')) return { kind: 'mend', code: 'load', way: null, why }
  if (at.from === 'load-' || at.from === 'return-joint') return { kind: 'mend', code: 'return-contact', way: null, why }
  if (wirePieces.some(([from, to]) => atPlaces(at, from, to))) return mend(ways(), why, 'replace-the-run')
  if (diagnosis.next !== null) return { kind: 'measure first', code: 'measure', way: null, why }
  // No narrower stretch can be measured: the joint is in it, and can be mended.
  return mend(ways(), why)
}

/** A joint above 1.5 times its own length of wire, though below the limit of a proven fault. */
function wornJoint(facts: JobFacts, { stretches }: Diagnosis): Finding | null {
  const joint = stretches.find(({ from, to }) => from === 'joint-in' && to === 'joint-out')
  if (joint?.measuredV == null) return null
  const lengthMm = jointShape('crimped-butt-splice', facts).lengthMm
  const agedV = (joint.healthyV.high / sound.jointMm.high) * figure('pr-mv-splice', 'agedMaxRatio') * lengthMm
  if (joint.measuredV.low <= agedV) return null
  const values = { measured: planValue('over the joint', joint.measuredV.low, 'V'), aged: planValue('aged joint, at most', agedV, 'V') }
  return findingOf(decisionWords, facts.units, 'worn', 'caution', { values, rule: 'pr-mv-splice' })
}
