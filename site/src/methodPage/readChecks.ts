import { readdirSync } from 'node:fs'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import type { CheckStatus, ModelFacts, SourceFacts } from './facts.ts'

interface Case {
  readonly got: () => number
  readonly status?: CheckStatus
  readonly looksUp?: boolean
}

interface Source {
  readonly source: string
  readonly status: CheckStatus
  readonly cases: readonly Case[]
}

/** The published figures by source. That each is met is what `npm test` shows; the page counts them. */
export async function readReferences(root: string): Promise<readonly Source[]> {
  const folder = join(root, 'references')
  const files = readdirSync(folder)
    .filter((name) => name.endsWith('.ts') && !name.endsWith('.test.ts') && name !== 'compare.ts')
    .sort()
  const modules = await Promise.all(
    files.map((name) => import(/* @vite-ignore */ pathToFileURL(join(folder, name)).href) as Promise<{ readonly reference?: Source | readonly Source[] }>),
  )
  return modules.flatMap((module) => [module.reference ?? []].flat())
}

/** How many figures each source gives, by status. */
export function countBySource(references: readonly Source[]): readonly SourceFacts[] {
  const found = new Map<string, { readonly counts: Partial<Record<CheckStatus, number>>; lookedUp: number }>()
  for (const reference of references) {
    const entry = found.get(reference.source) ?? { counts: {}, lookedUp: 0 }
    found.set(reference.source, entry)
    for (const item of reference.cases) {
      const status = item.status ?? reference.status
      if (item.looksUp === true) entry.lookedUp += 1
      else entry.counts[status] = (entry.counts[status] ?? 0) + 1
    }
  }
  return [...found].map(([source, entry]) => ({ source, ...entry })).sort((a, b) => a.source.localeCompare(b.source))
}

/** The checks of one model: the figures whose computation calls it by name. */
export function checksOf(name: string, references: readonly Source[]): ModelFacts['checks'] {
  const call = new RegExp(`\\b${name}\\(`)
  const found = new Map<string, { readonly source: string; readonly status: CheckStatus; count: number }>()
  for (const reference of references) {
    for (const item of reference.cases) {
      if (item.looksUp === true || !call.test(String(item.got))) continue
      const status = item.status ?? reference.status
      const key = `${reference.source}|${status}`
      const entry = found.get(key) ?? { source: reference.source, status, count: 0 }
      found.set(key, entry)
      entry.count += 1
    }
  }
  return [...found.values()]
}
