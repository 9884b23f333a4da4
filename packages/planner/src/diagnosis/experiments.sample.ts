import type { JobReading, Place, RepairJob } from '../job/index.ts'
import { faultyCircuit, readJob, take } from './faults.sample.ts'
import { type CauseId, diagnose, rankCauses } from './index.ts'
import { readVolts, seeded, soundCircuit, type TrueCircuit } from './nodalCircuit.sample.ts'

// Statistics over many random circuits: a few in the unit tests, all in the long proof.

const spans: readonly (readonly [Place, Place])[] = [
  ['source+', 'fuse-in'],
  ['fuse-in', 'fuse-out'],
  ['fuse-out', 'joint-in'],
  ['joint-in', 'joint-out'],
  ['joint-out', 'terminal-wire'],
  ['terminal-wire', 'terminal-mate'],
  ['load-', 'source-'],
  ['fuse-out', 'terminal-mate'],
  ['source+', 'load+'],
]

function readAll(circuit: TrueCircuit, random: () => number): RepairJob {
  const withCurrent = random() < 0.6
  const chosen = spans.filter(() => random() < 0.6)
  return { ...circuit.job, readings: chosen.map(([from, to]) => readVolts(circuit, from, to, random, withCurrent)) }
}

/** Number of healthy circuits, of so many, that are called faulty. */
export function healthyCalledFaulty(count: number, seed: number): number {
  const random = seeded(seed)
  let called = 0
  for (let n = 0; n < count; n += 1) if (diagnose(readAll(soundCircuit(random), random)).fault === 'proven') called += 1
  return called
}

const faulted = ['fuse-out|joint-in', 'joint-in|joint-out', 'terminal-wire|terminal-mate', 'joint-out|terminal-wire'] as const

/** Share of series faults (three times the healthy interval) proven at their own stretch. */
export function faultsFoundAtPlace(count: number, seed: number): number {
  const random = seeded(seed)
  let found = 0
  for (let n = 0; n < count; n += 1) {
    const circuit = soundCircuit(random)
    const key = faulted[n % faulted.length] as (typeof faulted)[number]
    const [from, to] = key.split('|') as [Place, Place]
    const healthy = diagnose(circuit.job).stretches.find((stretch) => stretch.from === from && stretch.to === to)
    if (healthy === undefined) throw new Error(`no stretch from ${from} to ${to}`)
    const faultOhm = (3 * (healthy.allowedV - healthy.healthyV.low)) / (circuit.job.load.currentA as number)
    const bad = { ...circuit, ohms: { ...circuit.ohms, [key]: (circuit.ohms[key] as number) + faultOhm } }
    const readings: readonly JobReading[] = [readVolts(bad, from, to, random, true), readVolts(bad, 'source+', 'load+', random, true)]
    const { at } = diagnose({ ...circuit.job, readings })
    if (at?.from === from && at.to === to) found += 1
  }
  return found / count
}

/** Score of one cause: share of runs in the leading set and mean size of that set, before and after the next reading. */
export interface CauseScore {
  readonly cause: CauseId
  readonly covered: number
  readonly size: number
  readonly coveredAfter: number
  readonly sizeAfter: number
}

export const everyCause: readonly CauseId[] = [
  'open-lead',
  'high-resistance-pin',
  'corroded-strands',
  'overloaded-terminal',
  'lost-spring-force',
  'bad-return',
  'weak-supply',
  'load-failed',
  'load-stalled',
  'coil-open',
  'coil-short',
  'short-to-circuit',
  'dry-joint',
  'fracture-in-contact',
  'water-in-run',
]

/** Random faults of one cause, read by a hand meter; each reading of a round is taken with this probability. */
export function scoreCause(cause: CauseId, count: number, chance: number, seed: number): CauseScore {
  const random = seeded(seed)
  let [covered, size, coveredAfter, sizeAfter] = [0, 0, 0, 0]
  for (let n = 0; n < count; n += 1) {
    const circuit = faultyCircuit(cause, random)
    const job = readJob(circuit, random, chance)
    const { leading, next } = rankCauses(job)
    covered += leading.includes(cause) ? 1 : 0
    size += leading.length
    const after = next === null ? leading : rankCauses({ ...job, readings: [...(job.readings ?? []), take(circuit, next.probe, random)] }).leading
    coveredAfter += after.includes(cause) ? 1 : 0
    sizeAfter += after.length
  }
  return { cause, covered: covered / count, size: size / count, coveredAfter: coveredAfter / count, sizeAfter: sizeAfter / count }
}

export const meanOf = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length
