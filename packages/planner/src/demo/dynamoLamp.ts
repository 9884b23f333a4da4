import type { RepairJob } from '../job/index.ts'

/** Invented for the demo: the lamp lead of a bicycle dynamo, five strands of sixteen broken behind its fork. The source itself cannot overload the wire. */
export const dynamoLamp: RepairJob = {
  version: 1,
  title: 'Lamp lead of a bicycle dynamo (invented example)',
  circuit: { kind: 'lighting', supplyV: 6, waveform: 'ac', allowedDropV: 0.3, sourceResistanceOhm: 8 },
  load: { currentA: 0.5 },
  wire: { areaMm2: 0.5, material: 'annealed-copper', strandCount: 16, insulation: 'PVC', outLengthM: 1, returnLengthM: 0 },
  terminal: { kind: 'fork', studMm: 4 },
  damage: { kind: 'partly-broken', fromTerminationMm: 8, brokenStrands: 5, slackMm: 60 },
  surroundings: { ambientC: 15, hottestC: 40, coldestC: 5, location: 'splash', vibration: 'strong', flexes: false, flammableVapour: false },
  hasCrimpTool: true,
  hasTerminalDie: true,
}
