import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { basename, join } from 'node:path'
import { Stryker } from '@stryker-mutator/core'
import { entries } from '../docs/entries.ts'
import { isTest } from '../repository/source.ts'
import { root } from '../repository/tree.ts'
import { type PartResult, sourcesHash } from './results.ts'

/** Fields read of a mutant. */
interface Mutant {
  readonly status: string
  readonly mutatorName: string
  readonly replacement: string
  readonly fileName: string
  readonly location: {
    readonly start: { readonly line: number; readonly column: number }
    readonly end: { readonly line: number; readonly column: number }
  }
}

/** Rooms of data only (tables, materials, rules), checked by data tests and references. */
const data = new Set(['materials', 'rules'])
/** Rooms mutated file by file: a mutated file runs some thirty times slower, and here a test takes thousands of steps. */
const byFile = new Set(['core/heating', 'core/joint', 'core/ampacity', 'core/bundle', 'working/uncertainty', 'working/quantity'])
/** Least mutation score of a room in %; higher for the models of the joint and its heating. */
const least = (room: string): number => (room === 'core/heating' || room === 'core/joint' ? 90 : 80)
const shown = 60

/** Rooms of core with mutation tests, and the rooms of working. */
export function rooms(): readonly string[] {
  const core = readdirSync(`${root}packages/core/src`, { withFileTypes: true }).filter((entry) => entry.isDirectory() && !data.has(entry.name))
  return [...core.map((entry) => `core/${entry.name}`), 'working/quantity', 'working/uncertainty']
}

/** Mutates a room's code and counts the mutants that its tests kill. */
export async function mutate(room: string, say: (text: string) => void): Promise<PartResult> {
  const [name = '', folder = ''] = room.split('/')
  const place = `packages/${name}/src/${folder}`
  process.env.STRANDWISE_ROOM = place
  // Docstrings of this room only, read before mutation; other rooms' must not judge it.
  const own = entries().filter((entry) => entry.package === name && entry.room === folder)
  const kept = mkdtempSync(join(tmpdir(), 'strandwise-mutation-'))
  process.env.STRANDWISE_ENTRIES = join(kept, 'entries.json')
  writeFileSync(process.env.STRANDWISE_ENTRIES, JSON.stringify({ entries: own }))
  process.chdir(root)
  try {
    if (byFile.has(room)) return summary(room, await fileByFile(room, place, say))
    say(`${room}: mutating`)
    return summary(room, await run(sourcesIn(place).map((name) => `${place}/${name}`)))
  } finally {
    delete process.env.STRANDWISE_ENTRIES
    rmSync(kept, { recursive: true, force: true })
  }
}

/** Results so far of an interrupted room, valid for these sources only. */
const halfwayFile = `${root}tests/results/local/mutation.json`

interface Halfway {
  readonly sources: string
  readonly files: Record<string, readonly Mutant[]>
}

function halfway(sources: string): Halfway {
  const found = existsSync(halfwayFile) ? (JSON.parse(readFileSync(halfwayFile, 'utf8')) as Halfway) : null
  return found?.sources === sources ? found : { sources, files: {} }
}

/** A room's own files, folders inside it included, without tests and indexes. */
function sourcesIn(place: string): readonly string[] {
  return readdirSync(root + place, { recursive: true, encoding: 'utf8' }).filter(
    (file) => file.endsWith('.ts') && !isTest(file) && !/^(index|inner)\.ts$/.test(basename(file)),
  )
}

/** File by file; finished files of an interrupted run are not repeated. */
async function fileByFile(room: string, place: string, say: (text: string) => void): Promise<readonly Mutant[]> {
  const names = sourcesIn(place)
  const state = halfway(sourcesHash())
  for (const [index, name] of names.entries()) {
    const file = `${place}/${name}`
    if (state.files[file] !== undefined) continue
    say(`${room}: ${index + 1} of ${names.length}, ${name}`)
    state.files[file] = await mutateFile(file)
    mkdirSync(`${root}tests/results/local`, { recursive: true })
    writeFileSync(halfwayFile, JSON.stringify(state))
  }
  const mutants = names.flatMap((name) => state.files[`${place}/${name}`] ?? [])
  // A finished room runs again when asked for again.
  for (const name of names) delete state.files[`${place}/${name}`]
  writeFileSync(halfwayFile, JSON.stringify(state))
  return mutants
}

/** Quick tests first; only surviving mutants meet the slow tests, which an endless mutant would delay most. */
async function mutateFile(file: string): Promise<readonly Mutant[]> {
  process.env.STRANDWISE_FILE = file
  process.env.STRANDWISE_QUICK = 'yes'
  try {
    const first = await run([file], 4_000)
    const lives = first.filter(isAlive)
    if (lives.length === 0) return first
    delete process.env.STRANDWISE_QUICK
    // A range counts columns from 0, a report from 1.
    const second = await run(lives.map(({ location: { start, end } }) => `${file}:${start.line}:${start.column - 1}-${end.line}:${end.column}`))
    const key = ({ location, mutatorName, replacement }: Mutant): string => JSON.stringify([location, mutatorName, replacement])
    const again = new Map(second.map((mutant) => [key(mutant), mutant]))
    return first.map((mutant) => (isAlive(mutant) ? (again.get(key(mutant)) ?? mutant) : mutant))
  } finally {
    delete process.env.STRANDWISE_FILE
    delete process.env.STRANDWISE_QUICK
  }
}

async function run(mutate: string[], timeoutMS = 10_000): Promise<readonly Mutant[]> {
  const stryker = new Stryker({
    mutate,
    testRunner: 'vitest',
    plugins: ['@stryker-mutator/vitest-runner'],
    vitest: { configFile: 'tests/vitest.mutation.config.ts', related: process.env.STRANDWISE_FILE !== undefined },
    coverageAnalysis: 'perTest',
    // Module-level values are computed once, before any test; data tests and references check those.
    ignoreStatic: true,
    // Message texts are not tested word by word. Errors are checked by their fields.
    mutator: { excludedMutations: ['StringLiteral'] },
    ignorePatterns: ['site', 'tests/results', '**/dist'],
    tempDirName: '.stryker-tmp',
    concurrency: 2,
    timeoutMS,
    timeoutFactor: 1.2,
    reporters: [],
    logLevel: 'error',
    fileLogLevel: 'off',
    allowConsoleColors: false,
  } as ConstructorParameters<typeof Stryker>[0])
  const mutants = (await stryker.runMutationTest()) as readonly Mutant[]
  // Only the report's fields, so that the state of an interrupted run stays small.
  return mutants.map(({ status, mutatorName, replacement = '', fileName, location }) => ({
    status,
    mutatorName,
    replacement,
    fileName: fileName.slice(fileName.indexOf('packages/')),
    location,
  }))
}

function isAlive({ status }: Mutant): boolean {
  return status === 'Survived' || status === 'NoCoverage'
}

function summary(room: string, mutants: readonly Mutant[]): PartResult {
  const count = (...statuses: readonly string[]): number => mutants.filter(({ status }) => statuses.includes(status)).length
  const caught = count('Killed', 'Timeout')
  const alive = mutants.filter(isAlive)
  const score = (100 * caught) / Math.max(1, caught + alive.length)
  const lines = alive.slice(0, shown).map(({ fileName, location, mutatorName, replacement, status }) => {
    const change = `\`${replacement.replace(/\s+/g, ' ').slice(0, 80)}\``
    return `- ${fileName}:${location.start.line} ${mutatorName}${status === 'NoCoverage' ? ' (no test comes here)' : ''}: ${change}`
  })
  const details = [
    `${caught} caught, ${alive.length} alive, ${count('Ignored')} left out (words, and values computed once), ${count('CompileError', 'RuntimeError')} that don't run.`,
    lines.join('\n'),
    alive.length > shown ? `and ${alive.length - shown} more` : '',
  ]
  return {
    ok: score >= least(room) && mutants.length > 0,
    summary: `${score.toFixed(1)} % of ${caught + alive.length} mutants caught in ${room}`,
    details: details.filter((one) => one !== '').join('\n\n'),
  }
}
