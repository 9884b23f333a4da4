import { fusingCurrentPreeceA } from '../packages/core/src/ampacity/index.ts'
import type { Reference } from './compare.ts'

const inchMm = 25.4
type FuseMetal = Parameters<typeof fusingCurrentPreeceA>[0]['material']
const atInches = (inches: number, material: FuseMetal) => () => fusingCurrentPreeceA({ diameterMm: inches * inchMm, material })
/** Diameter in inches that melts at a current, by inverting the power law. */
const inchesFor = (currentA: number, material: FuseMetal) => () => (currentA / fusingCurrentPreeceA({ diameterMm: inchMm, material })) ** (2 / 3)

export const reference: readonly Reference[] = [
  {
    source: 'Table of fusing currents by Preece, technical data of a wire handbook',
    clause: 'copper, diameter in inches for a current',
    status: 'published',
    cases: [
      { title: '20 A, copper', printed: '0.0156', unit: 'in', got: inchesFor(20, 'copper') },
      { title: '50 A, copper', printed: '0.0288', unit: 'in', got: inchesFor(50, 'copper') },
    ],
  },
  {
    source: 'Worked reply on the melting of a copper wire in a physics forum',
    clause: 'Preece, 10244 A per inch to the power 1.5',
    status: 'published',
    cases: [{ title: '0.0524 in of copper', printed: '123', unit: 'A', got: atInches(0.0524, 'copper') }],
  },
  {
    source: 'Raju, Electronics Devices and Circuits',
    clause: 'example 1.1, p. 23, wire of 0.0031 in, as an open companion works it',
    status: 'derived',
    notes: 'A second print of four constants. Its fifth, called silver, is that of German silver with two digits swapped and is not used.',
    cases: [
      { title: '0.0031 in of copper', printed: '1.77', unit: 'A', got: atInches(0.0031, 'copper') },
      { title: '0.0031 in of aluminium', printed: '1.31', unit: 'A', got: atInches(0.0031, 'aluminium') },
      { title: '0.0031 in of iron', printed: '0.54', unit: 'A', got: atInches(0.0031, 'iron') },
      { title: '0.0031 in of tin', printed: '0.28', unit: 'A', got: atInches(0.0031, 'tin') },
    ],
  },
  {
    source: 'Kapoor, A Textbook of Electrical and Electronics Engineering Materials',
    clause: 'example 2.17, p. 29, as an open companion works it',
    status: 'derived',
    cases: [
      {
        title: 'a wire of half the diameter of one that fuses at 27.5 A',
        printed: '9.723',
        unit: 'A',
        got: () => (27.5 * fusingCurrentPreeceA({ diameterMm: 0.254, material: 'copper' })) / fusingCurrentPreeceA({ diameterMm: 0.508, material: 'copper' }),
      },
    ],
  },
]
