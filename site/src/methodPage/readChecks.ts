import type { CheckFacts, SourceFacts } from './facts.ts'
import { type Case, readReferences, type Source } from './readReferences.ts'
import { watched } from './recorder.ts'

export interface Checks {
  readonly sources: readonly SourceFacts[]
  /** By the name of the function that a check calls. */
  readonly byFunction: ReadonlyMap<string, readonly CheckFacts[]>
}

type Writable<T> = { -readonly [K in keyof T]: T[K] }

/** Half of the last printed digit, or what the case argues; one part in 10^12 for a figure that sits on the edge. */
function isMet(item: Case, got: number): boolean {
  const wanted = Number(item.printed)
  const [, decimals = '', exponent = '0'] = /^[+-]?\d+(?:\.(\d+))?(?:e([+-]?\d+))?$/i.exec(item.printed) ?? []
  const argued = item.allowed && Math.max(item.allowed.absolute ?? 0, (item.allowed.relative ?? 0) * Math.abs(wanted))
  const tolerance = argued ?? 0.5 * 10 ** (Number(exponent) - decimals.length)
  return Math.abs(got - wanted) <= tolerance * (1 + 1e-12) + 1e-12 * Math.abs(wanted)
}

/** Runs each figure once; what it called is what it checks. One that is missed is counted as missed. */
function runSource(source: Source, bySource: Map<string, Writable<SourceFacts>>, byFunction: Map<string, Writable<CheckFacts>[]>): void {
  const total = bySource.get(source.source) ?? { source: source.source, counts: {}, lookedUp: 0, missed: 0 }
  bySource.set(source.source, total)
  for (const item of source.cases) {
    const { result: got, functions } = watched(item.got)
    const status = item.status ?? source.status
    const missed = isMet(item, got) ? 0 : 1
    total.missed += missed
    if (item.looksUp === true) {
      total.lookedUp += 1
      continue
    }
    total.counts = { ...total.counts, [status]: (total.counts[status] ?? 0) + 1 }
    for (const name of functions) {
      const known = byFunction.get(name) ?? []
      byFunction.set(name, known)
      const entry = known.find((one) => one.source === source.source && one.status === status)
      if (entry === undefined)
        known.push({ source: source.source, status, count: 1, missed, example: { title: item.title, printed: item.printed, unit: item.unit, got } })
      else {
        entry.count += 1
        entry.missed += missed
      }
    }
  }
}

/** Runs every figure of references/ while the site is built. */
export async function runChecks(): Promise<Checks> {
  const bySource = new Map<string, Writable<SourceFacts>>()
  const byFunction = new Map<string, Writable<CheckFacts>[]>()
  for (const source of await readReferences()) runSource(source, bySource, byFunction)
  return { byFunction, sources: [...bySource.values()].sort((a, b) => a.source.localeCompare(b.source)) }
}
