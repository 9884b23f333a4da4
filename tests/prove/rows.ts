import { auditedRows } from '../bench/auditedRows.ts'
import type { PartResult } from './results.ts'

/** Long-lived memory that the command is given where memory is measured: what grew with the list would end it. Time is measured without a limit, which costs collections. */
const heapMb = 128
/** Peak memory may grow by this factor from the second to the last length, ten times as long. */
const flatWithin = 1.2
/** Time in proportion to the rows, within this of exponent 1. */
const exponentWithin = 0.1

/** Long lists: every row comes out, memory stays flat, time is in proportion. */
export async function rows(count: number, say: (text: string) => void): Promise<PartResult> {
  const lengths = [count / 100, count / 10, count].map(Math.ceil)
  const start = await auditedRows(1, 1)
  const found = []
  for (const length of lengths) {
    say(`${length} rows`)
    const { peakMb } = await auditedRows(length, 1, heapMb)
    found.push({ length, workers: 1, ...(await auditedRows(length, 1)), peakMb })
  }
  const [, before, last] = found as [unknown, (typeof found)[0], (typeof found)[0]]
  found.push({ length: before.length, workers: 2, ...(await auditedRows(before.length, 2, heapMb)) })
  const exponent = Math.log((last.cpuS - start.cpuS) / (before.cpuS - start.cpuS)) / Math.log(last.length / before.length)
  const grown = last.peakMb / before.peakMb
  const whole = found.every(({ length, lines }) => lines === length + 1)
  const table = found.map(
    ({ length, workers, lines, peakMb, cpuS }) =>
      `| ${length} | ${workers} | ${lines - 1} | ${peakMb.toFixed(0)} | ${(cpuS - start.cpuS).toFixed(1)} | ${Math.round(length / (cpuS - start.cpuS))} |`,
  )
  return {
    ok: whole && grown < flatWithin && Math.abs(exponent - 1) < exponentWithin,
    summary: `${last.length} rows: peak memory ${last.peakMb.toFixed(0)} MB (${grown.toFixed(2)} times that of a tenth), time to the power ${exponent.toFixed(3)}, ${Math.round(last.length / (last.cpuS - start.cpuS))} rows a second of processor time`,
    details: `| rows | threads | rows out | peak, MB | processor time, s | rows a second |\n| --- | --- | --- | --- | --- | --- |\n${table.join('\n')}\n\nProcessor time without the start of the command, ${start.cpuS.toFixed(2)} s; with threads it is the sum of all. Peaks are of a run of their own, with long-lived memory limited to ${heapMb} MB.`,
  }
}
