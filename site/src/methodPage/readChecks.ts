import { type Figure, figures } from '../../../references/count/figures.ts'
import type { CheckFacts, SourceFacts } from './facts.ts'

export interface Checks {
  readonly sources: readonly SourceFacts[]
  /** By name of the function checked. */
  readonly byFunction: ReadonlyMap<string, readonly CheckFacts[]>
}

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

/** Figures of one source for a function, and the first of them. */
function checkFacts(list: readonly [Figure, ...Figure[]]): CheckFacts {
  const [{ source, status, title, printed, unit, got }] = list
  return { source, status, count: list.length, missed: missedOf(list), example: { title, printed, unit, got } }
}

/** Computes every figure of references/ during the build. */
export async function runChecks(): Promise<Checks> {
  const all = await figures()
  const counted = all.filter(({ looksUp }) => !looksUp)
  const byFunction = new Map(
    [...new Set(counted.flatMap(({ checks }) => checks))].map((name) => [
      name,
      grouped(
        counted.filter(({ checks }) => checks.includes(name)),
        ({ source, status }) => `${source}|${status}`,
      ).map(checkFacts),
    ]),
  )
  return {
    byFunction,
    sources: grouped(all, ({ source }) => source)
      .map(sourceFacts)
      .sort((a, b) => a.source.localeCompare(b.source)),
  }
}
