import { spawn } from 'node:child_process'
import { once } from 'node:events'
import type { Readable, Writable } from 'node:stream'
import { root } from '../repository/tree.ts'

/** Written by the child when it ends, on its fourth stream. */
interface Used {
  readonly maxRSS: number
  readonly userCPUTime: number
  readonly systemCPUTime: number
}

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

/** Sends rows made on the fly through the command; lines that came out, peak memory and processor time, which other work on the machine hardly moves. With heapMb, long-lived memory is limited to that. */
export async function auditedRows(
  rows: number,
  workers: number,
  heapMb?: number,
): Promise<{ readonly lines: number; readonly peakMb: number; readonly cpuS: number }> {
  const command = [
    ...(heapMb === undefined ? [] : [`--max-old-space-size=${heapMb}`]),
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
