import { metals } from '@strandwise/core/materials'
import { scope } from '../../../tests/docs/scope.ts'

type Row = Readonly<Record<string, unknown>>

/** Where an argument comes from: a column of the row, the list that holds the row, the column's own name, or a value. */
type From =
  | { readonly column: string }
  | { readonly holder: string }
  | { readonly named: RegExp }
  | { readonly is: number | string }
  | { readonly of: (row: Row) => unknown }

interface Reproduced {
  readonly table: string
  readonly columns: RegExp
  /** The public function that should give the column. */
  readonly by: string
  /** Its arguments: fields of its object, or a list of positions. */
  readonly inputs: Readonly<Record<string, From>> | readonly From[]
  /** From the function's unit to the column's: a number, or a column to multiply with. */
  readonly times?: number | string
}

const feetInMetres = 0.3048
const ofArea: From = { column: 'areaMm2' }
const ofGauge: From = { column: 'gauge' }
const resistanceOf = (material: string, areaMm2: From): Readonly<Record<string, From>> => ({ areaMm2, material: { is: material }, temperatureC: { is: 20 } })
const gaugeArea: From = { of: (row) => (scope.awgToAreaMm2 as (gauge: unknown) => number)(row.gauge) }
const namedC: From = { named: /(\d+)C$/ }
const roomC: From = { is: 30 }

/** Columns that a public formula gives as well. A column without an entry has no formula. */
export const reproduced: readonly Reproduced[] = [
  { table: 'awgTable', columns: /^diameterMm$/, by: 'awgToDiameterMm', inputs: [ofGauge] },
  { table: 'awgTable', columns: /^areaMm2$/, by: 'awgToAreaMm2', inputs: [ofGauge] },
  { table: 'awgTable', columns: /^circularMils$/, by: 'mm2ToCircularMils', inputs: [gaugeArea] },
  {
    table: 'awgTable',
    columns: /^resistanceOhmPer1000Ft$/,
    by: 'resistanceOhmPerM',
    inputs: resistanceOf('annealed-copper', gaugeArea),
    times: 1000 * feetInMetres,
  },
  { table: 'iec60228', columns: /^plainOhmPerKm$/, by: 'resistanceOhmPerM', inputs: resistanceOf('annealed-copper', ofArea), times: 1000 },
  { table: 'iec60228', columns: /^metalCoatedOhmPerKm$/, by: 'resistanceOhmPerM', inputs: resistanceOf('tinned-copper', ofArea), times: 1000 },
  { table: 'iso6722', columns: /^plainOhmPerKm$/, by: 'resistanceOhmPerM', inputs: resistanceOf('annealed-copper', ofArea), times: 1000 },
  { table: 'iso6722', columns: /^metalCoatedOhmPerKm$/, by: 'resistanceOhmPerM', inputs: resistanceOf('tinned-copper', ofArea), times: 1000 },
  { table: 'saeJ1128', columns: /^minimumAreaMm2$/, by: 'circularMilsToMm2', inputs: [{ column: 'minimumCircularMils' }] },
  { table: 'saeJ1128', columns: /^minimumCircularMils$/, by: 'mm2ToCircularMils', inputs: [gaugeArea] },
  { table: 'faaAc4313', columns: /^circularMils$/, by: 'mm2ToCircularMils', inputs: [gaugeArea] },
  {
    table: 'faaAc4313',
    columns: /^tinnedOhmPer1000Ft$/,
    by: 'resistanceOhmPerM',
    inputs: resistanceOf('tinned-copper', { of: (row) => (scope.circularMilsToMm2 as (mils: unknown) => number)(row.circularMils) }),
    times: 1000 * feetInMetres,
  },
  {
    table: 'faaAc4313',
    columns: /^factor$/,
    by: 'altitudeFactor',
    inputs: { altitudeM: { of: ({ altitudeFt }) => (typeof altitudeFt === 'number' ? feetInMetres * altitudeFt : null) } },
  },
  {
    table: 'ambientFactors',
    columns: /^limit\d+C$/,
    by: 'ambientFactor',
    inputs: { limitC: namedC, ambientC: { column: 'toC' }, referenceAmbientC: { holder: 'referenceC' } },
  },
  {
    table: 'iec60364Currents',
    columns: /^ambient(?:40|45|50|55)C$/,
    by: 'ambientFactor',
    inputs: { limitC: { is: 70 }, ambientC: namedC, referenceAmbientC: roomC },
    times: 'ambient30C',
  },
  {
    table: 'cfr183425',
    columns: /^factor$/,
    by: 'ambientFactor',
    inputs: { limitC: { column: 'limitC' }, ambientC: { holder: 'engineSpaceC' }, referenceAmbientC: roomC },
  },
  {
    table: 'adiabatic',
    columns: /^(?:copper|aluminium|steel)$/,
    by: 'adiabaticFaultCurrentA',
    inputs: { areaMm2: { is: 1 }, timeS: { is: 1 }, material: { named: /^(.*)$/ }, initialC: { column: 'initialC' }, finalC: { column: 'finalC' } },
  },
  {
    table: 'adiabatic',
    columns: /^k$/,
    by: 'adiabaticFaultCurrentA',
    inputs: { areaMm2: { is: 1 }, timeS: { is: 1 }, material: { column: 'material' }, initialC: { column: 'initialC' }, finalC: { column: 'finalC' } },
  },
  {
    table: 'contactVoltages',
    columns: /^meltingV$/,
    by: 'contactVoltageV',
    // Of a plated metal the plating melts, which has a row of its own.
    inputs: {
      peakC: {
        of: ({ name }) =>
          name === 'tinned-copper' ? null : (metals as Readonly<Record<string, { meltingC?: { nominal: number } | null }>>)[String(name)]?.meltingC?.nominal,
      },
      bulkC: { is: 20 },
    },
  },
]

function valueFrom(from: From, row: Row, holder: Row, column: string): unknown {
  if ('column' in from) return row[from.column]
  if ('holder' in from) return holder[from.holder]
  if ('of' in from) return from.of(row)
  if ('is' in from) return from.is
  const found = from.named.exec(column)?.[1]
  return found !== undefined && /^\d+$/.test(found) ? Number(found) : found
}

/** The formula's value in the column's unit; null if the row lacks an input or the formula refuses it. */
function madeBy({ by, inputs, times = 1 }: Reproduced, row: Row, holder: Row, column: string): number | null {
  const list = Array.isArray(inputs)
  const given = Object.entries(inputs as Readonly<Record<string, From>>).map(([key, from]) => [key, valueFrom(from, row, holder, column)] as const)
  if (given.some(([, value]) => value === undefined || value === null)) return null
  const factor = typeof times === 'number' ? times : row[times]
  const call = scope[by] as (...values: readonly unknown[]) => number
  try {
    const value = list ? call(...given.map(([, one]) => one)) : call(Object.fromEntries(given))
    return typeof factor === 'number' ? factor * value : null
  } catch (error) {
    // A row outside the formula's domain has no difference.
    if (error instanceof (scope.DomainError as new () => Error) || error instanceof (scope.UnknownEntryError as new () => Error)) return null
    throw error
  }
}

export interface Difference {
  readonly column: string
  readonly by: string
  /** Percent by which the formula's value is above the row's; null without one. */
  readonly percent: (row: Row) => number | null
}

/** The columns of a table that a formula reproduces, of these keys. */
export function differencesOf(table: string, keys: readonly string[], holder: Row): readonly Difference[] {
  return reproduced
    .filter((one) => one.table === table)
    .flatMap((one) =>
      keys
        .filter((key) => one.columns.test(key))
        .map((column) => ({
          column,
          by: one.by,
          percent: (row: Row) => {
            const [given, made] = [row[column], madeBy(one, row, holder, column)]
            return typeof given !== 'number' || given === 0 || made === null ? null : 100 * (made / given - 1)
          },
        })),
    )
}
