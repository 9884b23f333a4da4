import { availableParallelism } from 'node:os'
import { ListError } from '../audit/index.ts'
import {
  type Batch,
  type Counts,
  type JudgedBatch,
  type ListFormat,
  type ListSetup,
  listFormats,
  listHead,
  noCounts,
  openList,
  summaryOf,
} from '../audit/inner.ts'
import { type AuditPool, hereOnly, onThreads } from './auditPool.ts'
import { formatOf } from './format.ts'
import { bytesOf } from './readText.ts'
import { exitCodes, type Options, type Streams } from './streams.ts'
import { named, Unusable } from './unusable.ts'

const mostWorkers = 64
const formats = Object.fromEntries(listFormats.map((format) => [format, format])) as Readonly<Record<ListFormat, ListFormat>>

function workersFrom(text: string | undefined): number {
  const count = text === undefined ? Math.min(availableParallelism(), mostWorkers) : Number(text)
  if (!Number.isInteger(count) || count < 1 || count > mostWorkers)
    throw new Unusable(`--workers: is "${(text ?? '').slice(0, 60)}"; allowed: a whole number from 1 to ${mostWorkers}`)
  return count
}

const gone = (out: Streams['stdout']): boolean => out.destroyed === true

/** Writes, and waits while the reader is slower; false once the reader has gone. */
async function put(out: Streams['stdout'], text: string): Promise<boolean> {
  if (gone(out)) return false
  if (out.write(text) === false && out.once !== undefined && !gone(out)) {
    await new Promise<void>((resolve) => {
      const ready = (): void => {
        out.off?.('drain', ready)
        out.off?.('close', ready)
        resolve()
      }
      out.once?.('drain', ready)
      out.once?.('close', ready)
    })
  }
  return true
}

/** Running totals: counts, unknown names, and progress for a person at a terminal. */
class Tally {
  readonly counts: Record<keyof Counts, number> = { ...noCounts }
  readonly unused = new Set<string>()
  readonly #err: Streams['stderr']
  #shownAt = Date.now()

  constructor(err: Streams['stderr']) {
    this.#err = err
  }

  add({ counts, unused }: JudgedBatch): void {
    for (const name of Object.keys(counts) as (keyof Counts)[]) this.counts[name] += counts[name]
    for (const name of unused) if (this.unused.size < 20) this.unused.add(name)
    if (this.#err.isTTY !== true || Date.now() - this.#shownAt < 500) return
    this.#shownAt = Date.now()
    this.#err.write(`\r\u001b[2K${summaryOf(this.counts)}`)
  }

  end(): readonly string[] {
    if (this.#err.isTTY === true) this.#err.write('\r\u001b[2K')
    const names = [...this.unused].join(', ')
    return [...(names === '' ? [] : [`not used, for no row has them: ${names}`]), summaryOf(this.counts)]
  }
}

/** Judges batches on the pool and writes them in order; stops if the reader has gone. */
async function inOrder(batches: AsyncIterable<Batch>, pool: AuditPool, write: (judged: JudgedBatch) => Promise<boolean>): Promise<void> {
  const under: Promise<JudgedBatch>[] = []
  for await (const batch of batches) {
    const judged = pool.judge(batch)
    // A failure is handled when the batch's turn comes.
    judged.catch(() => undefined)
    under.push(judged)
    if (under.length < pool.most) continue
    if (!(await write(await (under.shift() as Promise<JudgedBatch>)))) return
  }
  for (const judged of under) if (!(await write(await judged))) return
}

/** Batches judged on this thread before others are started: a short list is finished sooner than they are. */
const batchesHere = 8

/** The first batches on this thread, the rest on others. */
async function* withPool(batches: AsyncGenerator<Batch>, setup: ListSetup, workers: number): AsyncGenerator<readonly [AsyncIterable<Batch>, AuditPool]> {
  async function* first() {
    for (let count = 0; count < batchesHere; count += 1) {
      const next = await batches.next()
      if (next.done) return
      yield next.value
    }
  }
  yield [first(), hereOnly(setup)]
  const next = await batches.next()
  if (next.done) return
  async function* rest() {
    yield next.value as Batch
    yield* batches
  }
  yield [rest(), workers === 1 ? hereOnly(setup) : onThreads(setup, workers)]
}

function exitCodeFor({ unsound, 'not usable': bad, 'cannot tell': open }: Counts, strict: boolean): number {
  if (bad > 0) return exitCodes.unusable
  return unsound > 0 || (strict && open > 0) ? exitCodes.unsound : exitCodes.sound
}

/** strandwise audit: a list of wires in, a verdict a row out, in the list's own order. */
export async function audit([name]: readonly string[], options: Options, { stdin, stdout, stderr }: Streams): Promise<number> {
  if (name === undefined) throw new Unusable('audit: give one list of wires, or - for standard input')
  const format = formatOf(formats, options.format)
  const workers = workersFrom(options.workers)
  const lines = options['no-lines'] !== true
  const tally = new Tally(stderr)
  try {
    const { columns, unused, batches } = await openList(bytesOf(name, stdin))
    for (const column of unused) tally.unused.add(column)
    const setup: ListSetup = { columns, format, lines }
    await put(stdout, listHead(format, lines))
    /** In JSON a comma separates rows, so the last row is held back until the end. */
    let held = ''
    const write = async (judged: JudgedBatch): Promise<boolean> => {
      tally.add(judged)
      if (format !== 'json' || judged.text === '') return put(stdout, judged.text)
      const text = held + judged.text
      held = text.slice(-2)
      return put(stdout, text.slice(0, -2))
    }
    for await (const [part, pool] of withPool(batches, setup, workers)) {
      try {
        await inOrder(part, pool, write)
      } finally {
        await pool.end()
      }
    }
    if (format === 'json') await put(stdout, held === '' ? ']\n' : '\n]\n')
    for (const line of tally.end()) stderr.write(`${line}\n`)
    return exitCodeFor(tally.counts, options.strict ?? false)
  } catch (error) {
    const told = error instanceof ListError ? new Unusable(...error.lines) : error
    throw told instanceof Unusable ? named(name, told) : told
  }
}
