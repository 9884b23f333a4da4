import { expect } from 'vitest'

/** What a figure from outside rests on. Only 'published' counts as a published check. */
export type ReferenceStatus = 'published' | 'library' | 'derived' | 'from memory'

export interface ReferenceCase {
  /** What is computed, in words, with the given numbers. */
  readonly title: string
  /** The figure as the source prints it; half its last digit is the tolerance unless `allowed` argues another. */
  readonly printed: string
  readonly unit: string
  readonly got: () => number
  readonly allowed?: { readonly absolute?: number; readonly relative?: number; readonly why: string }
  /** For a case whose answer stands lower than its source's; see ReferenceStatus. */
  readonly status?: ReferenceStatus
  /** The code only read a row: it is checked, and never counted as a formula's proof. */
  readonly looksUp?: boolean
}

/** One published source: its own title, edition and clause, and the figures that check the library. */
export interface Reference {
  readonly source: string
  readonly edition?: string
  readonly clause: string
  readonly status: ReferenceStatus
  readonly notes?: string
  readonly cases: readonly ReferenceCase[]
}

/** Half a unit in the last printed digit: "0.94" gives 0.005, "1.2e3" gives 50, "120" gives 0.5. */
export function halfLastDigit(printed: string): number {
  const match = /^[+-]?(\d+)(?:\.(\d+))?(?:e([+-]?\d+))?$/i.exec(printed)
  if (match === null) throw new Error(`"${printed}" is not a printed number`)
  return 0.5 * 10 ** (Number(match[3] ?? 0) - (match[2]?.length ?? 0))
}

/** The one comparison: prints source, got, wanted, allowed. */
export function compare(reference: Reference, item: ReferenceCase): void {
  const wanted = Number(item.printed)
  const got = item.got()
  const allowed = item.allowed
  const tolerance = allowed === undefined ? halfLastDigit(item.printed) : Math.max(allowed.absolute ?? 0, (allowed.relative ?? 0) * Math.abs(wanted))
  // One part in 10^12 lets a figure that sits exactly on the half digit through.
  const near = Math.abs(got - wanted) <= tolerance * (1 + 1e-12) + 1e-12 * Math.abs(wanted)
  expect(
    near,
    `${reference.source}, ${reference.clause}: ${item.title}\n  got ${got} ${item.unit}\n  wanted ${item.printed} ${item.unit}\n  allowed +/- ${tolerance}${allowed ? ` (${allowed.why})` : ' (half the last printed digit)'}`,
  ).toBe(true)
}
