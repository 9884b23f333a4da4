import { type Figure, figures } from '../../../references/count/figures.ts'
import type { SourceFacts } from './facts.ts'

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

function sourceFacts(list: readonly [Figure, ...Figure[]]): SourceFacts {
  const counts: Record<string, number> = {}
  for (const { status, looksUp } of list) if (!looksUp) counts[status] = (counts[status] ?? 0) + 1
  return { source: list[0].source, counts, lookedUp: list.filter(({ looksUp }) => looksUp).length, missed: missedOf(list) }
}

/** Computes every figure of references/ during the build, grouped by source. */
export async function runChecks(): Promise<readonly SourceFacts[]> {
  return grouped(await figures(), ({ source }) => source)
    .map(sourceFacts)
    .sort((a, b) => a.source.localeCompare(b.source))
}
