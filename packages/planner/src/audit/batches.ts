import { ListError } from './listError.ts'

/** Whole records of a list as text, with their first line number and line count. */
export interface Batch {
  readonly text: string
  readonly line: number
  readonly lines: number
}

/** Size of a batch: small enough that its rows die young, which halves the time of the garbage collector; large enough for a thread. */
const batchBytes = 32 * 1024
/** A longer record has an unclosed quotation mark, or is no list of wires. */
const mostRecordBytes = 1_000_000

const newline = 0x0a
const quote = 0x22
const comma = 0x2c

/** State of the table scanner: start of a field, in a plain field, in a quoted one, after a quotation mark in it. */
type Place = 'start' | 'plain' | 'quoted' | 'closing'

function next(place: Place, byte: number): Place {
  if (place === 'quoted') return byte === quote ? 'closing' : 'quoted'
  if (byte === comma || byte === newline) return 'start'
  if (byte === quote && place !== 'plain') return 'quoted'
  return place === 'closing' && byte === 0x0d ? 'closing' : 'plain'
}

/** Records of a table's text with their lines, split as batches are. */
export function recordsOf({ text, line }: Pick<Batch, 'text' | 'line'>): readonly Pick<Batch, 'text' | 'line'>[] {
  const records: Pick<Batch, 'text' | 'line'>[] = []
  let place: Place = 'start'
  let [from, startLine, lineNow] = [0, line, line]
  for (let at = 0; at < text.length; at += 1) {
    const code = text.charCodeAt(at)
    place = next(place, code)
    if (code !== newline) continue
    lineNow += 1
    if (place === 'quoted') continue
    records.push({ text: text.slice(from, at + 1), line: startLine })
    from = at + 1
    startLine = lineNow
  }
  if (from < text.length) records.push({ text: text.slice(from), line: startLine })
  return records
}

function joined(one: Uint8Array, other: Uint8Array): Uint8Array {
  if (one.length === 0) return other
  const both = new Uint8Array(one.length + other.length)
  both.set(one)
  both.set(other, one.length)
  return both
}

function decoded(decoder: InstanceType<typeof TextDecoder>, bytes: Uint8Array): string {
  try {
    return decoder.decode(bytes)
  } catch {
    throw new ListError('is not text (UTF-8); allowed: a table as CSV, or one JSON object a line')
  }
}

/** Cuts bytes into batches of whole records; a table's header is a batch of its own. */
export async function* batchesOf(chunks: AsyncIterable<Uint8Array>, { table }: { readonly table: boolean }): AsyncGenerator<Batch> {
  const decoder = new TextDecoder('utf-8', { fatal: true })
  let kept: Uint8Array = new Uint8Array()
  let place: Place = 'start'
  /** Within the text kept: end of the last whole record, lines up to there and in all, and scanned length. */
  let [end, lines, seen, scanned, line] = [0, 0, 0, 0, 1]
  let headed = !table
  const cut = (): Batch => {
    const batch = { text: decoded(decoder, kept.subarray(0, end)), line, lines }
    kept = kept.subarray(end)
    line += lines
    seen -= lines
    scanned -= end
    ;[end, lines] = [0, 0]
    return batch
  }
  for await (const chunk of chunks) {
    kept = joined(kept, chunk)
    while (scanned < kept.length) {
      const byte = kept[scanned] as number
      scanned += 1
      place = table ? next(place, byte) : 'plain'
      if (byte !== newline) continue
      seen += 1
      if (place === 'quoted') continue
      end = scanned
      lines = seen
      if (headed && end < batchBytes) continue
      headed = true
      yield cut()
    }
    if (kept.length - end > mostRecordBytes)
      throw new ListError(
        `line ${line + lines}: more than ${mostRecordBytes} bytes without the end of a record; allowed: records of at most ${mostRecordBytes} bytes; a quotation mark may be left open`,
      )
  }
  if (end > 0) yield cut()
  if (kept.length > 0) {
    end = kept.length
    lines = seen + 1
    yield cut()
  }
}
