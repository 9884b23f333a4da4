import { spawn } from 'node:child_process'
import { once } from 'node:events'
import type { Readable, Writable } from 'node:stream'
import { root } from '../repository/tree.ts'
import type { PartResult } from './results.ts'

/** Written by the child when it ends, on its fourth stream. */
interface Used {
  readonly maxRSS: number
  readonly userCPUTime: number
  readonly systemCPUTime: number
}

/** Peak memory may grow by this factor from the second to the last length, ten times as long. */
const flatWithin = 1.2
/** Time in proportion to the rows, within this of exponent 1. */
const exponentWithin = 0.1

const report = "import { writeSync } from 'node:fs'; process.on('exit', () => writeSync(3, JSON.stringify(process.resourceUsage())))"
const linesAtOnce = 2000

async function feed(stdin: Writable, rows: number): Promise<void> {
  stdin.write('name,areaMm2,insulation,outLengthM,currentA,supplyV,ambientC\n')
  for (let from = 0; from < rows; from += linesAtOnce) {
    let text = ''
    for (let n = from; n < Math.min(rows, from + linesAtOnce); n += 1)
      text += `wire ${n},1.5,XLPE,${(1 + (n % 70) / 10).toFixed(2)},${(1 + (n % 90) / 10).toFixed(2)},12,${20 + (n % 41)}\n`
    if (!stdin.write(text)) await once(stdin, 'drain')
  }
  stdin.end()
}

/** Sends rows made on the fly through the command; lines that came out, memory and time that it took. */
async function audited(rows: number, workers: number): Promise<{ readonly lines: number; readonly peakMb: number; readonly cpuS: number }> {
  const command = [
    `--import=data:text/javascript,${encodeURIComponent(report)}`,
    `${root}packages/planner/bin/strandwise.mjs`,
    'audit',
    '-',
    '--workers',
    `${workers}`,
  ]
  const child = spawn(process.execPath, command, { stdio: ['pipe', 'pipe', 'ignore', 'pipe'] })
  let lines = 0
  child.stdout?.on('data', (bytes: Uint8Array) => {
    for (const byte of bytes) if (byte === 0x0a) lines += 1
  })
  let told = ''
  ;(child.stdio[3] as Readable).on('data', (text) => {
    told += text
  })
  const closed = once(child, 'close')
  await feed(child.stdin as Writable, rows)
  await closed
  const used = JSON.parse(told) as Used
  return { lines, peakMb: used.maxRSS / 1024, cpuS: (used.userCPUTime + used.systemCPUTime) / 1e6 }
}

/** Long lists: every row comes out, memory stays flat, time is in proportion. */
export async function rows(count: number, say: (text: string) => void): Promise<PartResult> {
  const lengths = [count / 100, count / 10, count].map(Math.ceil)
  const start = await audited(1, 1)
  const found = []
  for (const length of lengths) {
    say(`${length} rows`)
    found.push({ length, workers: 1, ...(await audited(length, 1)) })
  }
  const [, before, last] = found as [unknown, (typeof found)[0], (typeof found)[0]]
  found.push({ length: before.length, workers: 2, ...(await audited(before.length, 2)) })
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
    details: `| rows | threads | rows out | peak, MB | processor time, s | rows a second |\n| --- | --- | --- | --- | --- | --- |\n${table.join('\n')}\n\nProcessor time without the start of the command, ${start.cpuS.toFixed(2)} s; with threads it is the sum of all.`,
  }
}
