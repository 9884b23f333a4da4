import { parentPort, workerData } from 'node:worker_threads'
import { entries } from '../docs/entries.ts'
import { deepFreeze, evaluate, parseExample } from '../docs/example.ts'
import type { Entry } from '../docs/extract.ts'
import { asDocumented, type Outcome, outcomeOf } from '../docs/outcome.ts'
import { functionOf, scope } from '../docs/scope.ts'
import { Random, seedOf } from '../random/random.ts'
import { placesOf, randomInputs } from './inputs.ts'

/** Calls of one function, run in a thread that can be terminated when a call hangs. */
export interface Job {
  readonly name: string
  readonly from: number
  readonly count: number
  readonly seed: number
  readonly budgetMs: number
}

export interface Tally {
  readonly name: string
  readonly made: number
  readonly values: number
  readonly refused: Readonly<Record<string, number>>
  readonly slowestMs: number
  readonly wrongCount: number
  /** The first few faulty calls. */
  readonly wrong: readonly { readonly index: number; readonly why: string; readonly inputs: string }[]
}

/** A random call; `inputs` are the varied values. */
interface Made {
  readonly inputs: readonly unknown[]
  readonly outcome: Promise<Outcome>
}

const shownWrong = 5
const all = entries()

function entryOf(name: string): Entry {
  const found = all.find((entry) => entry.name === name && entry.kind === 'function')
  if (found === undefined) throw new Error(`no function is called "${name}"`)
  return found
}

/** The inner call of reportText(planRepair(demoJobs.a)): its job is varied, as plans come from nowhere else. */
function innerExample(argumentsText: string): string | undefined {
  const name = /^(\w+)\(/.exec(argumentsText)?.[1]
  return name !== undefined && all.some((entry) => entry.name === name && entry.kind === 'function') ? argumentsText : undefined
}

function maker(entry: Entry): (random: Random) => Made {
  const call = functionOf(entry.name)
  const called = async (inputs: readonly unknown[]): Promise<Outcome> => asDocumented(await outcomeOf(call, inputs), entry.doc.throws)
  const texts = entry.doc.examples.map((code) => parseExample(code).argumentsText)
  const inner = texts.map(innerExample).find((text) => text !== undefined)
  if (inner !== undefined) {
    const { callee, argumentsText } = parseExample(inner.slice(0, endOfCall(inner)))
    const source = { ...entryOf(callee), doc: { ...entryOf(callee).doc, examples: [`${callee}(${argumentsText})`] } }
    const make = maker(source)
    return (random) => {
      const { inputs, outcome } = make(random)
      return { inputs, outcome: outcome.then((one) => (one.kind === 'value' ? called([deepFreeze(one.value)]) : one)) }
    }
  }
  const places = placesOf(entry)
  const bases = texts.map((text) => evaluate(text, scope))
  return (random) => {
    const inputs = randomInputs(random, entry, bases, places).map(deepFreeze)
    return { inputs, outcome: called(inputs) }
  }
}

/** Index of the parenthesis that closes the first one. */
function endOfCall(text: string): number {
  let depth = 0
  for (const [index, letter] of [...text].entries()) {
    if (letter === '(') depth += 1
    if (letter === ')') {
      depth -= 1
      if (depth === 0) return index + 1
    }
  }
  return text.length
}

function printed(inputs: unknown): string {
  const shown = (_key: string, value: unknown): unknown =>
    typeof value === 'number' && (!Number.isFinite(value) || Object.is(value, -0)) ? `<${Object.is(value, -0) ? '-0' : value}>` : value
  return JSON.stringify(inputs, shown)?.slice(0, 400) ?? ''
}

const running = new Int32Array(workerData as SharedArrayBuffer)

async function tally({ name, from, count, seed, budgetMs }: Job): Promise<Tally> {
  const make = maker(entryOf(name))
  const refused: Record<string, number> = {}
  const wrong: { index: number; why: string; inputs: string }[] = []
  let [made, values, wrongCount, slowestMs] = [0, 0, 0, 0]
  const end = performance.now() + budgetMs
  for (let index = from; index < from + count && performance.now() < end; index += 1) {
    Atomics.store(running, 0, index)
    const start = performance.now()
    const { inputs, outcome: coming } = make(new Random(seedOf(seed, name, index)))
    const outcome = await coming
    slowestMs = Math.max(slowestMs, performance.now() - start)
    made += 1
    if (outcome.kind === 'value') values += 1
    else if (outcome.kind === 'refused') refused[outcome.name] = (refused[outcome.name] ?? 0) + 1
    else {
      wrongCount += 1
      if (wrong.length < shownWrong) wrong.push({ index, why: outcome.why.slice(0, 300), inputs: printed(inputs) })
    }
  }
  return { name, made, values, refused, slowestMs, wrong, wrongCount }
}

const port = parentPort
if (port === null) throw new Error('this file runs in a thread of its own')
port.on('message', (job: Job) => {
  tally(job).then(
    (told) => port.postMessage(told),
    (error: Error) => port.postMessage({ name: job.name, problem: error.message }),
  )
})
