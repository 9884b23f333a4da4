import { adiabaticFaultCurrentA } from '../packages/core/src/ampacity/index.ts'
import { adiabatic } from '../packages/core/src/tables/index.ts'
import type { Reference, ReferenceCase } from './compare.ts'

type FaultMetal = 'copper' | 'aluminium' | 'steel'

/** Printed k: the current of 1 mm2 for 1 s. */
const k = (material: FaultMetal, initialC: number, finalC: number) => () => adiabaticFaultCurrentA({ areaMm2: 1, timeS: 1, material, initialC, finalC })

const insulated = adiabatic.kInsulated.flatMap((row) =>
  (['copper', 'aluminium', 'steel'] as const).flatMap((material): readonly ReferenceCase[] => {
    const printed = row[material]
    if (printed === null) return []
    return [
      {
        title: `${row.place}, ${row.insulation}, ${material}, ${row.initialC} to ${row.finalC} C`,
        printed: String(printed),
        unit: 'A s^0.5/mm2',
        got: k(material, row.initialC, row.finalC),
        ...(row.status === 'from memory' ? ({ status: 'from memory' } as const) : {}),
      },
    ]
  }),
)

export const reference: readonly Reference[] = [
  {
    source: 'IEC 60364-4-43 and 60364-5-54, as the national edition NEN 1010 prints them',
    clause: 'k of line conductors in cables and of protective conductors outside them',
    status: 'published',
    notes: 'Aluminium from 90 to 250 C comes to 94.48 with the standard K of 148, printed 94; with K from its own constants it is 94.55.',
    cases: insulated,
  },
  {
    source: 'IEC 60364-5-54, as the national edition NEN 1010 prints it',
    clause: 'k of bare protective conductors',
    status: 'published',
    cases: adiabatic.kBare.map(
      (row): ReferenceCase => ({
        title: `${row.condition}, ${row.material}, ${row.initialC} to ${row.finalC} C`,
        printed: String(row.k),
        unit: 'A s^0.5/mm2',
        got: k(row.material, row.initialC, row.finalC),
      }),
    ),
  },
]
