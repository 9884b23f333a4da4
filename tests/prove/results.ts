import { createHash } from 'node:crypto'
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { readTree, root } from '../repository/tree.ts'

/** Result of one part. */
export interface PartResult {
  readonly ok: boolean
  /** One line with the main figure. */
  readonly summary: string
  /** Coverage, findings and omissions in Markdown. */
  readonly details: string
}

interface Kept extends PartResult {
  readonly date: string
  readonly seconds: number
  readonly sources: string
}

type State = Record<string, Kept>

const stateFile = `${root}tests/results/local/prove.json`

/** Hash of the sources that a result belongs to. */
export function sourcesHash(): string {
  const hash = createHash('sha256')
  for (const { path, text } of readTree())
    if (/^(packages|references|site|tests)\//.test(path) && !path.startsWith('tests/results/')) hash.update(path).update('\0').update(text).update('\0')
  return hash.digest('hex').slice(0, 16)
}

function readState(): State {
  return existsSync(stateFile) ? (JSON.parse(readFileSync(stateFile, 'utf8')) as State) : {}
}

/** True if the part has finished on these very sources. */
export function isDone(name: string, sources: string): boolean {
  return readState()[name]?.sources === sources
}

/** Saves a part's result at once, so that an interrupted run can continue, and writes the day's report. */
export function keep(name: string, result: PartResult, seconds: number, sources: string): string {
  const date = new Date().toISOString().slice(0, 10)
  const state = readState()
  state[name] = { ...result, date, seconds: Math.round(seconds), sources }
  mkdirSync(`${root}tests/results/local`, { recursive: true })
  writeFileSync(stateFile, JSON.stringify(state, null, 2))
  const file = `tests/results/${date}.md`
  writeFileSync(root + file, report(date, state, sources))
  return file
}

/** Longest list in a dated report: its figures fit a page. The whole list is made again by running the part, and kept in tests/results/local. */
const longestList = 30

/** Details with every list cut after `longestList` items, and how many were left out. */
export function withShortLists(details: string): string {
  return details.replace(/(?:^- .*(?:\n|$))+/gm, (list) => {
    const items = list.trimEnd().split('\n')
    if (items.length <= longestList) return list
    return `${items.slice(0, longestList).join('\n')}\n- and ${items.length - longestList} more\n`
  })
}

/** Report of one day; parts run on other sources than the last are marked. */
function report(date: string, state: State, sources: string): string {
  const today = Object.entries(state)
    .filter(([, kept]) => kept.date === date)
    .sort(([a], [b]) => (a < b ? -1 : 1))
  const rows = today.map(
    ([name, kept]) =>
      `| ${name} | ${kept.ok ? 'passed' : 'FAILED'} | ${kept.summary} | ${kept.seconds} s |${kept.sources === sources ? '' : ' earlier sources'}`,
  )
  const sections = today.map(([name, kept]) => `## ${name}\n\n${withShortLists(kept.details).trim()}\n`)
  return `# Proof of ${date}\n\nNode ${process.versions.node}, sources ${sources}.\n\n| part | result | figure | time |\n| --- | --- | --- | --- |\n${rows.join('\n')}\n\n${sections.join('\n')}`
}
