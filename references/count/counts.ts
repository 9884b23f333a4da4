import type { ReferenceStatus } from '../compare.ts'
import type { Figure } from './figures.ts'

export const statuses = ['published', 'library', 'derived', 'recorded', 'from memory'] as const satisfies readonly ReferenceStatus[]

/** Different figures of one source or one function, by status; looked-up rows apart. */
export interface FigureCount {
  readonly name: string
  readonly counts: Readonly<Partial<Record<ReferenceStatus, number>>>
  readonly lookedUp: number
  readonly missed: number
}

function countOf(name: string, list: readonly Figure[]): FigureCount {
  const counts: Partial<Record<ReferenceStatus, number>> = {}
  for (const { status, looksUp } of list) if (!looksUp) counts[status] = (counts[status] ?? 0) + 1
  return { name, counts, lookedUp: list.filter(({ looksUp }) => looksUp).length, missed: list.filter(({ met }) => !met).length }
}

function counted(all: readonly Figure[], namesOf: (figure: Figure) => readonly string[]): readonly FigureCount[] {
  const lists = new Map<string, Figure[]>()
  for (const figure of all) for (const name of namesOf(figure)) lists.set(name, [...(lists.get(name) ?? []), figure])
  return [...lists].map(([name, list]) => countOf(name, list)).sort((a, b) => a.name.localeCompare(b.name))
}

/** Figures of each source, by its title. */
export const countsBySource = (all: readonly Figure[]): readonly FigureCount[] => counted(all, ({ source }) => [source])

/** Figures that each function is checked by: those that a change of 2 % in it breaks. */
export const countsByFunction = (all: readonly Figure[]): readonly FigureCount[] => counted(all, ({ checks }) => checks)

/** All figures together. */
export const countOfAll = (all: readonly Figure[]): FigureCount => countOf('all', all)
