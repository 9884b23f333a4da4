import type { RepairJob } from '../job/index.ts'

/** Invented for the demo: the thermocouple extension of a pottery kiln. Each leg joins its own alloy; copper or solder between them makes the controller read wrong. */
export const kilnThermocouple: RepairJob = {
  version: 1,
  title: 'Thermocouple extension of a pottery kiln (invented example)',
  circuit: { kind: 'thermocouple', supplyV: 0.05 },
  load: { currentA: 0.00001 },
  wire: { areaMm2: 0.5, material: 'nickel', insulation: 'PTFE', outLengthM: 3, returnLengthM: 3 },
  damage: { kind: 'overheated', fromTerminationMm: 700, discolouredMm: 20, slackMm: 150 },
  surroundings: { ambientC: 25, hottestC: 60, coldestC: 5, location: 'dry', vibration: 'none', flexes: false, flammableVapour: false },
  intendedMethod: 'soldered-lap',
  hasCrimpTool: true,
}
