import type { RepairJob } from '../job/index.ts'

/** Invented for the demo: the fridge of a market stall, its lead tied into a bundle in summer heat, its plug pin gone dark. The wire is too thin for its length. */
export const marketStallFridge: RepairJob = {
  version: 1,
  title: 'Fridge lead of a market stall (invented example)',
  circuit: { kind: 'power', supplyV: 12, allowedDropV: 0.6, sourceResistanceOhm: 0.01, fuseA: 10, fuseSeries: 'ISO 8820-3', fuseDistanceM: 0.2 },
  load: { powerW: 60 },
  wire: {
    areaMm2: 1.5,
    material: 'annealed-copper',
    strandCount: 30,
    insulation: 'PVC',
    insulationThicknessMm: 0.7,
    outLengthM: 6,
    returnLengthM: 6,
    loadedInBundle: 6,
    bundleOutsideMm: 9,
  },
  terminal: { ratedCurrentA: 15, ratedAmbientC: 25, limitC: 105, metal: 'tin', matingMetal: 'tin', acceptsMm2: { low: 1, high: 2.5 } },
  damage: { kind: 'overheated', fromTerminationMm: 10, discolouredMm: 15, slackMm: 180 },
  surroundings: { ambientC: 35, hottestC: 50, coldestC: 0, location: 'damp', vibration: 'some', flexes: false, flammableVapour: false },
  readings: [
    {
      kind: 'drop',
      from: 'joint-in',
      to: 'joint-out',
      load: 'on',
      value: 0.31,
      currentA: 4.6,
      percentOfReading: 0.8,
      counts: 2,
      resolution: 0.001,
      when: 'still',
    },
  ],
  intendedMethod: 'new-crimped-terminal',
  hasCrimpTool: true,
  hasTerminalDie: true,
}
