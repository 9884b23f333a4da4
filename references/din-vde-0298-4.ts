import { ambientFactor, groupingFactor, steadyCurrentBandA } from '../packages/core/src/ampacity/index.ts'
import { groupingFactors } from '../packages/core/src/tables/index.ts'
import type { Reference, ReferenceCase } from './compare.ts'

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

/** Area in mm2, printed amperes, wall of a common building wire in mm. */
const single = [
  [0.75, '15', 0.6],
  [1, '19', 0.6],
  [1.5, '24', 0.7],
  [2.5, '32', 0.8],
  [4, '42', 0.8],
  [6, '54', 0.8],
  [10, '73', 1],
  [16, '98', 1],
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
  [12, '0.45'],
  [16, '0.41'],
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
    cases: single.map(
      ([areaMm2, printed, insulationThicknessMm]): ReferenceCase => ({
        title: `${areaMm2} mm2, middle of the band of two correlations`,
        printed,
        unit: 'A',
        got: () => {
          const band = steadyCurrentBandA({
            areaMm2,
            conductorDiameterMm: Math.sqrt((4 * areaMm2) / Math.PI / 0.78),
            layFactor: 1.02,
            insulationThicknessMm,
            insulationConductivityWPerMK: 0.17,
            ambientC: 30,
            limitC: 70,
          })
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
