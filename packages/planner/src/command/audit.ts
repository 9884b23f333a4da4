import { availableParallelism } from 'node:os'
import {
  type Batch,
  batchesOf,
  type Counts,
  columnsOf,
  EndlessRecord,
  HeadError,
  type JudgedBatch,
  type ListFormat,
  type ListSetup,
  listFormats,
  listHead,
  mostRecordBytes,
  noCounts,
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

async function* asBytes(chunks: AsyncIterable<Uint8Array | string>): AsyncGenerator<Uint8Array> {
  for await (const chunk of chunks) yield typeof chunk === 'string' ? new TextEncoder().encode(chunk) : chunk
}

/** Looks ahead to the first character that is neither space nor byte order mark: "{" means JSON lines. Returns all bytes. */
async function peeked(chunks: AsyncGenerator<Uint8Array>): Promise<{ readonly json: boolean; readonly chunks: AsyncGenerator<Uint8Array> }> {
  const first: Uint8Array[] = []
  let found: number | undefined
  while (found === undefined) {
    const { value, done } = await chunks.next()
    if (done) break
    first.push(value)
    found = value.find((byte) => byte > 0x20 && byte !== 0xef && byte !== 0xbb && byte !== 0xbf)
  }
  async function* again() {
    yield* first
    yield* chunks
  }
  return { json: found === 0x7b, chunks: again() }
}

const gone = (out: Streams['stdout']): boolean => out.destroyed === true

/** Writes, and waits while the reader is slower; false once the reader has gone. */
async function put(out: Streams['stdout'], text: string): Promise<boolean> {
  if (gone(out)) return false
  if (out.write(text) === false && out.once !== undefined && !gone(out)) {
    await new Promise<void>((resolve) => {
      out.once?.('drain', resolve)
      out.once?.('close', resolve)
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

/** Threads pay off from the second full batch, so the first batch (and thus a short list) is judged here. */
async function* withPool(batches: AsyncGenerator<Batch>, setup: ListSetup, workers: number): AsyncGenerator<readonly [AsyncIterable<Batch>, AuditPool]> {
  const first = await batches.next()
  if (first.done) return
  async function* one() {
    yield first.value as Batch
  }
  yield [one(), hereOnly(setup)]
  if (workers === 1) yield [batches, hereOnly(setup)]
  else {
    const second = await batches.next()
    if (second.done) return
    async function* rest() {
      yield second.value as Batch
      yield* batches
    }
    yield [rest(), onThreads(setup, workers)]
  }
}

/** The columns from the table's header. */
async function setupFrom(batches: AsyncGenerator<Batch>, json: boolean, format: ListFormat, lines: boolean, tally: Tally): Promise<ListSetup> {
  if (json) return { columns: null, format, lines }
  const head = await batches.next()
  if (head.done) throw new Unusable('is empty; allowed: a table with a head, or one JSON object a line')
  const { columns, unused } = columnsOf((head.value as Batch).text)
  for (const name of unused) tally.unused.add(name)
  return { columns, format, lines }
}

function exitCodeFor({ unsound, 'not usable': bad, 'cannot tell': open }: Counts, strict: boolean): number {
  if (bad > 0) return exitCodes.unusable
  return unsound > 0 || (strict && open > 0) ? exitCodes.unsound : exitCodes.sound
}

function refusal(error: unknown): unknown {
  if (error instanceof HeadError) return new Unusable(...error.lines)
  if (error instanceof EndlessRecord)
    return new Unusable(`${error.message}; allowed: records of at most ${mostRecordBytes} bytes; a quotation mark may be left open`)
  // Thrown by the decoder: the text is not UTF-8.
  if (error instanceof TypeError && 'code' in error && error.code === 'ERR_ENCODING_INVALID_ENCODED_DATA')
    return new Unusable('is not text (UTF-8); allowed: a table as CSV, or one JSON object a line')
  return error
}

/** strandwise audit: a list of wires in, a verdict a row out, in the list's own order. */
export async function audit([name]: readonly string[], options: Options, { stdin, stdout, stderr }: Streams): Promise<number> {
  if (name === undefined) throw new Unusable('audit: give one list of wires, or - for standard input')
  const format = formatOf(formats, options.format)
  const workers = workersFrom(options.workers)
  const lines = options['no-lines'] !== true
  const tally = new Tally(stderr)
  try {
    const { json, chunks } = await peeked(asBytes(bytesOf(name, stdin)))
    const batches = batchesOf(chunks, { table: !json })
    const setup = await setupFrom(batches, json, format, lines, tally)
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
    const told = refusal(error)
    throw told instanceof Unusable ? named(name, told) : told
  }
}
