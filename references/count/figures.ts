import { isMet, type Reference, type ReferenceCase, type ReferenceStatus } from '../compare.ts'
import { readReferences } from './readReferences.ts'
import { watched, withChanged } from './recorder.ts'

/** One figure of a source, computed once. */
export interface Figure {
  readonly file: string
  readonly source: string
  readonly clause: string
  readonly title: string
  readonly printed: string
  readonly unit: string
  readonly status: ReferenceStatus
  /** The code only read a row: checked, never counted. */
  readonly looksUp: boolean
  readonly got: number
  readonly met: boolean
  /** Functions of the packages that it calls. */
  readonly calls: readonly string[]
  /** Those of them that it checks: it is missed when their results are 2 % larger or smaller. */
  readonly checks: readonly string[]
  /** Further cases of the same source that compute the same number: they count as this one. */
  readonly repeats: number
}

/** A check is worth its name when this change of a model breaks it. */
export const changeShare = 0.02

const attempt = (run: () => number): number => {
  try {
    return run()
  } catch {
    return Number.NaN
  }
}

/** Cases of one source that compute the same number by the same functions are one figure. */
function identityOf(reference: Reference, item: ReferenceCase, got: number, calls: readonly string[]): string {
  if (reference.oneFigure === true) return `${reference.source}|${reference.clause}`
  return [reference.source, item.status ?? reference.status, item.looksUp === true, item.printed, item.unit, got.toPrecision(12), ...calls].join('|')
}

/** Functions whose results, 2 % larger or smaller, break this case. */
function checkedBy(item: ReferenceCase, calls: readonly string[]): readonly string[] {
  return calls.filter((name) =>
    [1 + changeShare, 1 - changeShare].some(
      (factor) =>
        !isMet(
          item,
          withChanged(name, factor, () => attempt(item.got)),
        ),
    ),
  )
}

/** Computes every figure in references/ once, and again for each function that it calls, with that function's results changed. */
export async function figures(): Promise<readonly Figure[]> {
  const found = new Map<string, Figure & { repeats: number }>()
  for (const { file, reference } of await readReferences()) {
    for (const item of reference.cases) {
      const { result: got, functions: calls } = watched(item.got)
      const identity = identityOf(reference, item, got, calls)
      const same = found.get(identity)
      if (same !== undefined) {
        same.repeats += 1
        continue
      }
      found.set(identity, {
        file,
        source: reference.source,
        clause: reference.clause,
        title: item.title,
        printed: item.printed,
        unit: item.unit,
        status: item.status ?? reference.status,
        looksUp: item.looksUp === true,
        got,
        met: isMet(item, got),
        calls,
        checks: checkedBy(item, calls),
        repeats: 0,
      })
    }
  }
  return [...found.values()]
}
