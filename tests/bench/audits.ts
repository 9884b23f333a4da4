import { spawnSync } from 'node:child_process'
import { auditRow } from '@strandwise/planner'
import { root } from '../repository/tree.ts'
import { measure } from './measure.ts'
import type { Figure } from './report.ts'

const row = { name: 'feed', areaMm2: 1.5, insulation: 'XLPE', outLengthM: 3, returnLengthM: 3, currentA: 4.2, supplyV: 12, ambientC: 30 } as const
const tableRows = 100_000

function rowsASecond(fuse: { readonly fuseA?: number }): number {
  const [timing] = measure({
    rows: (count) => {
      let sum = 0
      for (let line = 1; line <= count; line += 1) sum += auditRow({ ...row, ...fuse, currentA: 3 + (line % 16) * 0.1 }, line) === undefined ? 0 : 1
      return sum
    },
  })
  return 1e9 / (timing?.nsPerCall ?? Number.NaN)
}

/** Seconds that the command takes for so many rows, on one thread. */
function commandS(rows: number): number {
  const lines = Array.from({ length: rows }, (_, n) => `wire ${n},1.5,XLPE,${(1 + (n % 70) / 10).toFixed(2)},${(1 + (n % 90) / 10).toFixed(2)},12,40`)
  const input = `name,areaMm2,insulation,outLengthM,currentA,supplyV,ambientC\n${lines.join('\n')}\n`
  const args = [`${root}packages/planner/bin/strandwise.mjs`, 'audit', '-', '--workers', '1']
  const start = performance.now()
  const { status, stderr } = spawnSync(process.execPath, args, { input, maxBuffer: 1e9 })
  if (status === null || status > 1) throw new Error(String(stderr))
  return (performance.now() - start) / 1000
}

/** Rows of an audit: one call a row, and a table through the command with its start taken off. */
export function audits(): readonly Figure[] {
  const startS = commandS(1)
  return [
    { what: 'audit rows a second, without a fuse', value: rowsASecond({}), unit: '', atLeast: 120_000 },
    { what: 'audit rows a second, with a fuse', value: rowsASecond({ fuseA: 10 }), unit: '' },
    {
      what: 'rows a second from table to table',
      value: tableRows / (commandS(tableRows) - startS),
      unit: '',
      atLeast: 60_000,
      note: 'one thread, start taken off',
    },
  ]
}
