import { type Chain, restingSupplyV, sound, supplyOhm } from '../../circuit/inner.ts'
import type { Ask } from './model.ts'

/** An unknown of a healthy circuit, transformed to a standard normal. */
type Unknown =
  | 'lay'
  | 'returnLength'
  | 'warmth'
  | 'joint'
  | 'contact'
  | 'fuse'
  | 'returnContact'
  | 'returnSplit'
  | 'feedSplit'
  | 'supply'
  | 'sourceOhm'
  | 'loadScale'
  | 'loadLaw'
  | 'idleLoad'
  | 'insulation'
  | 'hotSpot'
  | 'stir'

const order: readonly Unknown[] = [
  'lay',
  'returnLength',
  'warmth',
  'joint',
  'contact',
  'fuse',
  'returnContact',
  'returnSplit',
  'feedSplit',
  'supply',
  'sourceOhm',
  'loadScale',
  'loadLaw',
  'idleLoad',
  'insulation',
  'hotSpot',
  'stir',
]
export const unknownCount = order.length

/** The unknowns that affect some reading; the others stay at their mean. */
export function unknownsInPlay(chain: Chain, asks: readonly Ask[]): readonly number[] {
  const touches = (place: number) => asks.some(({ from, to }) => from === place || to === place)
  const across = ({ from, to }: Ask) => from <= chain.loadAt && to > chain.loadAt
  const dead = asks.filter(({ state }) => state === 'dead')
  const returnJoint = chain.places.indexOf('return-joint')
  const play: Readonly<Partial<Record<Unknown, boolean>>> = {
    returnSplit: returnJoint >= 0 && touches(returnJoint),
    feedSplit: chain.input.fuseDistanceM === null && (touches(1) || touches(2)),
    idleLoad: dead.some(({ from, to, kind }) => kind !== 'insulation' && from === chain.loadAt && to === from + 1),
    insulation: dead.some(across),
    hotSpot: asks.some(({ kind }) => kind === 'temperature'),
    stir: asks.some(({ when }) => when === 'moved'),
    loadLaw: chain.input.load.by !== 'resistance',
  }
  return order.flatMap((name, index) => (play[name] === false ? [] : [index]))
}
/** The first of the unknowns that decide one value each, whatever the others are. */
export const firstAlone = order.indexOf('supply')
const at = Object.fromEntries(order.map((name, index) => [name, index])) as Readonly<Record<Unknown, number>>

/** A healthy circuit with values for its unknowns. */
export interface Filled {
  /** Resistance of each gap, at its temperature under load and cold. */
  readonly warmOhm: Float64Array
  readonly coldOhm: Float64Array
  supplyV: number
  sourceOhm: number
  /** The load's current at nominal voltage, and the exponent of its voltage dependence. */
  loadA: number
  loadLaw: number
  idleLoadOhm: number
  insulationOhm: number
  /** Thermal resistance of a bad place. */
  hotKPerW: number
  /** What moving the lead does to a bad place that is no loose one, as a factor. */
  stir: number
  /** Rise of the conductor above the air at the working current. */
  riseK: number
}

/** A range as a log-normal: mean and standard deviation of a uniform logarithm. */
const logRange = ({ low, high }: { readonly low: number; readonly high: number }) => ({
  middle: Math.log(low * high) / 2,
  deviation: Math.log(high / low) / Math.sqrt(12),
})
/** Standard deviation of a uniform range. */
const deviationOf = ({ low, high }: { readonly low: number; readonly high: number }) => (high - low) / Math.sqrt(12)

/** Exponent of the load current's voltage dependence, by kind of load. A motor and a lamp draw less at low voltage, an electronic supply more. */
const laws = { current: { mean: 0.6, deviation: 0.5 }, power: { mean: 0, deviation: 0.8 }, resistance: { mean: 1, deviation: 0 } } as const

/** Resistance of the load at rest over its working resistance: less for a motor or a cold lamp. */
function idleLoadOf({ input }: Chain): { readonly middle: number; readonly deviation: number } {
  const { load, supplyV, currentA } = input
  const workingOhm = supplyV / currentA
  if (load.by === 'resistance' && load.kind !== 'lighting') return { middle: Math.log(workingOhm), deviation: 0.05 }
  if (load.stallA !== null)
    return { middle: Math.log((workingOhm * supplyV) / load.stallA) / 2, deviation: Math.max(0.2, Math.log(workingOhm / (supplyV / load.stallA)) / 3) }
  if (load.kind === 'motor' || load.kind === 'lighting') return { middle: Math.log(0.4 * workingOhm), deviation: 0.7 }
  return { middle: Math.log(0.85 * workingOhm), deviation: 0.4 }
}

/** A corroded or dry place that is moved changes by about a quarter. */
const stirDeviation = 0.25

/** Thermal resistance of a bad place: the fin of a thin wire on both sides, within a factor of two. */
const hotSpotKPerW = { middle: Math.log(8), deviation: 0.6 }

/** What scales a run of wire: the lay out and back, or the length that a joint or contact is worth. */
const factorOf = { out: 0, back: 1, joint: 2, contact: 3, returnContact: 4 } as const

const lengthFactor = (isLength: boolean, onReturn: boolean): number =>
  isLength ? (onReturn ? factorOf.back : factorOf.out) : onReturn ? factorOf.returnContact : factorOf.contact

/** Returns a function that fills a healthy circuit from its unknowns without allocation. */
export function filler(chain: Chain): {
  readonly filled: Filled
  readonly fill: (z: Float64Array) => void
  readonly fillOne: (index: number, z: number) => void
} {
  const { input, gaps } = chain
  const count = gaps.length
  const filled: Filled = {
    warmOhm: new Float64Array(count),
    coldOhm: new Float64Array(count),
    supplyV: 0,
    sourceOhm: 0,
    loadA: 0,
    loadLaw: 0,
    idleLoadOhm: 0,
    insulationOhm: 0,
    hotKPerW: 0,
    stir: 1,
    riseK: 0,
  }
  const steadyRiseK = input.wire.steadyC(input.currentA, input.ambientC) - input.ambientC
  const cold = { wire: input.wire.ohmPerM(input.ambientC), beyond: input.beyond.ohmPerM(input.ambientC) }
  const perK = {
    wire: (input.wire.ohmPerM(input.ambientC + 1) - cold.wire) / cold.wire,
    beyond: (input.beyond.ohmPerM(input.ambientC + 1) - cold.beyond) / cold.beyond,
  }
  const jointOhmPerM = (cold.wire + cold.beyond) / 2
  const layMiddle = (sound.lay.low + sound.lay.high) / 2
  const layDeviation = deviationOf(sound.lay) / layMiddle
  const lengthDeviation = deviationOf(sound.lengthShare)
  const joint = logRange(sound.jointMm)
  const contact = logRange(sound.contactMm)
  const fuse = logRange(sound.fuseV)
  const source = supplyOhm(input)
  const sourceRange = source.low === source.high ? { middle: Math.log(Math.max(1e-9, source.low)), deviation: 0.1 } : logRange(source)
  const resting = restingSupplyV(input)
  const supplyMiddleV = (resting.low + resting.high) / 2
  const supplyDeviationV = deviationOf(resting)
  const law = laws[input.load.by]
  const idle = idleLoadOf(chain)
  const ratedA = input.fuseA ?? input.currentA / sound.fuseLoadShare
  const fuseDeviation = input.fuseA === null ? 3 * fuse.deviation : fuse.deviation
  const lastFeed = chain.loadAt
  // The runs of all gaps in flat lists, as this is the innermost loop of every fit.
  const runs = gaps.flatMap((gap, n) => gap.runs.map((run) => ({ ...run, n })))
  const runFrom = Int32Array.from({ length: count + 1 }, (_, n) => runs.filter((run) => run.n < n).length)
  const runLength = Int32Array.from(runs, ({ as, n }) => (as === 'joint' ? factorOf.joint : lengthFactor(as === 'length', n > lastFeed)))
  const runMetres = Float64Array.from(runs, (run) => (run.as === 'length' ? run.metres : 1))
  const runOhmPerM = Float64Array.from(runs, ({ of }) => (of === 'joint' ? jointOhmPerM : cold[of]))
  const runPerK = Float64Array.from(runs, ({ of }) => (of === 'beyond' ? perK.beyond : perK.wire))
  const hasFuse = gaps.map(({ fuseOhm }) => fuseOhm !== null)
  const shared = gaps.map((gap) => gap.shared)
  const firstOf = { return: shared.indexOf('return'), feed: shared.indexOf('feed') }
  const metresOf = new Float64Array(5)
  /** Sets the one value that an unknown from `firstAlone` on decides. */
  const fillOne = (index: number, z: number): void => {
    switch (index) {
      case at.supply:
        filled.supplyV = supplyMiddleV + supplyDeviationV * z
        return
      case at.sourceOhm:
        filled.sourceOhm = Math.exp(sourceRange.middle + sourceRange.deviation * z)
        return
      case at.loadScale:
        filled.loadA = input.currentA * Math.exp(0.05 * z)
        return
      case at.loadLaw:
        filled.loadLaw = law.mean + law.deviation * z
        return
      case at.idleLoad:
        filled.idleLoadOhm = Math.exp(idle.middle + idle.deviation * z)
        return
      case at.insulation:
        filled.insulationOhm = Math.exp(Math.log(1e9) + 1.5 * z)
        return
      case at.hotSpot:
        filled.hotKPerW = Math.exp(hotSpotKPerW.middle + hotSpotKPerW.deviation * z)
        return
      default:
        filled.stir = Math.exp(stirDeviation * z)
    }
  }
  const fill = (z: Float64Array): void => {
    const lay = layMiddle * Math.exp((layDeviation + lengthDeviation) * 0.7 * (z[at.lay] as number))
    const share = Math.min(1, Math.max(0, 0.4 + 0.3 * (z[at.warmth] as number)))
    filled.riseK = share * steadyRiseK
    metresOf[factorOf.out] = lay
    metresOf[factorOf.back] = lay * Math.exp(1.4 * lengthDeviation * (z[at.returnLength] as number))
    metresOf[factorOf.joint] = Math.exp(joint.middle + joint.deviation * (z[at.joint] as number)) / 1000
    metresOf[factorOf.contact] = Math.exp(contact.middle + contact.deviation * (z[at.contact] as number)) / 1000
    metresOf[factorOf.returnContact] = Math.exp(contact.middle + contact.deviation * (z[at.returnContact] as number)) / 1000
    const splitReturn = 1 / (1 + Math.exp(-1.5 * (z[at.returnSplit] as number)))
    const splitFeed = 1 / (1 + Math.exp(1.5 - 1.5 * (z[at.feedSplit] as number)))
    const fuseOhm = Math.exp(fuse.middle + fuseDeviation * (z[at.fuse] as number)) / ratedA
    for (let n = 0; n < count; n += 1) {
      let ohm = 0
      let warm = 0
      const end = runFrom[n + 1] as number
      for (let run = runFrom[n] as number; run < end; run += 1) {
        const coldOhm = (runMetres[run] as number) * (metresOf[runLength[run] as number] as number) * (runOhmPerM[run] as number)
        ohm += coldOhm
        warm += coldOhm * (1 + (runPerK[run] as number) * filled.riseK)
      }
      if (hasFuse[n] === true) {
        ohm += fuseOhm
        warm += fuseOhm
      }
      const side = shared[n] ?? null
      if (side !== null) {
        const split = side === 'return' ? splitReturn : splitFeed
        const part = n === firstOf[side] ? split : 1 - split
        ohm *= part
        warm *= part
      }
      filled.coldOhm[n] = ohm
      filled.warmOhm[n] = warm
    }
    for (let k = firstAlone; k < unknownCount; k += 1) fillOne(k, z[k] as number)
  }
  return { filled, fill, fillOne }
}
