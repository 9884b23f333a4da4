import type { RepairJob } from '../job/index.ts'

/** Invented for the demo: a bee-keeper's trailer, one lamp lead broken far from any plug, repaired with the right tool. Comes out sound. */
export const trailerTailLamp: RepairJob = {
  version: 1,
  title: 'Tail lamp of a bee-keeper’s trailer (invented example)',
  circuit: { kind: 'lighting', supplyV: 12, allowedDropV: 0.6, sourceResistanceOhm: 0.02, fuseA: 5, fuseSeries: 'ISO 8820-3', fuseDistanceM: 0.15 },
  load: { currentA: 1.8 },
  wire: {
    areaMm2: 1.5,
    material: 'annealed-copper',
    strandCount: 30,
    insulation: 'PVC',
    insulationThicknessMm: 0.7,
    outLengthM: 5,
    returnLengthM: 5,
    loadedInBundle: 1,
  },
  damage: { kind: 'broken', fromTerminationMm: 600, discolouredMm: 0, slackMm: 90 },
  surroundings: { ambientC: 18, hottestC: 40, coldestC: 5, location: 'dry', vibration: 'some', flexes: false, flammableVapour: false },
  readings: [
    {
      kind: 'drop',
      from: 'joint-in',
      to: 'joint-out',
      load: 'on',
      value: 2.1,
      currentA: 1.5,
      percentOfReading: 0.8,
      counts: 2,
      resolution: 0.01,
      when: 'still',
    },
  ],
  intendedMethod: 'crimped-and-sealed-butt-splice',
  tools: [{ name: 'hot-air tool for the sleeve', kind: 'hot-air', airC: 300, airSpeedMPerS: 6, nozzleMm: 20 }],
  hasCrimpTool: true,
  hasTerminalDie: true,
}
