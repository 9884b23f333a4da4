import { Worker } from 'node:worker_threads'
import { entries } from '../docs/entries.ts'
import type { Entry } from '../docs/extract.ts'
import type { Job, Tally } from './callsWorker.ts'
import type { PartResult } from './results.ts'

/** A call that runs longer than this hangs. */
const hangMs = 20_000
/** A slow function may not eat the hour of the others. */
const budgetMs = 90_000

interface Told extends Tally {
  readonly name: string
  readonly hung: number | undefined
}

const none: Tally = { made: 0, values: 0, refused: {}, slowestMs: 0, wrong: [], wrongCount: 0 }

function inThread(entry: Entry, from: number, count: number, seed: number): Promise<Told> {
  const progress = new SharedArrayBuffer(4)
  const running = new Int32Array(progress)
  running[0] = -1
  const job: Job = { entry, from, count, seed, budgetMs, progress }
  return new Promise((resolve, reject) => {
    const worker = new Worker(new URL('./callsWorker.ts', import.meta.url), { workerData: job })
    let [last, since] = [-1, Date.now()]
    const timer = setInterval(() => {
      const now = Atomics.load(running, 0)
      if (now !== last) {
        last = now
        since = Date.now()
      } else if (Date.now() - since > hangMs) finish({ ...none, made: Math.max(0, now - from), name: entry.name, hung: now })
    }, 500)
    const finish = (told: Told): void => {
      clearInterval(timer)
      void worker.terminate()
      resolve(told)
    }
    worker.once('message', (tally: Tally) => finish({ ...tally, name: entry.name, hung: undefined }))
    worker.once('error', (error) => {
      clearInterval(timer)
      reject(new Error(`${entry.name}: ${error.message}`))
    })
  })
}

/** Random calls over every public function that has an example: a finite value or one of the named errors, from frozen inputs, without hanging. */
export async function calls(count: number, seed: number, say: (text: string) => void): Promise<PartResult> {
  const functions = entries().filter((entry) => entry.kind === 'function' && entry.doc.examples.length > 0)
  const without = entries().filter((entry) => entry.kind === 'function' && entry.doc.examples.length === 0)
  const told: Told[] = []
  // What the slow ones leave of the count goes to those that come after them; a second round gives the rest to the fast ones.
  let left = count
  for (const round of [0, 1]) {
    const willing =
      round === 0 ? functions : functions.filter((entry) => told.some((one) => one.name === entry.name && one.hung === undefined && one.slowestMs < 50))
    for (const [index, entry] of willing.entries()) {
      if (left <= 0) break
      const share = Math.ceil(left / (willing.length - index))
      const made = told.filter((one) => one.name === entry.name).reduce((sum, one) => sum + one.made, 0)
      const one = await inThread(entry, made, share, seed)
      told.push(one)
      left -= one.made
      say(`${entry.name}: ${one.made}`)
    }
  }
  return summary(told, count, seed, without)
}

function summary(told: readonly Told[], count: number, seed: number, without: readonly Entry[]): PartResult {
  const total = (of: (one: Told) => number): number => told.reduce((sum, one) => sum + of(one), 0)
  const names = [...new Set(told.map(({ name }) => name))]
  const made = total((one) => one.made)
  const wrongCount = total((one) => one.wrongCount)
  const hung = told.filter((one) => one.hung !== undefined)
  const rows = names.map((name) => {
    const mine = told.filter((one) => one.name === name)
    const sum = (of: (one: Told) => number): number => mine.reduce((all, one) => all + of(one), 0)
    const refused: Record<string, number> = {}
    for (const [error, times] of mine.flatMap((one) => Object.entries(one.refused))) refused[error] = (refused[error] ?? 0) + times
    const errors = Object.entries(refused).map(([error, times]) => `${error} ${times}`)
    return `| ${name} | ${sum((one) => one.made)} | ${sum((one) => one.values)} | ${errors.join(', ')} | ${sum((one) => one.wrongCount)} | ${Math.max(...mine.map((one) => one.slowestMs)).toFixed(1)} |`
  })
  const wrong = told.flatMap((one) => one.wrong.map(({ index, why, inputs }) => `- ${one.name}, call ${index}: ${why}\n  \`${inputs}\``))
  const details = [
    `Seed ${seed}. Inputs start from the docstrings' examples; numbers, words, lists and absent fields vary, mostly within the domains. All inputs are frozen. A call counts as wrong if its result holds NaN or an infinity, or if it throws anything but the named errors; it hangs after ${hangMs / 1000} s.`,
    without.length === 0 ? '' : `Left out, for want of an example: ${without.map(({ name }) => name).join(', ')}.`,
    ...hung.map((one) => `- ${one.name} HUNG at call ${one.hung}`),
    ...wrong,
    `| function | calls | values | refusals | wrong | slowest ms |\n| --- | --- | --- | --- | --- | --- |\n${rows.join('\n')}`,
  ]
  return {
    ok: wrongCount === 0 && hung.length === 0,
    summary: `${made} of ${count} calls over ${names.length} functions, ${wrongCount} wrong, ${hung.length} hung`,
    details: details.filter((one) => one !== '').join('\n\n'),
  }
}
