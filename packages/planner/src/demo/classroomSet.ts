import type { RepairJob } from '../job/index.ts'

/** Invented for the demo: one lead of a classroom set: its joint is good, and its fuse is too large for the thin wire. */
export const classroomSet: RepairJob = {
  version: 1,
  title: 'Lead seven of a classroom set (invented example)',
  circuit: { kind: 'lighting', supplyV: 12, fuseA: 20, fuseSeries: 'ISO 8820-3', fuseDistanceM: 0.1 },
  load: { currentA: 1.5 },
  wire: { areaMm2: 0.75, material: 'annealed-copper', strandCount: 24, insulation: 'PVC', outLengthM: 2, returnLengthM: 2 },
  damage: { kind: 'unknown', fromTerminationMm: 500, slackMm: 100 },
  surroundings: { ambientC: 20, hottestC: 30, coldestC: 15, location: 'dry', vibration: 'none', flexes: false, flammableVapour: false },
  readings: [
    { kind: 'drop', from: 'joint-in', to: 'joint-out', load: 'on', value: 0.0004, currentA: 1.5, percentOfReading: 0.5, counts: 2, resolution: 0.0001 },
    { kind: 'drop', from: 'source+', to: 'load+', load: 'on', value: 0.086, currentA: 1.5, percentOfReading: 0.5, counts: 2, resolution: 0.001 },
    { kind: 'drop', from: 'load-', to: 'source-', load: 'on', value: 0.073, currentA: 1.5, percentOfReading: 0.5, counts: 2, resolution: 0.001 },
  ],
}
