import { ambientFactor, groupingFactor } from '../packages/core/src/ampacity/index.ts'
import { type AmbientRow, ambientFactors, groupingFactors } from '../packages/core/src/tables/index.ts'
import type { Reference, ReferenceCase } from './compare.ts'

const limits = [60, 75, 90, 150, 200, 250] as const

/** Each printed factor against the square-root law at the highest degree of its span; the reference row of ones is left out, as it proves nothing. */
function law(rows: readonly AmbientRow[], referenceC: number): readonly ReferenceCase[] {
  return rows
    .filter(({ toC }) => toC !== referenceC)
    .flatMap((row) =>
      limits.flatMap((limitC): readonly ReferenceCase[] => {
        const factor = row[`limit${limitC}C`]
        if (factor === undefined || factor === null) return []
        return [
          {
            title: `${limitC} C insulation, ${row.fromC === null ? `up to ${row.toC}` : `${row.fromC} to ${row.toC}`} C, at ${row.toC} C`,
            printed: factor.toFixed(2),
            unit: '1',
            got: () => ambientFactor({ limitC, ambientC: row.toC, referenceAmbientC: referenceC }),
          },
        ]
      }),
    )
}

export const reference: readonly Reference[] = [
  {
    source: 'NFPA 70, National Electrical Code',
    clause: 'table 310.15(B)(1), ambient factors for ampacities stated at 30 C',
    status: 'published',
    cases: law(ambientFactors.nec30C.rows, ambientFactors.nec30C.referenceC),
  },
  {
    source: 'NFPA 70, National Electrical Code',
    clause: 'table 310.15(B)(2), ambient factors for ampacities stated at 40 C',
    status: 'published',
    cases: law(ambientFactors.nec40C.rows, ambientFactors.nec40C.referenceC),
  },
  {
    source: 'NFPA 70, National Electrical Code',
    clause: 'adjustment for more than three current-carrying conductors',
    status: 'published',
    cases: groupingFactors.nec.rows.flatMap(({ from, to, factor }) =>
      [from, to ?? from + 100].map(
        (loadedConductors, index): ReferenceCase => ({
          title: `${loadedConductors} conductors, ${index === 0 ? 'first' : 'last'} of its row`,
          printed: factor.toFixed(2),
          unit: '1',
          got: () => groupingFactor({ loadedConductors, table: 'nec' }),
          looksUp: true,
        }),
      ),
    ),
  },
]
