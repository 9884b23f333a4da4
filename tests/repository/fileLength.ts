import { isTest } from './source.ts'
import type { Finding, TreeFile } from './tree.ts'

export const limits = { formula: 150, table: 400, other: 250 } as const

/** Kind of a file: tables in data folders, formulas in rooms of core or formulas of working, else other. */
export function kindOf(path: string): keyof typeof limits {
  if (isTest(path) || path.endsWith('/index.ts')) return 'other'
  if (/^packages\/core\/src\/(tables|materials|rules)\//.test(path) || /^references\//.test(path) || /\.json$/.test(path)) return 'table'
  if (/^packages\/core\/src\/[^/]+\/solver\//.test(path)) return 'other'
  return /^packages\/core\/src\/[^/]+\//.test(path) || /^packages\/working\/src\/formulas\/[^/]+\//.test(path) ? 'formula' : 'other'
}

const counted = /\.(ts|mjs|astro|css|json)$/
/** Generated files, exempt from the limit. */
const generated = /^package-lock\.json$|^packages\/working\/src\/formulas\/([^/]+\/fromDocstrings|formulas)\.ts$/

const instead = {
  formula: 'one formula a file: give each its own, named after it; shared steps go to a file of their own',
  table: 'one standard a file: split by clause or by kind',
  other: 'split by topic: a reader should hold it in one view',
} as const

/** At most 150 lines for a formula's file, 400 for a table, 250 for anything else. */
export function tooLong(files: readonly TreeFile[]): readonly Finding[] {
  return files
    .filter(({ path }) => counted.test(path) && !generated.test(path) && !path.startsWith('references/data/') && !path.startsWith('tests/results/'))
    .map(({ path, text }) => ({ path, lines: text.replace(/\n$/, '').split('\n').length, kind: kindOf(path) }))
    .filter(({ lines, kind }) => lines > limits[kind])
    .map(({ path, lines, kind }) => ({
      path,
      found: `${lines} lines; a ${kind === 'other' ? 'file of this kind' : kind} has at most ${limits[kind]}`,
      instead: instead[kind],
    }))
}
