import type { RepairJob } from '../job/index.ts'

/** Invented for the demo: the power lead of a telescope mount that stops on cold nights. Joint, feed and return were read, and nothing is wrong there: leave it. */
export const telescopeMount: RepairJob = {
  version: 1,
  title: 'Power lead of a telescope mount (invented example)',
  circuit: { kind: 'power', supplyV: 12, fuseA: 3, fuseSeries: 'ISO 8820-3', fuseDistanceM: 0.1 },
  load: { currentA: 1.5 },
  wire: { areaMm2: 0.75, material: 'annealed-copper', strandCount: 24, insulation: 'silicone', outLengthM: 3, returnLengthM: 3 },
  damage: { kind: 'unknown', fromTerminationMm: 400, slackMm: 80 },
  surroundings: { ambientC: -5, hottestC: 30, coldestC: -15, location: 'damp', vibration: 'none', flexes: false, flammableVapour: false },
  readings: [
    { kind: 'drop', from: 'joint-in', to: 'joint-out', load: 'on', value: 0.0004, currentA: 1.5, percentOfReading: 0.5, counts: 2, resolution: 0.0001 },
    { kind: 'drop', from: 'source+', to: 'load+', load: 'on', value: 0.145, currentA: 1.5, percentOfReading: 0.5, counts: 2, resolution: 0.001 },
    { kind: 'drop', from: 'load-', to: 'source-', load: 'on', value: 0.1, currentA: 1.5, percentOfReading: 0.5, counts: 2, resolution: 0.001 },
  ],
  intendedMethod: 'crimped-butt-splice',
}
