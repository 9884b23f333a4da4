import { awgToAreaMm2, awgToDiameterMm, circularMilsToMm2, resistanceOhmPerM, strandedAreaMm2 } from '@strandwise/core/conductor'

type Row = Readonly<Record<string, unknown>>

interface Difference {
  readonly column: string
  /** The function to compare with the column. */
  readonly by: string
  /** Its value in the column's unit; null if the row lacks an input. */
  readonly value: (row: Row) => number | null
}

const from = (row: Row, key: string, make: (value: number) => number): number | null => {
  const given = row[key]
  return typeof given === 'number' ? make(given) : null
}

/** Resistance of a kilometre at 20 degC of a plain copper wire of this area. */
const copperOhmPerKm = (areaMm2: number): number => 1000 * resistanceOhmPerM({ areaMm2, material: 'annealed-copper', temperatureC: 20 })

const differences: Readonly<Record<string, readonly Difference[]>> = {
  awgTable: [
    { column: 'diameterMm', by: 'awgToDiameterMm', value: (row) => from(row, 'gauge', awgToDiameterMm) },
    { column: 'areaMm2', by: 'awgToAreaMm2', value: (row) => from(row, 'gauge', awgToAreaMm2) },
    { column: 'resistanceOhmPer1000Ft', by: 'resistanceOhmPerM', value: (row) => from(row, 'gauge', (gauge) => copperOhmPerKm(awgToAreaMm2(gauge)) * 0.3048) },
  ],
  iec60228: [{ column: 'plainOhmPerKm', by: 'resistanceOhmPerM', value: (row) => from(row, 'areaMm2', copperOhmPerKm) }],
  iso6722: [{ column: 'plainOhmPerKm', by: 'resistanceOhmPerM', value: (row) => from(row, 'areaMm2', copperOhmPerKm) }],
  saeJ1128: [{ column: 'minimumAreaMm2', by: 'circularMilsToMm2', value: (row) => from(row, 'minimumCircularMils', circularMilsToMm2) }],
  strandedConstructions: [
    {
      column: 'areaMm2',
      by: 'strandedAreaMm2',
      value: (row) => from(row, 'strandCount', (strandCount) => strandedAreaMm2({ strandCount, strandDiameterMm: Number(row.strandDiameterMm) })),
    },
  ],
}

/** The columns of a table that a formula should reproduce. */
export const differenceColumns = (table: string): readonly Difference[] => differences[table] ?? []
