import { parentPort, workerData } from 'node:worker_threads'
import { deepFreeze, evaluate, parseExample } from '../docs/example.ts'
import type { Entry } from '../docs/extract.ts'
import { outcomeOf } from '../docs/outcome.ts'
import { functionOf, scope } from '../docs/scope.ts'
import { placesOf, randomInputs } from './inputs.ts'
import { Random, seedOf } from './random.ts'

/** One function's calls, made in a thread that the main one can end when a call hangs. */
export interface Job {
  readonly entry: Entry
  readonly from: number
  readonly count: number
  readonly seed: number
  readonly budgetMs: number
  /** [index of the call that runs]. */
  readonly progress: SharedArrayBuffer
}

export interface Tally {
  readonly made: number
  readonly values: number
  readonly refused: Readonly<Record<string, number>>
  readonly slowestMs: number
  /** The first few calls that came to what must not be. */
  readonly wrong: readonly { readonly index: number; readonly why: string; readonly inputs: string }[]
  readonly wrongCount: number
}

const shownWrong = 5
const printed = (inputs: unknown): string =>
  JSON.stringify(inputs, (_key, value: unknown) =>
    typeof value === 'number' && (!Number.isFinite(value) || Object.is(value, -0)) ? `<${Object.is(value, -0) ? '-0' : value}>` : value,
  )?.slice(0, 600) ?? ''

async function tally({ entry, from, count, seed, budgetMs, progress }: Job): Promise<Tally> {
  const running = new Int32Array(progress)
  const call = functionOf(entry.name)
  const places = placesOf(entry)
  const bases = entry.doc.examples.map((code) => evaluate(parseExample(code).argumentsText, scope))
  const refused: Record<string, number> = {}
  const wrong: { index: number; why: string; inputs: string }[] = []
  let [made, values, wrongCount, slowestMs] = [0, 0, 0, 0]
  const end = performance.now() + budgetMs
  for (let index = from; index < from + count && performance.now() < end; index += 1) {
    Atomics.store(running, 0, index)
    const inputs = randomInputs(new Random(seedOf(seed, entry.name, index)), entry, bases, places).map(deepFreeze)
    const start = performance.now()
    const outcome = await outcomeOf(call, inputs)
    slowestMs = Math.max(slowestMs, performance.now() - start)
    made += 1
    if (outcome.kind === 'value') values += 1
    else if (outcome.kind === 'refused') refused[outcome.name] = (refused[outcome.name] ?? 0) + 1
    else {
      wrongCount += 1
      if (wrong.length < shownWrong) wrong.push({ index, why: outcome.why.slice(0, 300), inputs: printed(inputs) })
    }
  }
  return { made, values, refused, slowestMs, wrong, wrongCount }
}

parentPort?.postMessage(await tally(workerData as Job))
