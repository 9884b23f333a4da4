import { Worker } from 'node:worker_threads'
import { entries } from '../docs/entries.ts'
import type { Entry } from '../docs/extract.ts'
import type { Job, Tally } from './callsWorker.ts'
import type { PartResult } from './results.ts'

/** Time after which a call counts as hanging. */
const hangMs = 20_000
/** Time limit for one function. */
const budgetMs = 90_000

interface Told extends Tally {
  readonly hung: number | undefined
}

const none = { made: 0, values: 0, refused: {}, slowestMs: 0, wrong: [], wrongCount: 0 } as const

type Answer = Tally | { readonly problem: string }

/** A worker thread that takes one function after another; it is terminated and restarted when a call hangs. */
class Caller {
  readonly #running = new Int32Array(new SharedArrayBuffer(4))
  #worker: Worker | undefined
  #answer: (answer: Answer) => void = () => undefined

  async run(job: Job): Promise<Told> {
    Atomics.store(this.#running, 0, -1)
    const answer = new Promise<Answer>((resolve) => {
      this.#answer = resolve
    })
    this.#worker ??= this.#begin()
    this.#worker.postMessage(job)
    const told = await Promise.race([answer, this.#hang()])
    if (typeof told === 'number') {
      await this.end()
      return { ...none, made: Math.max(0, told - job.from), name: job.name, hung: told }
    }
    if ('problem' in told) throw new Error(`${job.name}: ${told.problem}`)
    return { ...told, hung: undefined }
  }

  #begin(): Worker {
    const worker = new Worker(new URL('./callsWorker.ts', import.meta.url), { workerData: this.#running.buffer })
    worker.on('message', (answer: Answer) => this.#answer(answer))
    worker.on('error', (error) => this.#answer({ problem: error.message }))
    return worker
  }

  /** Resolves with the index of a call that takes too long; never while calls end in time. */
  #hang(): Promise<number> {
    return new Promise((resolve) => {
      let [last, since] = [-2, Date.now()]
      const answered = this.#answer
      const timer = setInterval(() => {
        const now = Atomics.load(this.#running, 0)
        if (now !== last) {
          last = now
          since = Date.now()
        } else if (Date.now() - since > hangMs) {
          clearInterval(timer)
          resolve(now)
        }
      }, 500)
      this.#answer = (answer) => {
        clearInterval(timer)
        answered(answer)
      }
    })
  }

  async end(): Promise<void> {
    const worker = this.#worker
    this.#worker = undefined
    await worker?.terminate()
  }
}

/** Random calls of every public function with an example: the result is finite or a documented error, inputs are frozen, nothing hangs. */
export async function calls(count: number, seed: number, say: (text: string) => void): Promise<PartResult> {
  const functions = entries().filter((entry) => entry.kind === 'function' && entry.doc.examples.length > 0)
  const without = entries().filter((entry) => entry.kind === 'function' && entry.doc.examples.length === 0)
  const told: Told[] = []
  const caller = new Caller()
  // Redistribute calls that slow functions did not use; a second round gives the rest to fast ones.
  let left = count
  for (const round of [0, 1]) {
    const willing =
      round === 0 ? functions : functions.filter((entry) => told.some((one) => one.name === entry.name && one.hung === undefined && one.slowestMs < 50))
    for (const [index, entry] of willing.entries()) {
      if (left <= 0) break
      const share = Math.ceil(left / (willing.length - index))
      const made = told.filter((one) => one.name === entry.name).reduce((sum, one) => sum + one.made, 0)
      const one = await caller.run({ name: entry.name, from: made, count: share, seed, budgetMs })
      told.push(one)
      left -= one.made
      say(`${entry.name}: ${one.made}`)
    }
  }
  await caller.end()
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
    `Seed ${seed}. Inputs start from the docstrings' examples; numbers, words, lists and absent fields vary, mostly within the domains. All inputs are frozen. A call counts as wrong if its result holds NaN or an infinity, or if it throws anything but the named errors that its docstring lists; it hangs after ${hangMs / 1000} s.`,
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
