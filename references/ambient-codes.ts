import { ambientFactor } from '../packages/core/src/ampacity/index.ts'
import { type AmbientTable, ambientFactors } from '../packages/core/src/tables/index.ts'
import type { Reference, ReferenceCase } from './compare.ts'

const limits = [60, 70, 75, 90, 150, 200, 250] as const

/** A span's factor is that of its hottest degree. A factor of exactly 1 at the reference proves nothing and is left out. */
function casesOf(table: AmbientTable): readonly ReferenceCase[] {
  return table.rows.flatMap((row) =>
    limits.flatMap((limitC): ReferenceCase[] => {
      const printed = row[`limit${limitC}C`]
      if (printed === undefined || printed === null || row.toC === table.referenceC) return []
      return [
        {
          title: `${limitC} C insulation in air of ${row.fromC === null ? `${row.toC} C or less` : row.fromC === row.toC ? `${row.toC} C` : `${row.fromC} to ${row.toC} C`}`,
          printed: printed.toFixed(2),
          unit: '1',
          got: () => ambientFactor({ limitC, ambientC: row.toC, referenceAmbientC: table.referenceC }),
          ...(row.status === 'from memory' ? { status: 'from memory' } : {}),
        },
      ]
    }),
  )
}

const notes = 'The figures are those of the shipped table; the square-root law computes each at the hottest degree of its span.'

export const reference: readonly Reference[] = [
  {
    source: 'NFPA 70, National Electrical Code',
    clause: 'table 310.15(B)(1), ambient factors for ampacities at 30 C',
    status: 'published',
    notes,
    cases: casesOf(ambientFactors.nec30C),
  },
  {
    source: 'NFPA 70, National Electrical Code',
    clause: 'table 310.15(B)(2), ambient factors for ampacities at 40 C',
    status: 'published',
    notes,
    cases: casesOf(ambientFactors.nec40C),
  },
  {
    source: 'IEC 60364-5-52, Selection and erection of electrical equipment, wiring systems',
    edition: '2009',
    clause: 'table B.52.14, ambient factors in air',
    status: 'published',
    notes,
    cases: casesOf(ambientFactors.iec30C),
  },
]
