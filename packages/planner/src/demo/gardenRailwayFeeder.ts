import type { RepairJob } from '../job/index.ts'

/** Invented for the demo: the track feeder of a garden railway, soldered on the bench with a good iron; its silicone stands the heat, and its drop was read with four wires. */
export const gardenRailwayFeeder: RepairJob = {
  version: 1,
  title: 'Track feeder of a garden railway (invented example)',
  circuit: { kind: 'power', supplyV: 18, allowedDropV: 0.9, sourceResistanceOhm: 0.05, fuseA: 5, fuseSeries: 'ISO 8820-3', fuseDistanceM: 0.1 },
  load: { currentA: 2.5 },
  wire: { areaMm2: 0.75, material: 'annealed-copper', strandCount: 24, insulation: 'silicone', insulationThicknessMm: 0.6, outLengthM: 4, returnLengthM: 4 },
  damage: { kind: 'corroded', fromTerminationMm: 900, discolouredMm: 20, slackMm: 220 },
  surroundings: { ambientC: 15, hottestC: 40, coldestC: -10, location: 'damp', vibration: 'none', flexes: false, flammableVapour: false },
  readings: [{ kind: 'four-wire', from: 'joint-in', to: 'joint-out', load: 'off', value: 0.42, percentOfReading: 0.5, counts: 3, resolution: 0.001 }],
  intendedMethod: 'soldered-lineman-splice',
  tools: [{ name: 'bench iron', kind: 'iron', powerW: 70, setC: 350, tipWidthMm: 3, contact: 'wetted' }],
  solders: ['Sn60Pb40'],
  sleeves: [
    {
      name: 'lined 3:1 tube, 4.8 mm',
      material: 'polyolefin-adhesive-lined',
      suppliedInsideMm: 4.8,
      recoveredInsideMm: 1.5,
      recoveredWallMm: 1,
      longitudinalChange: { low: -0.15, high: 0.05 },
      adhesiveWallMm: 0.4,
    },
  ],
  hasCrimpTool: false,
  hasTerminalDie: false,
}
