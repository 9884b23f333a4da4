import type { JobReading, Place, RepairJob } from '../job/index.ts'

// Independent solver: nodal analysis with Gaussian elimination, without chain or intervals.

/** Uniform numbers from 0 to 1, the same for the same seed. */
export function seeded(seed: number): () => number {
  let state = seed >>> 0
  return () => {
    state = (state + 0x6d2b79f5) >>> 0
    let t = Math.imul(state ^ (state >>> 15), 1 | state)
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296
  }
}

interface Branch {
  readonly from: string
  readonly to: string
  readonly ohm: number
}

/** Potentials by node, against the last one; a battery is a voltage behind a resistance from `minus` to `plus`. */
export function solveNodes(
  branches: readonly Branch[],
  battery: { readonly plus: string; readonly minus: string; readonly volt: number; readonly ohm: number },
): ReadonlyMap<string, number> {
  const names = [...new Set([...branches.flatMap(({ from, to }) => [from, to]), battery.plus, battery.minus])]
  const at = (name: string) => names.indexOf(name)
  const n = names.length
  type Line = Float64Array<ArrayBuffer>
  const matrix: Line[] = names.map(() => new Float64Array(n + 1))
  const cell = (row: number, column: number, add: number) => {
    const line = matrix[row] as Line
    line[column] = (line[column] as number) + add
  }
  for (const { from, to, ohm } of [...branches, { from: battery.plus, to: battery.minus, ohm: battery.ohm }]) {
    const siemens = 1 / ohm
    for (const [one, other] of [
      [at(from), at(to)],
      [at(to), at(from)],
    ] as const) {
      cell(one, one, siemens)
      cell(one, other, -siemens)
    }
  }
  cell(at(battery.plus), n, battery.volt / battery.ohm)
  cell(at(battery.minus), n, -battery.volt / battery.ohm)
  // Grounds the minus pole, with a tiny conductance to every node so that none floats.
  for (let row = 0; row < n; row += 1) cell(row, row, 1e-15)
  cell(at(battery.minus), at(battery.minus), 1e3)
  for (let column = 0; column < n; column += 1) {
    let pivot = column
    for (let row = column + 1; row < n; row += 1) if (Math.abs(matrix[row]?.[column] ?? 0) > Math.abs(matrix[pivot]?.[column] ?? 0)) pivot = row
    const lower = matrix[pivot] as Line
    matrix[pivot] = matrix[column] as Line
    matrix[column] = lower
    const lead = matrix[column] as Line
    for (let row = 0; row < n; row += 1) {
      if (row === column) continue
      const line = matrix[row] as Line
      const share = (line[column] as number) / (lead[column] as number)
      if (share !== 0) for (let k = column; k <= n; k += 1) line[k] = (line[k] as number) - share * (lead[k] as number)
    }
  }
  return new Map(names.map((name, row) => [name, (matrix[row]?.[n] as number) / (matrix[row]?.[row] as number)]))
}

/** The true values of a circuit. */
export interface TrueCircuit {
  readonly job: RepairJob
  readonly volt: number
  readonly sourceOhm: number
  /** Resistance between neighbouring places, out and back. */
  readonly ohms: Readonly<Record<string, number>>
  readonly loadOhm: number
}

const gaps = [
  'source+|fuse-in',
  'fuse-in|fuse-out',
  'fuse-out|joint-in',
  'joint-in|joint-out',
  'joint-out|terminal-wire',
  'terminal-wire|terminal-mate',
  'terminal-mate|load+',
  'load-|return-joint',
  'return-joint|source-',
]

/** A random circuit without faults. */
export function soundCircuit(random: () => number): TrueCircuit {
  const between = (low: number, high: number) => low + (high - low) * random()
  const areaMm2 = [0.5, 0.75, 1, 1.5, 2.5, 4][Math.floor(6 * random())] as number
  const currentA = between(1, 4) * areaMm2
  const supplyV = [12, 24][Math.floor(2 * random())] as number
  const outLengthM = between(1, 8)
  const returnLengthM = outLengthM
  const fromM = between(0.02, 0.3)
  const fuseM = between(0.05, 0.4)
  const fuseA = Math.ceil(currentA * 1.5)
  const ambientC = between(0, 40)
  const lay = between(1.01, 1.05)
  const warmC = ambientC + between(0, 3)
  const perM = (0.017241 / areaMm2) * (1 + 0.00393 * (warmC - 20)) * lay
  const length = () => between(0.98, 1.02)
  const share = random()
  const returnOhm = returnLengthM * length() * perM + perM * between(0.01, 0.08)
  const ohms: Record<string, number> = {
    'source+|fuse-in': fuseM * length() * perM,
    'fuse-in|fuse-out': between(0.06, 0.12) / fuseA,
    'fuse-out|joint-in': (outLengthM - fromM - fuseM) * length() * perM,
    'joint-in|joint-out': perM * between(0.005, 0.04),
    'joint-out|terminal-wire': fromM * length() * perM,
    'terminal-wire|terminal-mate': perM * between(0.01, 0.08),
    'terminal-mate|load+': 1e-6,
    'load-|return-joint': share * returnOhm + 1e-6,
    'return-joint|source-': (1 - share) * returnOhm + 1e-6,
  }
  const job: RepairJob = {
    version: 1,
    circuit: { kind: 'motor', supplyV, fuseA, fuseDistanceM: fuseM, allowedDropV: Math.max(0.03 * supplyV, 0.2) },
    load: { currentA, stallA: 5 * currentA },
    wire: { areaMm2, material: 'annealed-copper', insulation: 'XLPE', outLengthM, returnLengthM },
    damage: { kind: 'unknown', fromTerminationMm: 1000 * fromM, slackMm: 50 },
    surroundings: { ambientC, location: 'dry', vibration: 'none' },
  }
  return {
    job,
    volt: supplyV * between(11.6 / 12, 14.6 / 12),
    sourceOhm: between(0.002, 0.02) * (supplyV / currentA),
    ohms,
    loadOhm: (supplyV / currentA) * between(0.94, 1.06),
  }
}

/** Node potentials under load; null removes a branch. */
export function underLoad(circuit: TrueCircuit): ReadonlyMap<string, number> {
  const branches = gaps.map((key): Branch => {
    const [from, to] = key.split('|') as [string, string]
    return { from, to, ohm: circuit.ohms[key] as number }
  })
  branches.push({ from: 'load+', to: 'load-', ohm: circuit.loadOhm })
  return solveNodes(branches, { plus: 'source+', minus: 'source-', volt: circuit.volt, ohm: circuit.sourceOhm })
}

export function currentOf(circuit: TrueCircuit): number {
  const at = underLoad(circuit)
  return ((at.get('load+') as number) - (at.get('load-') as number)) / circuit.loadOhm
}

export interface Meter {
  readonly percentOfReading: number
  readonly counts: number
  readonly resolution: number
}
/** A hand meter whose range fits the reading. */
export const voltMeter = (volt: number): Meter => ({ percentOfReading: 0.8, counts: 2, resolution: volt < 0.4 ? 0.0001 : volt < 4 ? 0.001 : 0.01 })

/** Meter reading of a true value: Gaussian error with standard deviation bound/sqrt(3), rounded to the resolution. */
export function shown(value: number, meter: Meter, random: () => number): number {
  const bound = (Math.abs(value) * meter.percentOfReading) / 100 + meter.counts * meter.resolution
  const gauss = Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random())
  return Math.round((value + (bound / Math.sqrt(3)) * gauss) / meter.resolution) * meter.resolution
}

/** A drop or voltage reading under load. */
export function readVolts(circuit: TrueCircuit, from: Place, to: Place, random: () => number, withCurrent: boolean): JobReading {
  const at = underLoad(circuit)
  const value = (at.get(from) as number) - (at.get(to) as number)
  const meter = voltMeter(Math.abs(value))
  return { kind: 'drop', from, to, load: 'on', value: shown(value, meter, random), ...meter, ...(withCurrent ? { currentA: currentOf(circuit) } : {}) }
}
