import type { RepairJob } from '../job/index.ts'

/** Invented for the demo: the motor lead of a school robot, fractured where it bends at every move. No joint lasts there. */
export const robotMotorLead: RepairJob = {
  version: 1,
  title: 'Motor lead of a school robot (invented example)',
  circuit: { kind: 'motor', supplyV: 7.4, allowedDropV: 0.4, sourceResistanceOhm: 0.03, fuseA: 5, fuseSeries: 'ISO 8820-3', fuseDistanceM: 0.05 },
  load: { currentA: 1.2, inrushA: 4, inrushS: 0.1, stallA: 5 },
  wire: { areaMm2: 0.5, material: 'tinned-copper', strandCount: 28, insulation: 'silicone', insulationThicknessMm: 0.6, outLengthM: 0.5, returnLengthM: 0.5 },
  damage: { kind: 'broken', fromTerminationMm: 150, discolouredMm: 0, slackMm: 60 },
  surroundings: { ambientC: 22, hottestC: 30, coldestC: 10, location: 'dry', vibration: 'some', flexes: true, flammableVapour: false },
  readings: [
    {
      kind: 'drop',
      from: 'joint-in',
      to: 'joint-out',
      load: 'on',
      value: 0.9,
      currentA: 1.1,
      percentOfReading: 0.8,
      counts: 2,
      resolution: 0.001,
      when: 'moved',
    },
  ],
  intendedMethod: 'soldered-lap',
  tools: [{ name: 'class-room iron', kind: 'iron', powerW: 40, setC: 350, tipWidthMm: 2, contact: 'wetted' }],
  solders: ['Sn60Pb40'],
  sleeves: [
    {
      name: '2:1 tube, 3.2 mm',
      material: 'polyolefin',
      suppliedInsideMm: 3.2,
      recoveredInsideMm: 1.6,
      recoveredWallMm: 0.5,
      longitudinalChange: { low: -0.08, high: 0.02 },
    },
  ],
  hasCrimpTool: true,
  hasTerminalDie: true,
}
