import { type AuditResult, auditCsv } from '@strandwise/planner/audit'

/** Verdict of a row, and "not usable" for one that was not judged; worst first. */
export const kinds = ['unsound', 'cannot tell', 'caution', 'sound', 'not usable'] as const
export type Kind = (typeof kinds)[number]

/** Columns by which the table can be sorted. */
export type SortColumn = 'line' | 'name' | 'verdict' | 'conductorHighC' | 'allowedA' | 'dropV' | 'dropShare' | 'fuseVerdict'

/** Which rows are shown, and in what order. */
export interface Choice {
  readonly kinds: readonly Kind[]
  /** Words that the name must have, in any order. */
  readonly words: string
  readonly by: SortColumn
  readonly down: boolean
}

export const kindOf = (result: AuditResult): Kind => ('error' in result ? 'not usable' : result.verdict)

const rank = (verdict: string | null): number | null => {
  const at = kinds.indexOf(verdict as Kind)
  return at === -1 ? null : at
}

/** What a row is sorted by; null comes last, whatever the direction. */
function keyOf(result: AuditResult, by: SortColumn): number | string | null {
  if (by === 'line') return result.line
  if (by === 'verdict') return rank(kindOf(result))
  if ('error' in result) return null
  return by === 'fuseVerdict' ? rank(result.fuseVerdict) : result[by]
}

const inWords = new Intl.Collator('en', { numeric: true })

function compare(a: number | string | null, b: number | string | null, down: boolean): number {
  if (a === null || b === null) return Number(a === null) - Number(b === null)
  const order = typeof a === 'number' && typeof b === 'number' ? a - b : inWords.compare(String(a), String(b))
  return down ? -order : order
}

/** The results of one list, with the rows chosen last. */
export class JudgedList {
  readonly counts: Record<Kind, number> = { unsound: 0, 'cannot tell': 0, caution: 0, sound: 0, 'not usable': 0 }
  readonly #results: AuditResult[] = []
  #chosen: readonly AuditResult[] = []
  #choice = ''

  get length(): number {
    return this.#results.length
  }

  add(result: AuditResult): void {
    this.#results.push(result)
    this.counts[kindOf(result)] += 1
  }

  /** The chosen rows in order; equal ones stay in the list's order. */
  chosen(choice: Choice): readonly AuditResult[] {
    const key = JSON.stringify(choice)
    if (key === this.#choice) return this.#chosen
    const words = choice.words.toLowerCase().split(/\s+/).filter(Boolean)
    const wanted = this.#results.filter(
      (result) => choice.kinds.includes(kindOf(result)) && words.every((word) => !('error' in result) && result.name.toLowerCase().includes(word)),
    )
    const keys = new Map(wanted.map((result) => [result, keyOf(result, choice.by)]))
    this.#chosen = choice.by === 'line' && !choice.down ? wanted : wanted.sort((a, b) => compare(keys.get(a) ?? null, keys.get(b) ?? null, choice.down))
    this.#choice = key
    return this.#chosen
  }

  /** The chosen rows as the command would print them; all of them without a choice. */
  csv(choice: Choice | null): string {
    return auditCsv(choice === null ? this.#results : this.chosen(choice))
  }
}
