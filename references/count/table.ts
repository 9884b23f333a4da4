import type { Figure } from './figures.ts'

const statuses = ['published', 'library', 'derived', 'recorded', 'from memory'] as const

function line(label: string, list: readonly Figure[]): string {
  const counts = statuses.map((status) => list.filter((figure) => figure.status === status && !figure.looksUp).length)
  return `${counts.map((count) => (count === 0 ? '' : String(count)).padStart(10)).join('')}  ${label}`
}

const header = (what: string): string => `${statuses.map((status) => (status === 'from memory' ? 'memory' : status).padStart(10)).join('')}  ${what}`

/** Distinct figures by source and by function, as the test step prints them. A figure counts for the functions that it checks. */
export function table(all: readonly Figure[]): string {
  const sources = [...new Set(all.map(({ source }) => source))].sort((a, b) => a.localeCompare(b))
  const functions = [...new Set(all.flatMap(({ checks }) => checks))].sort((a, b) => a.localeCompare(b))
  return [
    header('source'),
    ...sources.map((source) =>
      line(
        source,
        all.filter((figure) => figure.source === source),
      ),
    ),
    line('all', all),
    '',
    header('function'),
    ...functions.map((name) =>
      line(
        name,
        all.filter(({ checks }) => checks.includes(name)),
      ),
    ),
  ].join('\n')
}
