/** Reliability of a figure. Only 'published' counts as a published check. library: computed by a general-purpose library; derived: worked from published values, or by a solution independent of ours; recorded: our own output, kept to show a difference or a drift; it proves nothing. */
export type ReferenceStatus = 'published' | 'library' | 'derived' | 'from memory' | 'recorded'

export interface ReferenceCase {
  /** Quantity computed, with the given numbers, in words. */
  readonly title: string
  /** The figure as the source prints it; half its last digit is the tolerance unless `allowed` argues another. */
  readonly printed: string
  readonly unit: string
  readonly got: () => number
  readonly allowed?: { readonly absolute?: number; readonly relative?: number; readonly why: string }
  /** Status of a case if lower than its source's; see ReferenceStatus. */
  readonly status?: ReferenceStatus
  /** The code only looked up a row: compared, but never counted as proof of a formula. */
  readonly looksUp?: boolean
}

/** One published source: its own title, edition and clause, and the figures that check the library. */
export interface Reference {
  readonly source: string
  readonly edition?: string
  readonly clause: string
  readonly status: ReferenceStatus
  readonly notes?: string
  /** All cases state the same thing, such as one ratio for a whole table: they count as one figure. */
  readonly oneFigure?: true
  readonly cases: readonly ReferenceCase[]
}

/** Half a unit in the last printed digit: "0.94" gives 0.005, "1.2e3" gives 50, "120" gives 0.5. */
export function halfLastDigit(printed: string): number {
  const match = /^[+-]?(\d+)(?:\.(\d+))?(?:e([+-]?\d+))?$/i.exec(printed)
  if (match === null) throw new Error(`"${printed}" is not a printed number`)
  return 0.5 * 10 ** (Number(match[3] ?? 0) - (match[2]?.length ?? 0))
}

/** Tolerance: half of the last printed digit, or the case's own. */
function toleranceOf(item: ReferenceCase): number {
  const { allowed, printed } = item
  return allowed === undefined ? halfLastDigit(printed) : Math.max(allowed.absolute ?? 0, (allowed.relative ?? 0) * Math.abs(Number(printed)))
}

/** True if a result agrees with the printed figure; an extra 1e-12 accepts a value exactly half a digit away. */
export function isMet(item: ReferenceCase, got: number): boolean {
  const wanted = Number(item.printed)
  return Math.abs(got - wanted) <= toleranceOf(item) * (1 + 1e-12) + 1e-12 * Math.abs(wanted)
}

/** Message of a failed comparison: source, got, wanted, allowed. */
export function missedBy(reference: Reference, item: ReferenceCase, got: number): string {
  const why = item.allowed === undefined ? 'half the last printed digit' : item.allowed.why
  return `${reference.source}, ${reference.clause}: ${item.title}\n  got ${got} ${item.unit}\n  wanted ${item.printed} ${item.unit}\n  allowed +/- ${toleranceOf(item)} (${why})`
}
