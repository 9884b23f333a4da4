import type { Figure } from './figures.ts'

/** What makes a count dishonest: a source in two files, or a figure from outside that is counted from the same source twice. */
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
