import type { RepairJob } from '../job/index.ts'

/** Invented for the demo: the LED strip of a narrow workshop, its feed broken a foot from the strip; an iron, no crimp tool. Wound first, then soldered. */
export const workshopLedStrip: RepairJob = {
  version: 1,
  title: 'LED strip of a narrow workshop (invented example)',
  units: 'inch',
  circuit: { kind: 'lighting', supplyV: 24, allowedDropV: 1, fuseA: 5, fuseSeries: 'ISO 8820-3', fuseDistanceM: 0.1 },
  load: { currentA: 2.5 },
  wire: {
    size: '18 AWG',
    standard: 'AWG',
    material: 'annealed-copper',
    strandCount: 16,
    insulation: 'PVC',
    insulationGradeC: 80,
    outLengthM: 4,
    returnLengthM: 4,
  },
  damage: { kind: 'broken', fromTerminationMm: 305, discolouredMm: 0, slackMm: 120 },
  surroundings: { ambientC: 20, hottestC: 35, coldestC: 10, location: 'dry', vibration: 'none', flexes: false, flammableVapour: false },
  intendedMethod: 'soldered-lap',
  tools: [{ name: '60 W iron', kind: 'iron', powerW: 60, setC: 350, tipWidthMm: 2.4, contact: 'wetted' }],
  solders: ['Sn63Pb37'],
  sleeves: [
    {
      name: '3:1 tube, 6 mm',
      material: 'polyolefin',
      suppliedInsideMm: 6,
      recoveredInsideMm: 2,
      recoveredWallMm: 0.8,
      longitudinalChange: { low: -0.1, high: 0.05 },
    },
  ],
  hasCrimpTool: false,
  hasTerminalDie: false,
}
