import { awgToAreaMm2, circularMilsToMm2, mm2ToCircularMils, resistanceOhmPerM, strandedAreaMm2 } from '../packages/core/src/conductor/index.ts'
import type { Reference } from './compare.ts'

const mmPerInch = 25.4
const mmPerMil = 0.0254

export const reference: Reference = {
  source: 'US Navy NEETS module 4, Introduction to Electrical Conductors, Wiring Techniques, and Schematic Reading',
  clause: 'conductor sizes, and assignment 1',
  status: 'published',
  cases: [
    {
      title: 'question 1-8, 12 strands of 0.2 in radius: area',
      printed: '1920000',
      unit: 'cmil',
      got: () => mm2ToCircularMils(strandedAreaMm2({ strandCount: 12, strandDiameterMm: 0.4 * mmPerInch })),
    },
    {
      title: 'p. 1-25, a wire 4 mil across: area',
      printed: '16',
      unit: 'cmil',
      got: () => mm2ToCircularMils(strandedAreaMm2({ strandCount: 1, strandDiameterMm: 4 * mmPerMil })),
    },
    { title: 'p. 1-25, a circular mil in square mils', printed: '0.7854', unit: '1', got: () => circularMilsToMm2(1) / mmPerMil ** 2 },
    {
      title: 'wire size discussion, AWG 20 at 25 C: ohm per 1000 ft',
      printed: '10.4',
      unit: 'ohm',
      got: () => resistanceOhmPerM({ areaMm2: awgToAreaMm2(20), material: 'annealed-copper', temperatureC: 25 }) * 304.8,
      allowed: { absolute: 0.06, why: 'the manual rounds the 10.35 of the wire tables once more; exact arithmetic gives 10.352' },
    },
  ],
}
