import { DomainError, requireFinite, requirePositive, UnknownEntryError } from '../errors/index.ts'
import { pullForceAs7928 } from './pullForceAs7928.ts'
import { pullForceIec60352 } from './pullForceIec60352.ts'
import { pullForceNasa8739 } from './pullForceNasa8739.ts'
import type { PullForceRow, PullForceTable } from './pullForceTable.ts'
import { pullForceUl486 } from './pullForceUl486.ts'

const crimpTables: Readonly<Record<string, PullForceTable>> = {
  'UL 486A-486B': pullForceUl486,
  'SAE AS7928': pullForceAs7928,
  'IEC 60352-2': pullForceIec60352,
  'NASA-STD-8739.4': pullForceNasa8739,
}

/**
 * Least force in newtons, as printed, at which a crimped sample of this size may pull out; only the sizes that the standard lists.
 * A destructive test of a sample, never a load for a repair that stays in service. Exactly one of area and gauge is given; a contact size belongs to NASA-STD-8739.4 alone.
 *
 * @equation row of pullForce
 * @symbol F - result - N - minimum pull-out force
 * @domain optional gauge: finite
 * @domain optional areaMm2: above 0
 * @domain optional contactSize: finite
 * @throws DomainError where neither or both of area and gauge are given, or a contact size where the standard has none
 * @throws UnknownEntryError for a standard, a size or a contact size that has no row, with those that have
 * @example
 * minimumPullForceN({ standard: 'UL 486A-486B', gauge: 18 }) // 89
 * @example
 * minimumPullForceN({ standard: 'IEC 60352-2', areaMm2: 1.5 }) // 150
 * @example
 * minimumPullForceN({ standard: 'NASA-STD-8739.4', gauge: 20, contactSize: 20 }) // 85
 * @source UL 486A-486B, SAE AS7928, IEC 60352-2 (from memory), NASA-STD-8739.4; each row has its status
 */
export function minimumPullForceN(i: {
  readonly standard: 'UL 486A-486B' | 'SAE AS7928' | 'IEC 60352-2' | 'NASA-STD-8739.4'
  readonly areaMm2?: number
  readonly gauge?: number
  readonly contactSize?: number
}): number {
  const table = Object.hasOwn(crimpTables, i.standard) ? crimpTables[i.standard] : undefined
  if (table === undefined) throw new UnknownEntryError('standard', i.standard, Object.keys(crimpTables))
  const key = i.areaMm2 === undefined ? 'gauge' : 'areaMm2'
  const size = i[key]
  if (size === undefined) throw new DomainError('gauge', size, 'exactly one of "gauge" and "areaMm2"', i.standard, 'missing')
  if (i.areaMm2 !== undefined && i.gauge !== undefined)
    throw new DomainError('areaMm2', i.areaMm2, 'exactly one of "gauge" and "areaMm2"', i.standard, 'contradiction')
  if (key === 'areaMm2') requirePositive(key, size)
  else requireFinite(key, size)
  const row = rowsOf(table, i.standard, i.contactSize).find((candidate) => candidate[key] === size)
  if (row === undefined) throw new UnknownEntryError(key, size, knownSizes(rowsOf(table, i.standard, i.contactSize), key))
  return row.forceN
}

function rowsOf(table: PullForceTable, standard: string, contactSize: number | undefined): readonly PullForceRow[] {
  const rows = table.rows.filter((row) => row.contactSize === contactSize)
  if (contactSize === undefined) return rows
  requireFinite('contactSize', contactSize)
  const known = [...new Set(table.rows.flatMap((row) => (row.contactSize === undefined ? [] : [String(row.contactSize)])))]
  if (known.length === 0) throw new DomainError('contactSize', contactSize, 'no contact size: this standard goes by the wire alone', standard, 'contradiction')
  if (rows.length === 0) throw new UnknownEntryError('contactSize', contactSize, known)
  return rows
}

/** The table's sizes under this key, for an error message; its gauges if no row has the key. */
function knownSizes(rows: readonly PullForceRow[], key: 'gauge' | 'areaMm2'): readonly string[] {
  const byKey = rows.flatMap((row) => (row[key] === undefined ? [] : [String(row[key])]))
  return byKey.length > 0 ? byKey : rows.map((row) => `gauge ${row.gauge}`)
}
