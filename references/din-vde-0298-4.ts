import { ambientFactor, groupingFactor, steadyCurrentBandA } from '../packages/core/src/ampacity/index.ts'
import { groupingFactors } from '../packages/core/src/tables/index.ts'
import type { Reference, ReferenceCase } from './compare.ts'
import { bunchFactor, cableCurrentA, pvcWire, wallMm } from './pvcCables.ts'

const source = 'DIN VDE 0298-4, Recommended current-carrying capacity of cables'

/** Air temperature in degC and printed factor; 30 with factor 1 is left out, as it proves nothing. */
const ambient = [
  [10, '1.22'],
  [15, '1.17'],
  [20, '1.12'],
  [25, '1.06'],
  [35, '0.94'],
  [40, '0.87'],
  [45, '0.79'],
  [50, '0.71'],
  [55, '0.61'],
  [60, '0.50'],
  [65, '0.35'],
] as const

/** Area in mm2, printed amperes of a single wire, and of a cable with two or three loaded cores. */
const currents = [
  [0.75, '15', '12'],
  [1, '19', '15'],
  [1.5, '24', '18'],
  [2.5, '32', '26'],
  [4, '42', '34'],
  [6, '54', '44'],
  [10, '73', '61'],
  [16, '98', '82'],
] as const

/** Number of loaded cores, and printed factor on the current of the cable. */
const cores = [
  [5, '0.75'],
  [7, '0.65'],
  [10, '0.55'],
  [14, '0.50'],
  [19, '0.45'],
  [24, '0.40'],
  [40, '0.35'],
  [61, '0.30'],
] as const

/** Number of bunched wires, and printed factor. */
const bunched = [
  [2, '0.80'],
  [3, '0.70'],
  [4, '0.65'],
  [5, '0.60'],
  [6, '0.57'],
  [7, '0.54'],
  [8, '0.52'],
  [9, '0.50'],
  [10, '0.48'],
  [12, '0.45'],
  [14, '0.43'],
  [16, '0.41'],
  [18, '0.39'],
  [20, '0.38'],
] as const

export const reference: readonly Reference[] = [
  {
    source,
    edition: '2013-06',
    clause: 'table 17 column 4, ambient factors for PVC of 70 C',
    status: 'published',
    cases: ambient.map(
      ([ambientC, printed]): ReferenceCase => ({
        title: `air of ${ambientC} C`,
        printed,
        unit: '1',
        got: () => ambientFactor({ limitC: 70, ambientC, referenceAmbientC: 30 }),
      }),
    ),
  },
  {
    source,
    edition: '2013-06',
    clause: "table 11 column 2, single wire free in air of 30 C, conductor at 70 C, in a cable maker's extract",
    status: 'published',
    notes:
      'Walls are those of common building wire, from memory, stranding fills 0.78 of its circle with 2 % of lay. Above 16 mm2 the table allows less than free still air, 5 % at 25 mm2 and 16 % at 300 mm2; those rows are not used.',
    cases: currents.map(
      ([areaMm2, printed]): ReferenceCase => ({
        title: `${areaMm2} mm2, middle of the band of two correlations`,
        printed,
        unit: 'A',
        got: () => {
          const band = steadyCurrentBandA(pvcWire(areaMm2, wallMm(areaMm2)))
          return band === null ? Number.NaN : (band.low + band.high) / 2
        },
        allowed: {
          relative: 0.06,
          why: 'the two published correlations of still air lie 5 to 7 % of the current apart, the table is rounded to whole amperes and serves every make',
        },
      }),
    ),
  },
  {
    source,
    edition: '2013-06',
    clause: 'table 11 column 5, cable on a surface with two or three loaded cores, air of 30 C, conductor at 70 C',
    status: 'published',
    notes: 'The balance is for a round cable in free air; walls and sheaths from memory. Above 16 mm2 the table allows less, as for single wires.',
    cases: currents.map(
      ([areaMm2, , printed]): ReferenceCase => ({
        title: `${areaMm2} mm2, halfway between two and three loaded cores`,
        printed,
        unit: 'A',
        got: () => (cableCurrentA(areaMm2, 2) + cableCurrentA(areaMm2, 3)) / 2,
        allowed: { relative: 0.08, why: 'one figure serves two and three loaded cores, which the balance puts 7 % to either side of their middle' },
      }),
    ),
  },
  {
    source,
    edition: '2013-06',
    clause: 'table 26, cables with many loaded cores',
    status: 'published',
    notes: 'Against a cable with two loaded cores; against three the balance keeps 12 to 24 % more than the table allows.',
    cases: cores.map(
      ([loaded, printed]): ReferenceCase => ({
        title: `${loaded} loaded cores of 1.5 mm2 over two`,
        printed,
        unit: '1',
        got: () => cableCurrentA(1.5, loaded) / cableCurrentA(1.5, 2),
        allowed: {
          absolute: 0.025 + 0.03 * Number(printed),
          why: 'the factors go in steps of a twentieth: half of one, and 3 % for the sizes and makes that one factor serves',
        },
      }),
    ),
  },
  {
    source,
    edition: '2003-08',
    clause: 'table 21, bunched, in two reprints: the heat of the bunch',
    status: 'published',
    notes: 'The table serves single wires and cables: the balance of single loaded wires gives 1 to 4 % more, that of pairs 1 to 5 % less.',
    cases: bunched.map(
      ([circuits, printed]): ReferenceCase => ({
        title: `${circuits} circuits of 2.5 mm2, halfway between single wires and pairs`,
        printed,
        unit: '1',
        got: () => (bunchFactor(circuits, 1) + bunchFactor(circuits, 2)) / 2,
        allowed: { absolute: 0.005 + 0.02 * Number(printed), why: 'half of the last digit, and 2 % for the sizes and makes that one factor serves' },
      }),
    ),
  },
  {
    source,
    edition: '2003-08',
    clause: 'table 21, bunched, in two reprints',
    status: 'published',
    cases: bunched
      .filter(([wires]) => groupingFactors['iec-bunched'].rows.some(({ from, to }) => from <= wires && wires <= (to ?? from)))
      .map(
        ([loadedConductors, printed]): ReferenceCase => ({
          title: `${loadedConductors} circuits`,
          printed,
          unit: '1',
          got: () => groupingFactor({ loadedConductors, table: 'iec-bunched' }),
          looksUp: true,
        }),
      ),
  },
]
