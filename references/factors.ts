import { parseQuantity } from '../packages/working/src/quantity/index.ts'
import type { Reference, ReferenceCase } from './compare.ts'

/** Tubing dimensions that the table prints in both units: inches, millimetres. */
const tubing = [
  ['0.023', '0.58'],
  ['0.031', '0.79'],
  ['0.046', '1.17'],
  ['0.062', '1.57'],
  ['0.063', '1.60'],
  ['0.093', '2.36'],
  ['0.125', '3.17'],
  ['0.187', '4.75'],
  ['0.250', '6.35'],
  ['0.375', '9.52'],
  ['0.500', '12.70'],
  ['0.750', '19.05'],
  ['1.000', '25.40'],
  ['1.500', '38.10'],
  ['2.000', '50.80'],
  ['0.016', '0.41'],
  ['0.017', '0.43'],
  ['0.020', '0.51'],
  ['0.025', '0.64'],
  ['0.030', '0.76'],
  ['0.035', '0.89'],
  ['0.040', '1.02'],
  ['0.045', '1.14'],
] as const

export const reference: readonly Reference[] = [
  {
    source: 'SAE AS23053/5, Insulation Sleeving, Electrical, Heat Shrinkable, Polyolefin, Flexible, Crosslinked',
    clause: 'dimension table in inches and millimetres, as a maker reprints it',
    status: 'published',
    cases: tubing.map(
      ([inches, millimetres]): ReferenceCase => ({
        title: `${inches} in in millimetres`,
        printed: millimetres,
        unit: 'mm',
        got: () => parseQuantity(`${inches} in`, 'lengthMm'),
      }),
    ),
  },
  {
    source: 'Kuphaldt, Lessons in Electric Circuits',
    clause: 'specific resistance: conductor table in ohm circular mil per foot',
    status: 'published',
    cases: [
      {
        title: '1 ohm cmil/ft in ohm metres',
        printed: '1.66243e-9',
        unit: 'ohm m',
        got: () => (parseQuantity('1 cmil', 'areaMm2') * 1e-6) / parseQuantity('1 ft', 'lengthM'),
      },
    ],
  },
]
