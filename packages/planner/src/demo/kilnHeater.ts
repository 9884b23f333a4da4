import type { RepairJob } from '../job/index.ts'

/** Invented for the demo: the heater of the same kiln runs on the mains: no plan. */
export const kilnHeater: RepairJob = {
  version: 1,
  title: 'Heater lead of a pottery kiln (invented example)',
  circuit: { kind: 'mains', supplyV: 230, waveform: 'ac' },
  load: { currentA: 12 },
  wire: { areaMm2: 2.5, insulation: 'silicone', outLengthM: 2, returnLengthM: 2 },
  damage: { kind: 'overheated', fromTerminationMm: 30 },
}
