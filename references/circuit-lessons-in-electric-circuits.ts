import { loadCurrentA, voltageDropV } from '../packages/core/src/circuit/index.ts'
import { prospectiveCurrentA } from '../packages/core/src/protection/index.ts'
import type { Reference } from './compare.ts'

/** Each of the two wires at 35 C, as the text prints it. */
const wireOhm = 15.909
const loadOhm = 250
const currentA = () => loadCurrentA({ supplyV: 14, seriesOhm: 2 * wireOhm, load: { kind: 'resistance', resistanceOhm: loadOhm } })

const source = 'Kuphaldt, Lessons in Electric Circuits, vol. I (DC)'

export const reference: readonly Reference[] = [
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
]
