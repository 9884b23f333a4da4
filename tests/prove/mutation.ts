import { mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { Stryker } from '@stryker-mutator/core'
import { entries } from '../docs/entries.ts'
import { root } from '../repository/tree.ts'
import type { PartResult } from './results.ts'

/** Rooms whose code decides something; tables, materials and rules are data, which the tests of data and the references check. */
const data = new Set(['materials', 'rules'])
/** A room whose tests let more than this share of its mutants live is not proven. */
const least = 80
const shown = 60

/** The rooms of core that are proven by mutation, and the quantities of working. */
export function rooms(): readonly string[] {
  const core = readdirSync(`${root}packages/core/src`, { withFileTypes: true }).filter((entry) => entry.isDirectory() && !data.has(entry.name))
  return [...core.map((entry) => `core/${entry.name}`), 'working/quantity', 'working/uncertainty']
}

interface Mutant {
  readonly status: string
  readonly mutatorName: string
  readonly replacement?: string
  readonly fileName: string
  readonly location: { readonly start: { readonly line: number } }
}

/** Changes the room's code in small ways, one at a time, and sees whether a test of the room notices. */
export async function mutate(room: string, say: (text: string) => void): Promise<PartResult> {
  const [name = '', folder = ''] = room.split('/')
  process.env.STRANDWISE_ROOM = `packages/${name}/src/${folder}`
  // The docstrings of this room alone, read before anything is changed: those of another room don't judge it.
  const own = entries().filter((entry) => entry.package === name && entry.room === folder)
  const kept = mkdtempSync(join(tmpdir(), 'strandwise-mutation-'))
  process.env.STRANDWISE_ENTRIES = join(kept, 'entries.json')
  writeFileSync(process.env.STRANDWISE_ENTRIES, JSON.stringify({ entries: own }))
  process.chdir(root)
  say(`${room}: mutating`)
  const stryker = new Stryker({
    mutate: [`packages/${name}/src/${folder}/**/*.ts`, '!**/*.test.ts', '!**/index.ts', '!**/inner.ts'],
    testRunner: 'vitest',
    plugins: ['@stryker-mutator/vitest-runner'],
    vitest: { configFile: 'tests/vitest.mutation.config.ts', related: false },
    coverageAnalysis: 'perTest',
    // A value of a module is computed once, before any test: the tests of data and the references check those.
    ignoreStatic: true,
    // Wording is for people: a test of every word would only repeat it. What an error names is checked by its fields.
    mutator: { excludedMutations: ['StringLiteral'] },
    ignorePatterns: ['site', 'tests/results', '**/dist'],
    tempDirName: '.stryker-tmp',
    concurrency: 2,
    timeoutMS: 10_000,
    reporters: [],
    logLevel: 'error',
    fileLogLevel: 'off',
    allowConsoleColors: false,
  } as ConstructorParameters<typeof Stryker>[0])
  try {
    return summary(room, (await stryker.runMutationTest()) as readonly Mutant[])
  } finally {
    delete process.env.STRANDWISE_ENTRIES
    rmSync(kept, { recursive: true, force: true })
  }
}

function summary(room: string, mutants: readonly Mutant[]): PartResult {
  const count = (...statuses: readonly string[]): number => mutants.filter(({ status }) => statuses.includes(status)).length
  const caught = count('Killed', 'Timeout')
  const alive = mutants.filter(({ status }) => status === 'Survived' || status === 'NoCoverage')
  const score = (100 * caught) / Math.max(1, caught + alive.length)
  const lines = alive.slice(0, shown).map(({ fileName, location, mutatorName, replacement, status }) => {
    const file = fileName.slice(fileName.indexOf('packages/'))
    return `- ${file}:${location.start.line} ${mutatorName}${status === 'NoCoverage' ? ' (no test comes here)' : ''}: \`${(replacement ?? '').replace(/\s+/g, ' ').slice(0, 80)}\``
  })
  const details = [
    `${caught} caught, ${alive.length} alive, ${count('Ignored')} left out (words, and values computed once), ${count('CompileError', 'RuntimeError')} that don't run.`,
    lines.join('\n'),
    alive.length > shown ? `and ${alive.length - shown} more` : '',
  ]
  return {
    ok: score >= least && mutants.length > 0,
    summary: `${score.toFixed(1)} % of ${caught + alive.length} mutants caught in ${room}`,
    details: details.filter((one) => one !== '').join('\n\n'),
  }
}
