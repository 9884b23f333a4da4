import { spawn } from 'node:child_process'

/** Steps longer than this show progress. */
const quietMs = 2000
const tickMs = 500

const seconds = (since) => `${((Date.now() - since) / 1000).toFixed(1)} s`

/** Runs a command to its end; returns both streams as one text, in writing order. */
export function run(command, args, options = {}) {
  return new Promise((resolve) => {
    const child = spawn(command, args, { ...options, stdio: ['ignore', 'pipe', 'pipe'] })
    let output = ''
    child.stdout.on('data', (chunk) => {
      output += chunk
    })
    child.stderr.on('data', (chunk) => {
      output += chunk
    })
    child.on('error', (error) => resolve({ code: 127, output: `${output}${error.message}\n` }))
    child.on('close', (code, signal) => resolve({ code: code ?? 1, output: signal === null ? output : `${output}ended by ${signal}\n` }))
  })
}

/** Prints one line for a step: its name while running; mark, note and time when done; then the output of a failing step. `work` returns { ok, output, note } and may throw. */
export async function step(name, work) {
  const since = Date.now()
  const live = process.stdout.isTTY === true
  const label = `  ${name.padEnd(14)}`
  let timer
  if (live) {
    timer = setInterval(() => {
      if (Date.now() - since >= quietMs) process.stdout.write(`\r${label} … ${seconds(since)}`)
    }, tickMs)
  } else process.stdout.write(label)
  const result = await work().catch((error) => ({ ok: false, output: String(error?.stack ?? error), note: '' }))
  clearInterval(timer)
  const line = `${result.ok ? 'ok  ' : 'FAIL'} ${seconds(since).padStart(8)}  ${result.note ?? ''}`.trimEnd()
  process.stdout.write(live ? `\r\u001b[2K${label} ${line}\n` : ` ${line}\n`)
  if (!result.ok) process.stdout.write(`${indented(result.output ?? '')}\n`)
  return result
}

function indented(text) {
  return text
    .trimEnd()
    .split('\n')
    .map((line) => `    ${line}`)
    .join('\n')
}
