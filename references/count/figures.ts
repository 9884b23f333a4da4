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
  /** The code only looked up a row: compared, never counted. */
  readonly looksUp: boolean
  readonly got: number
  readonly met: boolean
  /** Functions of the packages that it calls. */
  readonly calls: readonly string[]
  /** Functions that it checks: with their results 2 % larger or smaller, the figure is missed. */
  readonly checks: readonly string[]
  /** Number of further cases of the same source that compute the same number; they count as this one. */
  readonly repeats: number
  /** Its source states one figure in many places: see Reference. */
  readonly oneFigure: boolean
}

/** Change of a model's result that a check must detect. */
export const changeShare = 0.02

const attempt = (run: () => number): number => {
  try {
    return run()
  } catch {
    return Number.NaN
  }
}

/** Identity of a figure: cases of one source that pass the same numbers to the same functions, and get the same number, are one. */
function identityOf(reference: Reference, item: ReferenceCase, got: number, calls: readonly string[], inputs: readonly number[]): string {
  if (reference.oneFigure === true) return `${reference.source}|${reference.clause}`
  return [reference.source, item.status ?? reference.status, item.looksUp === true, item.printed, item.unit, got.toPrecision(12), ...calls, ...inputs].join('|')
}

/** Functions of which a 2 % change breaks this case. */
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

export interface SourceFile {
  readonly file: string
  readonly reference: Reference
}

/** Computes every figure of references/ once, and again with the results of each called function changed. */
export const figures = async (): Promise<readonly Figure[]> => figuresOf(await readReferences())

/** The same for a list of sources. */
export function figuresOf(sources: readonly SourceFile[]): readonly Figure[] {
  const found = new Map<string, Figure & { repeats: number }>()
  for (const { file, reference } of sources) {
    for (const item of reference.cases) {
      const { result: got, functions: calls, inputs } = watched(item.got)
      const identity = identityOf(reference, item, got, calls, inputs)
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
        oneFigure: reference.oneFigure === true,
      })
    }
  }
  return [...found.values()]
}
