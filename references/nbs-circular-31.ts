import { awgToAreaMm2, resistanceOhmPerM } from '../packages/core/src/conductor/index.ts'
import { awgTable } from '../packages/core/src/tables/index.ts'
import type { Reference, ReferenceCase } from './compare.ts'

const mPer1000Ft = 304.8
/** Sizes 4/0 to 1 were read with three digits; the table's fourth is from memory. */
const threeFigures = new Set(['4/0', '3/0', '2/0', '1/0', '1'])
/** Rows whose fourth digit depends on the fifth digit of the resistivity. */
const rounded = new Set(['10', '16', '17'])

export const reference: Reference = {
  source: 'NBS Circular 31, Copper Wire Tables',
  edition: '1914, 4th ed. 1956',
  clause: 'complete wire table, standard annealed copper, 20 C',
  status: 'published',
  notes: 'Handbook 100, which follows it, starts from diameters rounded to 0.1 mil and differs by up to 3 % in the finest sizes; it is not used.',
  cases: awgTable.rows.map(({ gauge, size, resistanceOhmPer1000Ft }): ReferenceCase => {
    // Rounded to four significant digits, or three, as printed.
    const printed = Number(resistanceOhmPer1000Ft).toPrecision(threeFigures.has(size) ? 3 : 4)
    const halfDigit = 0.5 * 10 ** -(printed.split('.')[1]?.length ?? 0)
    return {
      title: `AWG ${size}, ohm per 1000 ft`,
      printed,
      unit: 'ohm',
      got: () => resistanceOhmPerM({ areaMm2: awgToAreaMm2(gauge), material: 'annealed-copper', temperatureC: 20 }) * mPer1000Ft,
      ...(rounded.has(size)
        ? {
            allowed: {
              absolute: halfDigit + 5e-5 * resistanceOhmPer1000Ft,
              why: 'the circular starts from 0.15328 ohm g/m2 over 8.89 g/cm3, 1.72418e-8 ohm m, 0.005 % above the 1.7241e-8 used here, which moves the last digit of this row',
            },
          }
        : {}),
    }
  }),
}
