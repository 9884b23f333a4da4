import { countOfAll, countsByFunction, countsBySource, type FigureCount, statuses } from './counts.ts'
import type { Figure } from './figures.ts'

const line = ({ name, counts }: FigureCount): string => `${statuses.map((status) => String(counts[status] ?? '').padStart(10)).join('')}  ${name}`

const header = (what: string): string => `${statuses.map((status) => (status === 'from memory' ? 'memory' : status).padStart(10)).join('')}  ${what}`

/** Distinct figures by source and by function, as the test step prints them. A figure counts for the functions that it checks. */
export function table(all: readonly Figure[]): string {
  return [header('source'), ...countsBySource(all).map(line), line(countOfAll(all)), '', header('function'), ...countsByFunction(all).map(line)].join('\n')
}
