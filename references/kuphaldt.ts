import { loadCurrentA, voltageDropV } from '../packages/core/src/circuit/index.ts'
import { circularMilsToMm2, resistanceAtTemperatureOhm, resistanceOhm, resistivityOhmM } from '../packages/core/src/conductor/index.ts'
import { prospectiveCurrentA } from '../packages/core/src/protection/index.ts'
import { parseQuantity } from '../packages/working/src/quantity/index.ts'
import type { Reference } from './compare.ts'

const mPerFt = 0.3048
/** The book's copper, ohm cmil/ft: it differs from the standard metal, and resistance is proportional to it. */
const bookOhmCmilPerFt = 10.09
const bookOhmM = (bookOhmCmilPerFt * circularMilsToMm2(1) * 1e-6) / mPerFt
const run = () =>
  (resistanceOhm({ areaMm2: circularMilsToMm2(4107), lengthM: 2300 * mPerFt, material: 'annealed-copper', temperatureC: 20 }) * bookOhmM) /
  resistivityOhmM('annealed-copper', 20)

/** Each of the two wires at 35 C, as the text prints it. */
const wireOhm = 15.909
const loadOhm = 250
const currentA = () => loadCurrentA({ supplyV: 14, seriesOhm: 2 * wireOhm, load: { kind: 'resistance', resistanceOhm: loadOhm } })

const source = 'Kuphaldt, Lessons in Electric Circuits, vol. I (DC)'

export const reference: readonly Reference[] = [
  {
    source,
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
  },

  {
    source,
    clause: 'temperature coefficient of resistance: circuit with warm wires',
    status: 'published',
    cases: [
      { title: 'voltage of a 250 ohm load on 14 V through two wires of 15.909 ohm', printed: '12.42', unit: 'V', got: () => currentA() * loadOhm },
      {
        title: 'voltage along each wire of 15.909 ohm in that circuit',
        printed: '0.79',
        unit: 'V',
        got: () => voltageDropV({ currentA: currentA(), outResistanceOhm: wireOhm, returnResistanceOhm: 0 }),
      },
    ],
  },
  {
    source,
    clause: 'specific resistance: two runs of 2300 ft shorted at the far end',
    status: 'published',
    cases: [
      {
        title: '230 V over both runs, 11.301 ohm as printed',
        printed: '20.352',
        unit: 'A',
        got: () => prospectiveCurrentA({ supplyV: 230, sourceOhm: 0, loopOhm: 11.301 }),
      },
    ],
  },
  {
    source,
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
