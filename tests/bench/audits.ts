import { auditRow } from '@strandwise/planner'
import { auditedRows } from './auditedRows.ts'
import { measure } from './measure.ts'
import type { Figure } from './report.ts'

const row = { name: 'feed', areaMm2: 1.5, insulation: 'XLPE', outLengthM: 3, returnLengthM: 3, currentA: 4.2, supplyV: 12, ambientC: 30 } as const
const tableRows = 300_000

function rowsASecond(fuse: { readonly fuseA?: number; readonly loadedInBundle?: number }): number {
  const [timing] = measure({
    rows: (count) => {
      let sum = 0
      for (let line = 1; line <= count; line += 1) sum += auditRow({ ...row, ...fuse, currentA: 3 + (line % 16) * 0.1 }, line) === undefined ? 0 : 1
      return sum
    },
  })
  return 1e9 / (timing?.nsPerCall ?? Number.NaN)
}

/** Rows of an audit: one call a row, and a table through the command with its start taken off. */
export async function audits(): Promise<readonly Figure[]> {
  const startS = (await auditedRows(1, 1)).cpuS
  const { cpuS } = await auditedRows(tableRows, 1)
  return [
    { what: 'audit rows a second, without a fuse', value: rowsASecond({}), unit: '', atLeast: 120_000 },
    { what: 'audit rows a second, with a fuse', value: rowsASecond({ fuseA: 10 }), unit: '' },
    { what: 'the same in a bundle of four', value: rowsASecond({ fuseA: 10, loadedInBundle: 4 }), unit: '' },
    {
      what: 'rows a second from table to table',
      value: tableRows / (cpuS - startS),
      unit: '',
      atLeast: 60_000,
      note: 'processor time of one thread, start taken off',
    },
  ]
}
