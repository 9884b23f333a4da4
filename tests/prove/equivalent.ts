import { readFileSync } from 'node:fs'
import { root } from '../repository/tree.ts'
import { ampacity } from './equivalents/ampacity.ts'
import { heating } from './equivalents/heating.ts'
import { joint } from './equivalents/joint.ts'
import { quantity } from './equivalents/quantity.ts'
import { routing } from './equivalents/routing.ts'
import { tables } from './equivalents/tables.ts'
import { uncertainty } from './equivalents/uncertainty.ts'

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

/** Changes that no test can notice, or that none is meant to: they live, and count as alive, for a reason. Of each: a stretch of the line it begins on, what stands in its place or the beginning of it, and why. */
type Equivalent = readonly [line: string, replacements: readonly string[], reason: string]

/** By file within packages/. */
export type Equivalents = Readonly<Record<string, readonly Equivalent[]>>

const equivalents: Equivalents = { ...ampacity, ...heating, ...joint, ...quantity, ...routing, ...tables, ...uncertainty }

interface Unmatched {
  readonly file: string
  readonly line: string
  readonly replacement: string
}

/** Puts beside each survivor of a room the reason that is known for it, and tells the reasons that match none. */
export function judge(
  room: string,
  alive: readonly Mutant[],
): { readonly judged: readonly { readonly mutant: Mutant; readonly reason: string | null }[]; readonly unmatched: readonly Unmatched[] } {
  const known = Object.entries(equivalents)
    .filter(([file]) => file.startsWith(`${room}/`))
    .flatMap(([file, list]) => list.flatMap(([line, replacements, reason]) => replacements.map((replacement) => ({ file, line, replacement, reason }))))
  const unmatched = new Set<Unmatched>(known)
  const texts = new Map<string, readonly string[]>()
  const lineOf = ({ fileName, location }: Mutant): string => {
    const lines = texts.get(fileName) ?? readFileSync(root + fileName, 'utf8').split('\n')
    texts.set(fileName, lines)
    return lines[location.start.line - 1] ?? ''
  }
  const judged = alive.map((mutant) => {
    const file = mutant.fileName.replace(/^packages\//, '').replace('/src/', '/')
    const replacement = mutant.replacement.replace(/\s+/g, ' ')
    const found = known.find((one) => one.file === file && lineOf(mutant).includes(one.line) && replacement.startsWith(one.replacement))
    if (found !== undefined) unmatched.delete(found)
    return { mutant, reason: found?.reason ?? null }
  })
  return { judged, unmatched: [...unmatched] }
}
