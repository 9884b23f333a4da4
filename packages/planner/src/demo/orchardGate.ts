import type { RepairJob } from '../job/index.ts'

/** Invented for the demo: the gate opener of an orchard on a solar battery. Nothing is seen and only ohms were read, so that the plan cannot tell, and says which reading would. */
export const orchardGate: RepairJob = {
  version: 1,
  title: 'Gate opener of an orchard (invented example)',
  circuit: { kind: 'motor', supplyV: 24, sourceResistanceOhm: 0.03, fuseA: 10, fuseSeries: 'ISO 8820-3', fuseDistanceM: 0.3 },
  load: { currentA: 3, inrushA: 9, inrushS: 0.2, stallA: 16, onS: 20, offS: 600 },
  wire: { areaMm2: 2.5, material: 'tinned-copper', strandCount: 50, insulation: 'XLPE', insulationThicknessMm: 0.7, outLengthM: 9, returnLengthM: 9 },
  damage: { kind: 'unknown', fromTerminationMm: 400, slackMm: 150 },
  surroundings: { ambientC: 10, hottestC: 40, coldestC: -15, location: 'splash', vibration: 'some', flexes: false, flammableVapour: false },
  readings: [
    {
      kind: 'resistance',
      from: 'joint-in',
      to: 'joint-out',
      load: 'off',
      value: 0.3,
      percentOfReading: 0.8,
      counts: 3,
      resolution: 0.1,
      leadOhm: 0.2,
      leadUncertaintyOhm: 0.1,
    },
  ],
  intendedMethod: 'crimped-and-sealed-butt-splice',
  hasCrimpTool: true,
  hasTerminalDie: false,
}
