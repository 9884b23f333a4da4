import { readFileSync } from 'node:fs'
import { root } from '../repository/tree.ts'

/** What is read of a mutant. */
export interface Mutant {
  readonly status: string
  readonly mutatorName: string
  readonly replacement: string
  readonly fileName: string
  readonly location: {
    readonly start: { readonly line: number; readonly column: number }
    readonly end: { readonly line: number; readonly column: number }
  }
}

/** A change that no test can notice, or that none is meant to: it lives, and counts as alive, for a reason. */
interface Equivalent {
  /** Within packages/, as `core/solder/moments.ts`. */
  readonly file: string
  /** A stretch of the line that the change begins on. */
  readonly line: string
  /** What stands in its place, or the beginning of it. */
  readonly replacement: string
  readonly reason: string
}

export const equivalents: readonly Equivalent[] = []

const isOf = (room: string, { file }: Equivalent): boolean => file.startsWith(`${room}/`)

/** Puts beside each survivor of a room the reason that is known for it, and tells the reasons that match none. */
export function judge(
  room: string,
  alive: readonly Mutant[],
): { readonly judged: readonly { readonly mutant: Mutant; readonly reason: string | null }[]; readonly unmatched: readonly Equivalent[] } {
  const unmatched = new Set(equivalents.filter((one) => isOf(room, one)))
  const texts = new Map<string, readonly string[]>()
  const lineOf = ({ fileName, location }: Mutant): string => {
    const lines = texts.get(fileName) ?? readFileSync(root + fileName, 'utf8').split('\n')
    texts.set(fileName, lines)
    return lines[location.start.line - 1] ?? ''
  }
  const judged = alive.map((mutant) => {
    const file = mutant.fileName.replace(/^packages\//, '').replace('/src/', '/')
    const replacement = mutant.replacement.replace(/\s+/g, ' ')
    const found = equivalents.find((one) => one.file === file && lineOf(mutant).includes(one.line) && replacement.startsWith(one.replacement))
    if (found !== undefined) unmatched.delete(found)
    return { mutant, reason: found?.reason ?? null }
  })
  return { judged, unmatched: [...unmatched] }
}
