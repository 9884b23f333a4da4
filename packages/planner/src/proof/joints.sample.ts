import { seeded, shown, soundCircuit } from '../diagnosis/nodalCircuit.sample.ts'
import { type FoundReadings, verifyRepair } from './index.ts'

/** Verdicts on random joints: bad ones, good ones on a meter that can tell, and any on one that cannot. */
export interface JudgedJoints {
  readonly bad: number
  readonly badProven: number
  readonly good: number
  readonly goodProven: number
  readonly goodFailed: number
  readonly blind: number
  readonly blindProven: number
}

const jointMm = 25

/** Joints of known resistance, read over the joint and the same length of wire, some over the covered joint. */
export function judgedJoints(count: number, seed: number): JudgedJoints {
  const random = seeded(seed)
  const between = (low: number, high: number) => low + (high - low) * random()
  let [bad, badProven, good, goodProven, goodFailed, blind, blindProven] = [0, 0, 0, 0, 0, 0, 0]
  for (let n = 0; n < count; n += 1) {
    const { job } = soundCircuit(random)
    const perM = (0.017241 / (job.wire.areaMm2 as number)) * between(1.01, 1.05) * (1 + 0.00393 * ((job.surroundings?.ambientC ?? 20) - 20))
    const isBad = n % 2 === 0
    // Resistance over that of the same length of wire: a bad joint from just above 1, a good one well below.
    const worth = isBad ? 1 + 3 * random() ** 2 : between(0.2, 0.7)
    const currentA = job.load.currentA as number
    const wireV = (perM * jointMm * currentA) / 1000
    // A microvolt range can tell; a millivolt range of two counts cannot.
    const canTell = random() < 0.7
    const meter = canTell
      ? { percentOfReading: 0.5, counts: 2, resolution: Math.max(1e-7, wireV / 100) }
      : { percentOfReading: 0.8, counts: 2, resolution: 3 * wireV }
    const reading = (volt: number) => {
      const value = shown(volt, meter, random)
      const bound = (Math.abs(value) * meter.percentOfReading) / 100 + meter.counts * meter.resolution
      return { low: Math.max(0, value - bound), high: Math.max(0, value + bound) }
    }
    const found: FoundReadings =
      random() < 0.7
        ? {
            date: '2026-05-04',
            readings: [],
            ratio: [{ joint: 1, jointV: reading(worth * wireV), wireV: reading(wireV), wireLengthMm: jointMm }],
            jointLengthMm: jointMm,
          }
        : {
            date: '2026-05-04',
            readings: [{ kind: 'drop', from: 'joint-in', to: 'joint-out', load: 'on', ...reading(worth * wireV), currentA }],
            jointLengthMm: jointMm,
          }
    const { verdict } = verifyRepair({ ...job, intendedMethod: 'crimped-butt-splice' }, found)
    if (!canTell) {
      blind += 1
      if (verdict === 'proven') blindProven += 1
    }
    if (isBad) {
      bad += 1
      if (verdict === 'proven') badProven += 1
    } else if (canTell) {
      good += 1
      if (verdict === 'proven') goodProven += 1
      if (verdict === 'failed') goodFailed += 1
    }
  }
  return { bad, badProven, good, goodProven, goodFailed, blind, blindProven }
}
