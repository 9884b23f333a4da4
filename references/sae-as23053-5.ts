import { recoveryRatio } from '../packages/core/src/sleeve/index.ts'
import { sleeveSizes } from '../packages/core/src/tables/index.ts'
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

type Row = { readonly nominal: string; readonly suppliedInsideMm: number; readonly recoveredInsideMm: number; readonly status: string }

/** The class has one ratio for all sizes, while each size is rounded by itself: half of the last digit of both diameters, the widest size first. */
function ratioCases(rows: readonly Row[], halfDigitMm: (mm: number) => number, why: string): Reference['cases'] {
  return rows
    .filter((row) => row.status === 'published')
    .sort((one, other) => other.suppliedInsideMm - one.suppliedInsideMm)
    .map((row) => ({
      title: `size ${row.nominal}: ${row.suppliedInsideMm} mm supplied, ${row.recoveredInsideMm} mm recovered, ratio`,
      printed: '2',
      unit: '1',
      got: () => recoveryRatio(row),
      allowed: { relative: halfDigitMm(row.suppliedInsideMm) / row.suppliedInsideMm + halfDigitMm(row.recoveredInsideMm) / row.recoveredInsideMm, why },
    }))
}

const source = 'SAE AS23053/5, Insulation Sleeving, Electrical, Heat Shrinkable, Polyolefin, Flexible, Crosslinked'

export const reference: readonly Reference[] = [
  {
    source,
    clause: 'dimension table in inches and millimetres, as a maker reprints it',
    status: 'published',
    oneFigure: true,
    notes: 'The inch in millimetres, printed 23 times: one figure.',
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
    source,
    edition: '2016',
    clause: 'dimension table, classes 1 and 2, sizes as makers declare them: ratio 2:1',
    status: 'published',
    oneFigure: true,
    notes: 'One ratio for all sizes. Sizes 3 and 4 are from memory and left out.',
    cases: ratioCases(sleeveSizes['AS23053/5'].rows, () => 0.0127 + 0.005, 'inch sizes printed to a thousandth, their millimetres to a hundredth'),
  },
  {
    source: 'Data sheet of flame-retardant cross-linked polyolefin sleeve, metric sizes',
    clause: 'size table: ratio 2:1',
    status: 'published',
    oneFigure: true,
    cases: ratioCases(
      sleeveSizes['metric 2:1'].rows,
      (mm) => (mm > 100 ? 0.5 : 0.05),
      'sizes printed to a tenth of a millimetre, above 100 mm to a millimetre',
    ),
  },
]
