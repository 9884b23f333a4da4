import { type Figure, figures } from '../../../references/count/figures.ts'
import { models } from '../../../references/count/models.ts'
import { unchecked } from '../../../references/count/unchecked.ts'
import type { ModelFacts, SourceFacts } from './facts.ts'

/** Groups items, in the order of each group's first member. */
function grouped<T>(items: readonly T[], keyOf: (item: T) => string): readonly (readonly [T, ...T[]])[] {
  const groups = new Map<string, [T, ...T[]]>()
  for (const item of items) {
    const group = groups.get(keyOf(item))
    if (group === undefined) groups.set(keyOf(item), [item])
    else group.push(item)
  }
  return [...groups.values()]
}

const missedOf = (list: readonly Figure[]): number => list.filter(({ met }) => !met).length

function countsOf(list: readonly Figure[]): Readonly<Record<string, number>> {
  const counts: Record<string, number> = {}
  for (const { status, looksUp } of list) if (!looksUp) counts[status] = (counts[status] ?? 0) + 1
  return counts
}

function sourceFacts(list: readonly [Figure, ...Figure[]]): SourceFacts {
  return { source: list[0].source, counts: countsOf(list), lookedUp: list.filter(({ looksUp }) => looksUp).length, missed: missedOf(list) }
}

const modelFacts = (name: string, all: readonly Figure[]): ModelFacts => ({
  name,
  counts: countsOf(all.filter(({ checks }) => checks.includes(name))),
  reason: unchecked[name] ?? null,
})

/** Computes every figure of references/ during the build, grouped by source and by the models that it checks. */
export async function runChecks(): Promise<{ readonly sources: readonly SourceFacts[]; readonly models: readonly ModelFacts[] }> {
  const all = await figures()
  return {
    sources: grouped(all, ({ source }) => source)
      .map(sourceFacts)
      .sort((a, b) => a.source.localeCompare(b.source)),
    models: [...new Set(models())].sort((a, b) => a.localeCompare(b)).map((name) => modelFacts(name, all)),
  }
}
