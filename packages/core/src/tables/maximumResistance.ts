import { DomainError, requireChoice, requirePositive, UnknownEntryError } from '../errors/index.ts'
import { type Iec60228Row, iec60228 } from './iec60228.ts'
import { type Iso6722Row, iso6722 } from './iso6722.ts'

const standards = ['IEC 60228', 'ISO 6722-1'] as const
const classes = [1, 2, 5, 6] as const
const coatings = ['plain', 'metal-coated'] as const
/** Metres in a kilometre. */
const mPerKm = 1000

/**
 * Largest resistance at 20 degC that a new copper conductor of a standard size may have; only the sizes that the standard lists.
 * IEC 60228 needs the class; ISO 6722-1 has none, and its figures are from memory: a plausibility check, not an acceptance limit.
 *
 * @equation row of iec60228 or iso6722
 * @symbol R' - result - ohm/m - maximum resistance at 20 C
 * @domain areaMm2: above 0
 * @throws DomainError outside the domain, for a class that is missing or doesn't belong, for a coating that is neither
 * @throws UnknownEntryError for a standard or a size that has no row, with those that have
 * @example
 * maximumResistanceOhmPerM({ standard: 'IEC 60228', areaMm2: 1.5, conductorClass: 5, coating: 'metal-coated' }) // 0.0137
 * @source IEC 60228:2004, tables 1 to 4; ISO 6722-1:2011 from memory
 */
export function maximumResistanceOhmPerM(i: {
  readonly standard: 'IEC 60228' | 'ISO 6722-1'
  readonly areaMm2: number
  readonly conductorClass?: 1 | 2 | 5 | 6
  readonly coating: 'plain' | 'metal-coated'
}): number {
  if (!standards.includes(i.standard)) throw new UnknownEntryError('standard', i.standard, standards)
  requirePositive('areaMm2', i.areaMm2)
  requireChoice('coating', i.coating, coatings)
  if (i.standard === 'IEC 60228') {
    if (i.conductorClass === undefined) throw new DomainError('conductorClass', undefined, classes.join(', '), 'IEC 60228', 'missing')
    requireChoice('conductorClass', i.conductorClass, classes, 'IEC 60228')
    return exactRow(iec60228.rows, i)
  }
  if (i.conductorClass !== undefined)
    throw new DomainError('conductorClass', i.conductorClass, 'no class: its sizes have one resistance each', 'ISO 6722-1', 'contradiction')
  return exactRow(iso6722.rows, i)
}

interface Wanted {
  readonly areaMm2: number
  readonly conductorClass?: number
  readonly coating: 'plain' | 'metal-coated'
}

function exactRow(rows: readonly (Iec60228Row | (Iso6722Row & { readonly conductorClass?: never }))[], { areaMm2, conductorClass, coating }: Wanted): number {
  const key = coating === 'plain' ? 'plainOhmPerKm' : 'metalCoatedOhmPerKm'
  for (const row of rows) {
    const ohmPerKm = row[key]
    if (row.areaMm2 === areaMm2 && row.conductorClass === conductorClass && ohmPerKm !== null) return ohmPerKm / mPerKm
  }
  const known = rows.filter((row) => row.conductorClass === conductorClass && row[key] !== null)
  throw new UnknownEntryError(
    'areaMm2',
    areaMm2,
    known.map((row) => String(row.areaMm2)),
  )
}
