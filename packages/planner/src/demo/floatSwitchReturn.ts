import type { RepairJob } from '../job/index.ts'

/** Invented for the demo: the return of a float switch in a rain-water tank, chafed on the rim. A signal lead: its proof is what its receiver sees. */
export const floatSwitchReturn: RepairJob = {
  version: 1,
  title: 'Float switch of a rain-water tank (invented example)',
  circuit: { kind: 'signal', supplyV: 12 },
  load: { currentA: 0.02 },
  wire: { areaMm2: 0.5, material: 'tinned-copper', strandCount: 16, insulation: 'XLPE', outLengthM: 8, returnLengthM: 8 },
  damage: { kind: 'chafed', where: 'return', fromTerminationMm: 900, discolouredMm: 15, slackMm: 120 },
  surroundings: { ambientC: 12, hottestC: 40, coldestC: -5, location: 'splash', vibration: 'none', flexes: false, flammableVapour: false },
  intendedMethod: 'soldered-lap',
  hasCrimpTool: true,
}
