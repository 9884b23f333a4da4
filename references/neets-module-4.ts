import { coilResistanceAtOhm } from '../packages/core/src/circuit/index.ts'
import { awgToAreaMm2, circularMilsToMm2, mm2ToCircularMils, resistanceOhmPerM, strandedAreaMm2 } from '../packages/core/src/conductor/index.ts'
import type { Reference, ReferenceCase } from './compare.ts'

const mmPerInch = 25.4
const mmPerMil = 0.0254

/** AWG, ohm per 1000 ft at 25 C and at 65 C as the figure prints them. */
const rows = [
  ['6', '0.403', '0.465'],
  ['7', '0.508', '0.586'],
  ['8', '0.641', '0.739'],
  ['9', '0.808', '0.932'],
  ['10', '1.02', '1.18'],
  ['11', '1.28', '1.48'],
  ['12', '1.62', '1.87'],
] as const

const halfDigit = (printed: string) => 0.5 * 10 ** -(printed.split('.')[1]?.length ?? 0)

const source = 'US Navy NEETS module 4, Introduction to Electrical Conductors, Wiring Techniques, and Schematic Reading'

export const reference: readonly Reference[] = [
  {
    source,
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
  },
  {
    source,
    clause: 'figure 1B, 25 and 65 degC columns',
    status: 'published',
    cases: rows.map(
      ([gauge, at25, at65]): ReferenceCase => ({
        title: `AWG ${gauge}, ${at25} ohm per 1000 ft at 25 C, at 65 C`,
        printed: at65,
        unit: 'ohm',
        got: () => coilResistanceAtOhm({ resistanceOhm: Number(at25), atC: 25, wantedC: 65 }),
        allowed: {
          absolute: halfDigit(at65) + 1.16 * halfDigit(at25),
          why: 'half the last digit of both columns: the value at 25 C is rounded too, and grows 1.16 times',
        },
      }),
    ),
  },
]
