import type { JobReading, Place, RepairJob } from '../job/index.ts'
import type { CauseId, Probe } from './index.ts'
import { type Meter, shown, solveNodes, soundCircuit, type TrueCircuit, voltMeter } from './nodalCircuit.sample.ts'

// Faults inserted into a sound circuit, and readings of it by the nodal solver.

/** A faulty circuit: resistances at rest and when moved, and a leak between feed and return. */
export interface FaultyCircuit extends TrueCircuit {
  readonly cause: CauseId
  readonly movedOhms: TrueCircuit['ohms']
  readonly idleLoadOhm: number
  readonly leakOhm: number
  readonly fuseOpen: boolean
}

const openOhm = 2e8

/** A sound circuit with one fault of this cause, its size random over a decade or two. */
export function faultyCircuit(cause: CauseId, random: () => number): FaultyCircuit {
  const base = soundCircuit(random)
  const workingOhm = base.job.circuit.supplyV / (base.job.load.currentA as number)
  const leastOhm = (0.1 * (base.job.circuit.allowedDropV as number)) / (base.job.load.currentA as number)
  const between = (low: number, high: number) => Math.exp(Math.log(low) + random() * Math.log(high / low))
  const bad = () => between(3 * leastOhm, 2 * workingOhm)
  const idleLoadOhm = workingOhm * between(0.3, 0.9)
  const sound: FaultyCircuit = { ...base, cause, movedOhms: base.ohms, idleLoadOhm, leakOhm: 1e10, fuseOpen: false }
  const added = (key: string, stillOhm: number, movedOhm = stillOhm): FaultyCircuit => ({
    ...sound,
    ohms: { ...base.ohms, [key]: (base.ohms[key] as number) + stillOhm },
    movedOhms: { ...base.ohms, [key]: (base.ohms[key] as number) + movedOhm },
  })
  const pick = (...keys: readonly string[]): string => keys[Math.floor(random() * keys.length)] as string
  switch (cause) {
    case 'open-lead':
      return added(pick('fuse-out|joint-in', 'joint-in|joint-out', 'joint-out|terminal-wire'), openOhm)
    case 'high-resistance-pin':
      return added('terminal-wire|terminal-mate', bad())
    case 'overloaded-terminal': {
      const found = added('terminal-wire|terminal-mate', bad())
      return { ...found, job: { ...found.job, terminal: { ratedCurrentA: 0.6 * (found.job.load.currentA as number) } } }
    }
    case 'corroded-strands':
      return added(pick('fuse-out|joint-in', 'joint-out|terminal-wire'), between(3 * leastOhm, workingOhm))
    case 'lost-spring-force': {
      const still = between(0.3 * leastOhm, workingOhm)
      return added('terminal-wire|terminal-mate', still, random() < 0.4 ? openOhm : still * between(3, 50))
    }
    case 'bad-return':
      return added('return-joint|source-', random() < 0.3 ? openOhm : bad())
    case 'weak-supply':
      return random() < 0.5 ? { ...sound, volt: base.job.circuit.supplyV * (0.5 + 0.4 * random()) } : { ...sound, sourceOhm: workingOhm * between(0.06, 1) }
    case 'load-failed': {
      const share = random() < 0.4 ? 1e-8 : 0.25 * random()
      return { ...sound, loadOhm: base.loadOhm / share, idleLoadOhm: idleLoadOhm / share }
    }
    case 'coil-open':
      return { ...sound, loadOhm: openOhm, idleLoadOhm: openOhm }
    case 'coil-short': {
      const share = between(0.05, 0.6)
      return { ...sound, loadOhm: base.loadOhm * share, idleLoadOhm: idleLoadOhm * share }
    }
    case 'load-stalled':
      return { ...sound, loadOhm: base.job.circuit.supplyV / (base.job.load.stallA as number) }
    case 'short-to-circuit':
      return { ...sound, fuseOpen: true, leakOhm: between(0.01, 2) }
    case 'dry-joint':
      return added('joint-in|joint-out', bad())
    case 'fracture-in-contact':
      return added(
        pick('joint-in|joint-out', 'joint-out|terminal-wire'),
        0.3 * leastOhm * random(),
        random() < 0.4 ? openOhm : between(5 * leastOhm, 5 * workingOhm),
      )
    case 'water-in-run':
      return { ...sound, leakOhm: between(500, 2e5) }
  }
}

function potentials(circuit: FaultyCircuit, when: 'still' | 'moved', state: 'on' | 'off', probes: readonly [Place, Place]): number {
  const ohms = when === 'still' ? circuit.ohms : circuit.movedOhms
  const branches = Object.entries(ohms).map(([key, ohm]) => {
    const [from, to] = key.split('|') as [string, string]
    return { from, to, ohm: circuit.fuseOpen && key === 'fuse-in|fuse-out' ? 1e10 : ohm }
  })
  branches.push({ from: 'load+', to: 'load-', ohm: state === 'on' ? circuit.loadOhm : 1e12 })
  branches.push({ from: 'joint-in', to: 'return-joint', ohm: circuit.leakOhm })
  branches.push({ from: probes[0], to: probes[1], ohm: 1e7 })
  const at = solveNodes(branches, { plus: 'source+', minus: 'source-', volt: circuit.volt, ohm: circuit.sourceOhm })
  return (at.get(probes[0]) as number) - (at.get(probes[1]) as number)
}

/** Ohms of the dead circuit by a test current of 1 A: source off, load unplugged unless the probes are on it. */
function deadOhms(circuit: FaultyCircuit, from: Place, to: Place): number {
  if (from === 'load+' && to === 'load-') return circuit.idleLoadOhm
  const branches = Object.entries(circuit.ohms).map(([key, ohm]) => {
    const [one, other] = key.split('|') as [string, string]
    return { from: one, to: other, ohm: circuit.fuseOpen && key === 'fuse-in|fuse-out' ? 1e10 : ohm }
  })
  branches.push({ from: 'joint-in', to: 'return-joint', ohm: circuit.leakOhm })
  const at = solveNodes(branches, { plus: from, minus: to, volt: 1, ohm: 1 })
  const volt = (at.get(from) as number) - (at.get(to) as number)
  return volt >= 1 ? 1e10 : volt / (1 - volt)
}

const ohmMeter: Meter = { percentOfReading: 0.8, counts: 3, resolution: 0.1 }

/** One reading as a hand meter shows it. */
export function take(circuit: FaultyCircuit, { kind, from, to, load, when = 'still' }: Probe, random: () => number): JobReading {
  const base = { kind, from, to, load, when }
  if (kind === 'resistance' || kind === 'insulation') {
    const ohm = deadOhms(circuit, from, to)
    if (ohm > 1e7) return { ...base, value: 1e7 }
    if (kind === 'insulation') return { ...base, value: ohm * (1 + 0.05 * (2 * random() - 1)) }
    return {
      ...base,
      value: Math.max(0, shown(ohm + 0.2, { ...ohmMeter, resolution: ohm > 1000 ? 10 : ohm > 100 ? 1 : 0.1 }, random)),
      ...ohmMeter,
      resolution: ohm > 1000 ? 10 : ohm > 100 ? 1 : 0.1,
      leadOhm: 0.2,
      leadUncertaintyOhm: 0.1,
    }
  }
  if (kind === 'current') {
    const flowing = load === 'on' ? potentials(circuit, when, 'on', ['load+', 'load-']) / circuit.loadOhm : 0
    const meter = { percentOfReading: 2, counts: 3, resolution: 0.01 }
    return { ...base, value: shown(flowing, meter, random), ...meter }
  }
  const volt = potentials(circuit, when, load === 'on' ? 'on' : 'off', [from, to])
  const meter = voltMeter(Math.abs(volt))
  return { ...base, value: shown(volt, meter, random), ...meter }
}

/** A technician's readings, roughly in order. */
const round: readonly Probe[] = [
  { kind: 'voltage', from: 'source+', to: 'source-', load: 'on' },
  { kind: 'voltage', from: 'load+', to: 'load-', load: 'on' },
  { kind: 'drop', from: 'source+', to: 'load+', load: 'on' },
  { kind: 'drop', from: 'load-', to: 'source-', load: 'on' },
  { kind: 'drop', from: 'joint-in', to: 'joint-out', load: 'on' },
  { kind: 'drop', from: 'terminal-wire', to: 'terminal-mate', load: 'on' },
  { kind: 'drop', from: 'fuse-in', to: 'fuse-out', load: 'on' },
  { kind: 'drop', from: 'joint-in', to: 'joint-out', load: 'on', when: 'moved' },
  { kind: 'drop', from: 'terminal-wire', to: 'terminal-mate', load: 'on', when: 'moved' },
  { kind: 'voltage', from: 'load+', to: 'load-', load: 'on', when: 'moved' },
  { kind: 'current', from: 'source+', to: 'fuse-in', load: 'on' },
  { kind: 'resistance', from: 'load+', to: 'load-', load: 'unplugged' },
  { kind: 'resistance', from: 'load+', to: 'source-', load: 'unplugged' },
  { kind: 'insulation', from: 'load+', to: 'source-', load: 'unplugged' },
]

/** A faulty circuit with a random selection of readings, each taken with this probability. */
export function readJob(circuit: FaultyCircuit, random: () => number, chance: number): RepairJob {
  const readings = round.filter((_, index) => index < 2 || random() < chance).map((probing) => take(circuit, probing, random))
  return { ...circuit.job, readings }
}
