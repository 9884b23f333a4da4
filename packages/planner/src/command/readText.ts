import { open } from 'node:fs/promises'
import { Unusable } from './unusable.ts'

/** A job is a few kilobytes; a larger file is refused as something else. */
const mostBytes = 1_000_000

/** Meanings of system errors for a named file. */
const meanings: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file',
  EACCES: 'may not be read',
  EISDIR: 'is a folder; allowed: a file',
}

/** A file or stream error as a sentence; unknown errors are rethrown. */
function unreadable(error: unknown): Unusable {
  if (error instanceof Unusable) return error
  const code = error instanceof Error && 'code' in error ? String(error.code) : undefined
  if (code === undefined) throw error
  return new Unusable(meanings[code] ?? `can't be read (${code})`)
}

async function bounded(chunks: AsyncIterable<Uint8Array | string>): Promise<Uint8Array> {
  const kept: Uint8Array[] = []
  let size = 0
  for await (const chunk of chunks) {
    const bytes = typeof chunk === 'string' ? new TextEncoder().encode(chunk) : chunk
    size += bytes.length
    if (size > mostBytes) throw new Unusable(`is larger than ${mostBytes} bytes; a job is a few kilobytes`)
    kept.push(bytes)
  }
  return Buffer.concat(kept)
}

/** Names of standard input in a shell. */
const isStandardInput = (name: string): boolean => name === '-' || name === '/dev/stdin' || name === '/dev/fd/0'

/** A file, a pipe or a process substitution by its name; standard input for "-". */
export async function* bytesOf(name: string, stdin: AsyncIterable<Uint8Array | string>): AsyncGenerator<Uint8Array | string> {
  try {
    if (isStandardInput(name)) yield* stdin
    else {
      const file = await open(name)
      if ((await file.stat()).isDirectory()) {
        await file.close()
        throw new Unusable('is a folder; allowed: a file')
      }
      yield* file.createReadStream()
    }
  } catch (error) {
    throw unreadable(error)
  }
}

/** JSON from a file or from standard input; never more than a megabyte. */
export async function readJson(name: string, stdin: AsyncIterable<Uint8Array | string>, wanted: string): Promise<unknown> {
  const bytes = await bounded(bytesOf(name, stdin))
  if (bytes.length === 0) throw new Unusable(`is empty; allowed: ${wanted}`)
  let text: string
  try {
    text = new TextDecoder('utf-8', { fatal: true }).decode(bytes)
  } catch {
    throw new Unusable(`is not text (UTF-8); allowed: ${wanted}`)
  }
  try {
    return JSON.parse(text)
  } catch (error) {
    if (error instanceof RangeError) throw new Unusable(`is nested too deeply; allowed: ${wanted}`)
    if (!(error instanceof SyntaxError)) throw error
    throw new Unusable(`is not JSON: ${error.message.slice(0, 160)}; allowed: ${wanted}`)
  }
}
