import { type Chain, restingSupplyV, sound } from '../../circuit/inner.ts'
import type { CauseId } from '../diagnosisShapes.ts'
import type { Fault } from './model.ts'

/** Range of a fault's size on a logarithmic scale, with soft ends. */
interface Wall {
  readonly low: number
  readonly high: number
}

/** One cause at one place: ranges of its sizes, and its effect on the circuit. */
export interface Candidate {
  readonly id: CauseId
  readonly sizes: readonly Wall[]
  readonly apply: (fault: Fault, sizes: ArrayLike<number>) => void
}

const log = (low: number, high: number): Wall => ({ low: Math.log(low), high: Math.log(Math.max(low * 1.01, high)) })

/** Open circuit from this multiple of the load's resistance: the load no longer works. */
const openFrom = 200
const openOhm = 1e9
/** Largest fault resistance, over the load's, at which the load still runs badly. */
const badUpTo = 10

type Places = readonly [from: string, to: string]

/** Every cause at every possible place in this circuit. */
export function candidatesFor(chain: Chain, mostReadA: number): readonly Candidate[] {
  const { input, places, loadAt } = chain
  const workingOhm = input.supplyV / input.currentA
  const leastOhm = (sound.faultShareOfBudget * input.allowedDropV) / input.currentA
  const gapOf = ([from, to]: Places): number => {
    const at = places.indexOf(from as (typeof places)[number])
    return at >= 0 && places[at + 1] === to ? at : -1
  }
  const feed = input.where === 'feed'
  const feedWire: readonly Places[] = [
    ['source+', 'fuse-in'],
    ...(feed
      ? ([
          ['fuse-out', 'joint-in'],
          ['joint-out', 'terminal-wire'],
        ] as const)
      : ([['fuse-out', 'terminal-wire']] as const)),
  ]
  const joint: Places = ['joint-in', 'joint-out']
  const behindPlug: Places = feed ? ['joint-out', 'terminal-wire'] : ['load-', 'joint-in']
  const contact: Places = ['terminal-wire', 'terminal-mate']
  const back: readonly Places[] = feed
    ? [
        ['load-', 'return-joint'],
        ['return-joint', 'source-'],
      ]
    : [
        ['load-', 'joint-in'],
        ['joint-out', 'source-'],
      ]
  const series = (id: CauseId, where: readonly Places[], wall: Wall): readonly Candidate[] =>
    where
      .map(gapOf)
      .filter((gap) => gap >= 0)
      .map((gap) => ({
        id,
        sizes: [wall],
        apply: (fault, sizes) => {
          fault.gap = gap
          fault.stillOhm = Math.exp(sizes[0] as number)
          fault.movedOhm = fault.stillOhm
          fault.stirs = true
        },
      }))
  /** A loose contact: one size at rest, worse by a free factor when moved. */
  const loose = (id: CauseId, where: readonly Places[], still: Wall, moved: Wall): readonly Candidate[] =>
    where
      .map(gapOf)
      .filter((gap) => gap >= 0)
      .map((gap) => ({
        id,
        sizes: [still, moved],
        apply: (fault, sizes) => {
          fault.gap = gap
          fault.stillOhm = Math.exp(sizes[0] as number)
          fault.movedOhm = fault.stillOhm + Math.exp(sizes[1] as number)
        },
      }))
  const bad = log(leastOhm, badUpTo * workingOhm)
  const moved = log(leastOhm, openOhm)
  const overloaded = input.terminalA !== null && Math.max(input.currentA, mostReadA) > input.terminalA
  const found: Candidate[] = [
    ...series('open-lead', [...feedWire, joint], log(openFrom * workingOhm, openOhm)),
    ...series('high-resistance-pin', [contact], bad),
    ...series('corroded-strands', feedWire, log(leastOhm, 3 * workingOhm)),
    ...(overloaded ? series('overloaded-terminal', [contact], bad) : []),
    ...loose('lost-spring-force', [contact], log(leastOhm / 100, badUpTo * workingOhm), moved),
    ...series('bad-return', back, log(leastOhm, openOhm)),
    ...series('dry-joint', [joint], bad),
    ...loose('fracture-in-contact', [joint, behindPlug], log(leastOhm / 100, 2 * leastOhm), moved),
    ...supplyCandidates(chain, workingOhm),
    ...loadCandidates(chain),
    {
      id: 'short-to-circuit',
      sizes: [log(1e-3, 5)],
      apply: (fault, sizes) => {
        fault.fuseOpen = true
        fault.leakOhm = Math.exp(sizes[0] as number)
      },
    },
    {
      id: 'water-in-run',
      sizes: [log(500, 2e5)],
      apply: (fault, sizes) => {
        fault.leakOhm = Math.exp(sizes[0] as number)
      },
    },
  ]
  return loadAt > 0 ? found : []
}

/** Supply faults: low voltage, or high internal resistance. */
function supplyCandidates({ input }: Chain, workingOhm: number): readonly Candidate[] {
  const resting = restingSupplyV(input)
  const middle = (resting.low + resting.high) / 2
  return [
    {
      id: 'weak-supply',
      sizes: [log(0.02, (0.99 * resting.low) / middle)],
      apply: (fault, sizes) => {
        fault.supplyScale = Math.exp(sizes[0] as number)
      },
    },
    {
      id: 'weak-supply',
      sizes: [log(1.5 * sound.sourceShare.high * workingOhm, 5 * workingOhm)],
      apply: (fault, sizes) => {
        fault.supplyOhm = Math.exp(sizes[0] as number)
      },
    },
  ]
}

/** Load faults: a motor or coil can open, short or stall; any load can fail. */
function loadCandidates({ input }: Chain): readonly Candidate[] {
  const { load, supplyV, currentA } = input
  const coil = load.kind === 'motor' || load.kind === 'power' || load.kind === 'signal'
  const workingOhm = supplyV / currentA
  const found: Candidate[] = [
    {
      id: 'load-failed',
      sizes: [log(1e-7, 0.25)],
      apply: (fault, sizes) => {
        fault.loadScale = Math.exp(sizes[0] as number)
        fault.idleScale = 1 / fault.loadScale
      },
    },
  ]
  if (coil) {
    found.push(
      {
        id: 'coil-open',
        sizes: [],
        apply: (fault) => {
          fault.loadScale = 1e-8
          fault.idleScale = 1e8
        },
      },
      {
        id: 'coil-short',
        sizes: [log(1 / 50, 0.7)],
        apply: (fault, sizes) => {
          const share = Math.exp(sizes[0] as number)
          fault.loadOhm = share * workingOhm
          fault.idleScale = share
        },
      },
    )
  }
  if (load.stallA !== null || load.kind === 'motor') {
    const stallOhm = load.stallA === null ? log(workingOhm / 10, workingOhm / 2) : log((0.85 * supplyV) / load.stallA, (1.15 * supplyV) / load.stallA)
    found.push({
      id: 'load-stalled',
      sizes: [stallOhm],
      apply: (fault, sizes) => {
        fault.loadOhm = Math.exp(sizes[0] as number)
      },
    })
  }
  return found
}
