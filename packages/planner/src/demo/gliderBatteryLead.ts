import type { RepairJob } from '../job/index.ts'

/** Invented for the demo: the battery lead of a model glider: 25 A for twenty seconds at a climb. The wire bears the burst, and no fuse was ever fitted. */
export const gliderBatteryLead: RepairJob = {
  version: 1,
  title: 'Battery lead of a model glider (invented example)',
  circuit: { kind: 'motor', supplyV: 11.1, allowedDropV: 0.5 },
  load: { currentA: 25, onS: 20, offS: 120 },
  wire: { areaMm2: 2.5, material: 'tinned-copper', strandCount: 651, insulation: 'silicone', outLengthM: 0.25, returnLengthM: 0.25 },
  terminal: { kind: 'push-on' },
  damage: { kind: 'broken', fromTerminationMm: 12, slackMm: 60 },
  surroundings: { ambientC: 15, hottestC: 35, coldestC: 0, location: 'dry', vibration: 'some', flexes: false, flammableVapour: false },
  hasCrimpTool: true,
  hasTerminalDie: true,
}
