import type { Figure } from './figures.ts'

/** Faults of the count: a source in two files, or a published figure counted twice from one source. */
export function faultsOf(all: readonly Figure[]): readonly string[] {
  const filesOf = new Map<string, Set<string>>()
  for (const { source, file } of all) filesOf.set(source, (filesOf.get(source) ?? new Set()).add(file))
  const scattered = [...filesOf].flatMap(([source, files]) =>
    files.size > 1 ? [`"${source}" stands in ${[...files].join(' and ')}: move its figures into one file`] : [],
  )
  const twice = all
    .filter(({ status, repeats, oneFigure, looksUp }) => (status === 'published' || status === 'library') && repeats > 0 && !oneFigure && !looksUp)
    .map(({ file, title, printed, repeats }) => `${file}: "${title}", ${printed}, is there ${repeats + 1} times: leave one, or mark the reference oneFigure`)
  return [...scattered, ...twice]
}

/** Models that no published figure checks and no reason excuses, and reasons no longer needed. Figures from memory and recorded ones are no check. */
export function uncheckedFaults(all: readonly Figure[], models: readonly string[], reasons: Readonly<Record<string, string>>): readonly string[] {
  const checked = new Set(all.filter(({ status, looksUp }) => status !== 'from memory' && status !== 'recorded' && !looksUp).flatMap(({ checks }) => checks))
  return [
    ...models
      .filter((name) => !checked.has(name) && !(name in reasons))
      .map((name) => `${name}: no figure from outside fails when its result changes by 2 %: add one, or its reason to references/count/unchecked.ts`),
    ...Object.keys(reasons)
      .filter((name) => checked.has(name) || !models.includes(name))
      .map((name) => `${name}: ${checked.has(name) ? 'is checked now' : 'is no model of core'}: take it out of references/count/unchecked.ts`),
  ]
}
