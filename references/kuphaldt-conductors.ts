import { circularMilsToMm2, resistanceAtTemperatureOhm, resistanceOhm, resistivityOhmM } from '../packages/core/src/conductor/index.ts'
import type { Reference } from './compare.ts'

const mPerFt = 0.3048
/** The book's copper, ohm cmil/ft: it differs from the standard metal, and resistance follows it in proportion. */
const bookOhmCmilPerFt = 10.09
const bookOhmM = (bookOhmCmilPerFt * circularMilsToMm2(1) * 1e-6) / mPerFt
const run = () =>
  (resistanceOhm({ areaMm2: circularMilsToMm2(4107), lengthM: 2300 * mPerFt, material: 'annealed-copper', temperatureC: 20 }) * bookOhmM) /
  resistivityOhmM('annealed-copper', 20)

export const reference: Reference = {
  source: 'Kuphaldt, Lessons in Electric Circuits, vol. I (DC)',
  clause: 'specific resistance; temperature coefficient of resistance',
  status: 'published',
  notes:
    'Its element values (copper 10.09 ohm cmil/ft, 0.004041 per kelvin) are not those of standard annealed copper; they are put in as the book gives them.',
  cases: [
    { title: '2300 ft of 4107 cmil at 10.09 ohm cmil/ft: one run', printed: '5.651', unit: 'ohm', got: run },
    { title: '2300 ft of 4107 cmil at 10.09 ohm cmil/ft: out and back', printed: '11.301', unit: 'ohm', got: () => 2 * run() },
    {
      title: 'a wire of 15 ohm at 20 C and 0.004041 per kelvin, at 35 C',
      printed: '15.909',
      unit: 'ohm',
      got: () => resistanceAtTemperatureOhm({ resistanceOhm: 15, atC: 20, wantedC: 35, coefficientPerK: 0.004041 }),
    },
  ],
}
