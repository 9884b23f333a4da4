import { createHash } from 'node:crypto'
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { dirname } from 'node:path'
import type { Entry } from '../../../tests/docs/extract.ts'
import { readTree, root } from '../../../tests/repository/tree.ts'
import { bundled } from '../../../tests/sizes/bundle.ts'

const cache = `${root}node_modules/.cache/strandwise-function-code.json`

/** A function above this size shares the chunks of its room with the plan page: a file of its own would repeat the planner. */
const largestFile = 25_000

/** One function bundled alone. */
export interface FunctionCode {
  readonly gzipBytes: number
  /** A module that exports the function; null above the largest size of a file. */
  readonly code: string | null
}

type Codes = Readonly<Record<string, FunctionCode>>

function sourcesHash(): string {
  const hash = createHash('sha256').update(String(largestFile))
  for (const { path, text } of readTree(`${root}packages`)) if (/\/src\/.*(?<!\.(test|sample))\.ts$/.test(path)) hash.update(path).update('\0').update(text)
  return hash.digest('hex')
}

/** Each function as a bundle that holds nothing else, minified; cached until a source changes. */
export async function codeOf(functions: readonly Entry[]): Promise<Codes> {
  const hash = sourcesHash()
  if (existsSync(cache)) {
    const kept = JSON.parse(readFileSync(cache, 'utf8')) as { readonly hash: string; readonly codes: Codes }
    if (kept.hash === hash) return kept.codes
  }
  const codes: Record<string, FunctionCode> = {}
  for (const { package: name, room, name: own } of functions) {
    const { gzipBytes, code } = await bundled(`export { ${own} } from '@strandwise/${name}/${room}'`)
    codes[own] = { gzipBytes, code: gzipBytes > largestFile ? null : code }
  }
  mkdirSync(dirname(cache), { recursive: true })
  writeFileSync(cache, JSON.stringify({ hash, codes }))
  return codes
}
