import { requireWhole, UnknownEntryError } from '../errors/index.ts'
import { type GroupingRow, groupingFactors } from '../tables/index.ts'

/** The conductor counts of a row as text: "4", "4 to 6", "41 or more". */
function span({ from, to }: GroupingRow): string {
  return to === null ? `${from} or more` : to === from ? `${from}` : `${from} to ${to}`
}

/**
 * Gives the share of its current that each loaded conductor keeps among others, as a code's table prints it.
 *
 * @equation row of groupingFactors
 * @symbol n - loadedConductors - 1 - loaded conductors, or circuits, or wires, as the table counts them
 * @symbol F - result - 1 - factor on the current
 * @domain loadedConductors: whole at least 1
 * @throws DomainError outside the domain
 * @throws UnknownEntryError for a table or a number that none of its rows holds; nothing is interpolated
 * @example
 * groupingFactor({ loadedConductors: 8, table: 'nec' }) // 0.7
 * @source NFPA 70; IEC 60364-5-52, B.52.17; 33 CFR 183.425 note 2; SAE AS50881, bundle curve
 */
export function groupingFactor(i: { readonly loadedConductors: number; readonly table: keyof typeof groupingFactors }): number {
  const n = requireWhole('loadedConductors', i.loadedConductors, 1)
  if (!Object.hasOwn(groupingFactors, i.table)) throw new UnknownEntryError('table', i.table, Object.keys(groupingFactors))
  const rows: readonly GroupingRow[] = groupingFactors[i.table].rows
  for (const { from, to, factor } of rows) if (n >= from && (to === null || n <= to)) return factor
  throw new UnknownEntryError('loadedConductors', n, rows.map(span))
}
