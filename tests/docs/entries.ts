import { createHash } from 'node:crypto'
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { dirname } from 'node:path'
import { readTree, root } from '../repository/tree.ts'
import { withShared } from './complete.ts'
import { type Entry, entriesOf, sourceProgram } from './extract.ts'

const cache = `${root}node_modules/.cache/strandwise-entries.json`

/** Hash of what the entries depend on: the packages' sources, and the reader itself. */
function inputHash(): string {
  const hash = createHash('sha256')
  for (const { path, text } of readTree())
    if (/^(packages\/[^/]+\/src|tests\/docs)\/.*\.ts$/.test(path)) hash.update(path).update('\0').update(text).update('\0')
  return hash.digest('hex')
}

/** Every export with its docstring as data. Reading takes seconds, so the result is cached until a source changes. STRANDWISE_ENTRIES names a file to read instead, as a mutated copy must use the original's docstrings. */
export function entries(): readonly Entry[] {
  const given = process.env.STRANDWISE_ENTRIES
  if (given !== undefined) return (JSON.parse(readFileSync(given, 'utf8')) as { readonly entries: readonly Entry[] }).entries
  const hash = inputHash()
  if (existsSync(cache)) {
    try {
      const kept = JSON.parse(readFileSync(cache, 'utf8')) as { readonly hash: string; readonly entries: readonly Entry[] }
      if (kept.hash === hash) return kept.entries
    } catch {
      // Another test file is writing the cache at this moment: read the sources.
    }
  }
  const found = entriesOf(sourceProgram())
  const read = found.map((entry) => withShared(entry, found))
  mkdirSync(dirname(cache), { recursive: true })
  writeFileSync(cache, JSON.stringify({ hash, entries: read }))
  return read
}
