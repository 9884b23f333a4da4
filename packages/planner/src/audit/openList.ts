import { type Batch, batchesOf } from './batches.ts'
import { type Columns, columnsOf } from './csvRows.ts'
import { ListError } from './listError.ts'

/** A list whose header is read: its columns (null for JSON lines), the names that no row has, and its records. */
interface OpenedList {
  readonly columns: Columns | null
  readonly unused: readonly string[]
  readonly batches: AsyncGenerator<Batch>
}

async function* asBytes(chunks: AsyncIterable<Uint8Array | string>): AsyncGenerator<Uint8Array> {
  const encoder = new TextEncoder()
  for await (const chunk of chunks) yield typeof chunk === 'string' ? encoder.encode(chunk) : chunk
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

/** Reads a list up to its first record. */
export async function openList(source: AsyncIterable<Uint8Array | string>): Promise<OpenedList> {
  const { json, chunks } = await peeked(asBytes(source))
  const batches = batchesOf(chunks, { table: !json })
  if (json) return { columns: null, unused: [], batches }
  const head = await batches.next()
  if (head.done) throw new ListError('is empty; allowed: a table with a head, or one JSON object a line')
  return { ...columnsOf(head.value.text), batches }
}
