import { createHash } from 'node:crypto'
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { dirname } from 'node:path'
import type { Entry } from '../../../tests/docs/extract.ts'
import { readTree, root } from '../../../tests/repository/tree.ts'
import { bundled } from '../../../tests/sizes/bundle.ts'

const cache = `${root}node_modules/.cache/strandwise-function-sizes.json`

function sourcesHash(): string {
  const hash = createHash('sha256')
  for (const { path, text } of readTree(`${root}packages`)) if (/\/src\/.*(?<!\.(test|sample))\.ts$/.test(path)) hash.update(path).update('\0').update(text)
  return hash.digest('hex')
}

/** Bytes that each function alone adds to a bundle, minified and compressed; cached until a source changes. */
export async function sizesOf(functions: readonly Entry[]): Promise<ReadonlyMap<string, number>> {
  const hash = sourcesHash()
  if (existsSync(cache)) {
    const kept = JSON.parse(readFileSync(cache, 'utf8')) as { readonly hash: string; readonly sizes: Readonly<Record<string, number>> }
    if (kept.hash === hash) return new Map(Object.entries(kept.sizes))
  }
  const sizes = new Map<string, number>()
  for (const { package: name, room, name: own } of functions) {
    const { gzipBytes } = await bundled(`import { ${own} } from '@strandwise/${name}/${room}'\nconsole.log(${own})`)
    sizes.set(own, gzipBytes)
  }
  mkdirSync(dirname(cache), { recursive: true })
  writeFileSync(cache, JSON.stringify({ hash, sizes: Object.fromEntries(sizes) }))
  return sizes
}
