import { resistanceAtTemperatureOhm } from '../packages/core/src/conductor/index.ts'
import { iec60228 } from '../packages/core/src/tables/index.ts'
import type { Reference, ReferenceCase } from './compare.ts'

/** Temperature of the reading in degC and factor to 20 degC; 20 with factor 1 is left out, as it proves nothing. */
const rows = [
  [5, '1.064'],
  [10, '1.042'],
  [15, '1.020'],
  [25, '0.980'],
  [30, '0.962'],
  [35, '0.943'],
  [40, '0.926'],
  [45, '0.909'],
  [50, '0.893'],
  [55, '0.877'],
  [60, '0.862'],
  [65, '0.847'],
  [70, '0.833'],
  [75, '0.820'],
  [80, '0.806'],
  [85, '0.794'],
  [90, '0.781'],
  [95, '0.769'],
  [100, '0.758'],
] as const

export const reference: Reference = {
  source: 'IEC 60228, Conductors of insulated cables',
  edition: '2004, 3rd ed.',
  clause: "temperature correction factors to 20 C, in a cable maker's reprint",
  status: 'published',
  notes: 'The standard rounds the coefficient of copper to 0.004 per kelvin; with 0.00393 the factors differ by up to 0.5 %.',
  cases: rows.map(
    ([atC, printed]): ReferenceCase => ({
      title: `1 ohm read at ${atC} C, taken to 20 C`,
      printed,
      unit: 'ohm',
      got: () => resistanceAtTemperatureOhm({ resistanceOhm: 1, atC, wantedC: 20, coefficientPerK: iec60228.temperatureCoefficient20PerK }),
    }),
  ),
}
