/** Whole records of a list as text, with the line on which they begin and how many lines they take. */
export interface Batch {
  readonly text: string
  readonly line: number
  readonly lines: number
}

/** A batch is handed on once it is this long; long enough that handing it to a thread costs little. */
const batchBytes = 256 * 1024
/** A record past this has a quotation mark left open, or is no list of wires. */
export const mostRecordBytes = 1_000_000

/** A record that does not end. */
export class EndlessRecord extends Error {
  override readonly name = 'EndlessRecord'
  readonly line: number

  constructor(line: number) {
    super(`line ${line}: more than ${mostRecordBytes} bytes without the end of a record`)
    this.line = line
  }
}

const newline = 0x0a
const quote = 0x22
const comma = 0x2c

/** Where a byte of a table stands: at the start of a field, inside a plain one, inside a quoted one, behind a quotation mark in it. */
type Place = 'start' | 'plain' | 'quoted' | 'closing'

function next(place: Place, byte: number): Place {
  if (place === 'quoted') return byte === quote ? 'closing' : 'quoted'
  if (byte === comma || byte === newline) return 'start'
  if (byte === quote && place !== 'plain') return 'quoted'
  return place === 'closing' && byte === 0x0d ? 'closing' : 'plain'
}

function joined(one: Uint8Array, other: Uint8Array): Uint8Array {
  if (one.length === 0) return other
  const both = new Uint8Array(one.length + other.length)
  both.set(one)
  both.set(other, one.length)
  return both
}

/** Cuts bytes into batches of whole records; the first record comes by itself where it heads a table. Text that is not UTF-8 throws a TypeError. */
export async function* batchesOf(chunks: AsyncIterable<Uint8Array>, { table }: { readonly table: boolean }): AsyncGenerator<Batch> {
  const decoder = new TextDecoder('utf-8', { fatal: true })
  let kept: Uint8Array = new Uint8Array()
  let place: Place = 'start'
  /** Of what is kept: the end of its last whole record, the lines up to there and in all, and how far it was looked at. */
  let [end, lines, seen, scanned, line] = [0, 0, 0, 0, 1]
  let headed = !table
  const cut = (): Batch => {
    const batch = { text: decoder.decode(kept.subarray(0, end)), line, lines }
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
    if (kept.length - end > mostRecordBytes) throw new EndlessRecord(line + lines)
  }
  if (end > 0) yield cut()
  if (kept.length > 0) {
    end = kept.length
    lines = seen + 1
    yield cut()
  }
}
