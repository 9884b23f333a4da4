import { ambientFactor, deratedCurrentA, groupingFactor } from '../packages/core/src/ampacity/index.ts'
import { ambientFactors, groupingFactors, type Iec60364CurrentRow, iec60364Currents } from '../packages/core/src/tables/index.ts'
import type { Reference, ReferenceCase } from './compare.ts'
import { cableCurrentA } from './pvcCables.ts'

const source = 'IEC 60364-5-52, Selection and erection of electrical equipment, wiring systems'
const link = { status: 'published', source } as const

const ambient = ambientFactors.iec30C.rows.flatMap((row) =>
  row.toC === 30
    ? []
    : ([70, 90] as const).flatMap((limitC): readonly ReferenceCase[] => {
        const factor = row[`limit${limitC}C`]
        if (factor === null) return []
        return [
          {
            title: `${limitC === 70 ? 'PVC' : 'XLPE and EPR'}, ${limitC} C, air at ${row.toC} C`,
            printed: factor.toFixed(2),
            unit: '1',
            got: () => ambientFactor({ limitC, ambientC: row.toC, referenceAmbientC: 30 }),
          },
        ]
      }),
)

/** Printed currents at higher ambients against the one at 30 C times the printed two-digit factor. */
function derated(method: string, rows: readonly Iec60364CurrentRow[]): readonly ReferenceCase[] {
  return rows.flatMap((row) =>
    ([40, 45, 50, 55] as const).map((ambientC): ReferenceCase => {
      const factor = Number(ambientFactor({ limitC: 70, ambientC, referenceAmbientC: 30 }).toFixed(2))
      const halved = method === 'C' && row.areaMm2 === 1.5
      return {
        title: `method ${method}, ${row.areaMm2} mm2, ${row.ambient30C} A at 30 C, air at ${ambientC} C`,
        printed: String(row[`ambient${ambientC}C`]),
        unit: 'A',
        got: () => deratedCurrentA({ baseA: row.ambient30C, links: [{ name: 'ambient', factor, source: link }] }).currentA,
        ...(halved
          ? { allowed: { absolute: 0.5 + 0.5 * factor, why: 'the 17 A it starts from is itself cut to the ampere: half of one times the factor more' } }
          : {}),
      }
    }),
  )
}

const lookUps = (table: 'iec-bunched' | 'iec-single-layer'): readonly ReferenceCase[] =>
  groupingFactors[table].rows.map(
    ({ from, factor }): ReferenceCase => ({
      title: `${table}, ${from} circuits`,
      printed: factor.toFixed(2),
      unit: '1',
      got: () => groupingFactor({ loadedConductors: from, table }),
      looksUp: true,
    }),
  )

export const reference: readonly Reference[] = [
  { source, edition: '2009', clause: 'table B.52.14, ambient factors for cables in air', status: 'published', cases: ambient },
  {
    source,
    edition: '2009',
    clause: 'table B.52.4, three loaded copper conductors, PVC of 70 C, as a machine handbook prints it for five ambients',
    status: 'published',
    cases: [...derated('B2', iec60364Currents.methodB2A), ...derated('C', iec60364Currents.methodCA)],
  },
  {
    source,
    edition: '2009',
    clause: 'table B.52.4, method C, cable on a wall with three loaded copper cores, air of 30 C, conductor at 70 C',
    status: 'published',
    notes: 'The balance is for a round cable in free air: a wall hides some of the surface and carries heat away itself.',
    cases: iec60364Currents.methodCA.map(
      ({ areaMm2, ambient30C }): ReferenceCase => ({
        title: `${areaMm2} mm2, middle of the band of two correlations`,
        printed: String(ambient30C),
        unit: 'A',
        got: () => cableCurrentA(areaMm2, 3),
        allowed: { relative: 0.07, why: 'the two correlations lie 3 to 5 % apart, walls and sheaths are from memory, and the table is cut to whole amperes' },
      }),
    ),
  },
  { source, edition: '2009', clause: 'table B.52.17, items 1 and 2', status: 'published', cases: [...lookUps('iec-bunched'), ...lookUps('iec-single-layer')] },
]
