import { readFile, stat } from 'node:fs/promises'

/** A job is a few kilobytes; past this something else was given. */
const mostBytes = 1_000_000

/** A file that can't be used, in words for the person who gave it. */
export class UnusableFile extends Error {
  override readonly name = 'UnusableFile'
}

async function fromStandardInput(stdin: AsyncIterable<Uint8Array | string>): Promise<Uint8Array> {
  const chunks: Uint8Array[] = []
  let size = 0
  for await (const chunk of stdin) {
    const bytes = typeof chunk === 'string' ? new TextEncoder().encode(chunk) : chunk
    size += bytes.length
    if (size > mostBytes) throw new UnusableFile(`is larger than ${mostBytes} bytes; a job is a few kilobytes`)
    chunks.push(bytes)
  }
  return Buffer.concat(chunks)
}

async function fromFile(name: string): Promise<Uint8Array> {
  try {
    const found = await stat(name)
    if (!found.isFile()) throw new UnusableFile('is not a file; allowed: a JSON file with one job')
    if (found.size > mostBytes) throw new UnusableFile(`is ${found.size} bytes; allowed: at most ${mostBytes}, a job is a few kilobytes`)
    return await readFile(name)
  } catch (error) {
    if (error instanceof UnusableFile) throw error
    const code = error instanceof Error && 'code' in error ? String(error.code) : ''
    if (code === 'ENOENT') throw new UnusableFile('there is no such file')
    if (code === 'EACCES') throw new UnusableFile('may not be read')
    throw new UnusableFile(`can't be read (${code})`)
  }
}

/** The text of a job file, or of standard input for "-"; never more than a megabyte. */
export async function readJobText(name: string, stdin: AsyncIterable<Uint8Array | string>): Promise<string> {
  const bytes = name === '-' ? await fromStandardInput(stdin) : await fromFile(name)
  if (bytes.length === 0) throw new UnusableFile('is empty; allowed: a JSON file with one job')
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes)
  } catch {
    throw new UnusableFile('is not text (UTF-8); allowed: a JSON file with one job')
  }
}
