import { existsSync, readFileSync, statSync, utimesSync, writeFileSync } from 'node:fs'
import { root } from '../repository/tree.ts'
import { entries } from './entries.ts'
import type { Entry } from './extract.ts'
import { withParamLines } from './paramLines.ts'

/** Puts the inputs of every function into the declarations that were built, so that editors show them. */
const byFile = new Map<string, Entry[]>()
for (const entry of entries()) {
  const file = entry.place.replace(/:\d+$/, '').replace('/src/', '/dist/').replace(/\.ts$/, '.d.ts')
  if (entry.kind === 'function') byFile.set(file, [...(byFile.get(file) ?? []), entry])
}
for (const [file, functions] of byFile) {
  if (!existsSync(root + file)) continue
  const before = readFileSync(root + file, 'utf8')
  const after = withParamLines(before, functions)
  if (after === before) continue
  // Only comments changed: with its old time stamp the compiler does not build the file again.
  const { atime, mtime } = statSync(root + file)
  writeFileSync(root + file, after)
  utimesSync(root + file, atime, mtime)
}
