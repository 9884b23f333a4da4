import { fork } from 'node:child_process'
import { root } from '../repository/tree.ts'
import { type Move, movedBy, movesOf } from './recalled/moves.ts'
import type { PlanSays, Said } from './recalled/planWorker.ts'
import { type RecalledNumber, recalledNumbers } from './recalled/recalledNumbers.ts'
import type { PartResult } from './results.ts'

/** Moves that one process plans: each loads the packages once more, and none leaves memory before the process ends. */
const perProcess = 25

/** How many of the demo jobs' statements a moved value turns. */
interface Turned {
  readonly verdicts: readonly string[]
  readonly decisions: readonly string[]
  readonly ways: readonly string[]
  readonly findings: readonly string[]
  readonly refused: readonly string[]
}

interface Ranked {
  readonly value: RecalledNumber
  readonly moves: readonly Move[]
  readonly turned: Turned
}

async function saidBy(moves: readonly (Move | null)[]): Promise<readonly Said[]> {
  const child = fork(`${root}tests/prove/recalled/planWorker.ts`, { execPath: process.execPath, cwd: root })
  const all: Said[] = []
  child.on('message', ({ said }: { readonly said: Said }) => all.push(said))
  child.send({ moves })
  const code = await new Promise<number | null>((done) => child.on('exit', done))
  if (all.length !== moves.length) throw new Error(`planning the demo jobs ended with ${code} after ${all.length} of ${moves.length} moves`)
  return all
}

/** Keys of two records whose values differ, or stand in one alone. */
const differing = (a: Readonly<Record<string, string>>, b: Readonly<Record<string, string>>): readonly string[] =>
  [...new Set([...Object.keys(a), ...Object.keys(b)])].filter((key) => a[key] !== b[key])

/** What turns between the plans as shipped and those of each move. */
function turnedBy(shipped: Said, moved: readonly Said[]): Turned {
  const sets = { verdicts: new Set<string>(), decisions: new Set<string>(), ways: new Set<string>(), findings: new Set<string>(), refused: new Set<string>() }
  for (const said of moved) {
    for (const [job, before] of Object.entries(shipped)) {
      const after = said[job]
      if (after === undefined || typeof after === 'string') {
        sets.refused.add(typeof after === 'string' ? after : (Object.values(said).find((one) => typeof one === 'string') as string))
        continue
      }
      const { verdict, decision, ways, findings } = before as PlanSays
      if (after.verdict !== verdict) sets.verdicts.add(`${job}: ${verdict} to ${after.verdict}`)
      if (after.decision !== decision) sets.decisions.add(job)
      for (const way of differing(ways, after.ways)) sets.ways.add(`${job}: ${way} ${ways[way] ?? 'not shown'} to ${after.ways[way] ?? 'not shown'}`)
      for (const finding of differing(findings, after.findings)) sets.findings.add(`${job}: ${finding}`)
    }
  }
  return Object.fromEntries(Object.entries(sets).map(([key, set]) => [key, [...set]])) as unknown as Turned
}

const weight = ({ verdicts, decisions, ways, findings }: Turned): readonly number[] => [verdicts.length, decisions.length, ways.length, findings.length]

function byWeight(a: Ranked, b: Ranked): number {
  const [one, two] = [weight(a.turned), weight(b.turned)]
  const at = one.findIndex((count, k) => count !== two[k])
  return at === -1 ? a.value.name.localeCompare(b.value.name) : (two[at] ?? 0) - (one[at] ?? 0)
}

const cell = (text: string): string => text.replaceAll('|', '/').replaceAll(/[<>*_`]/g, ' ')

function report(ranked: readonly Ranked[]): string {
  const turning = ranked.filter(({ turned }) => weight(turned).some((count) => count > 0))
  const refused = ranked.filter(({ turned }) => turned.refused.length > 0)
  const rows = turning.map(
    ({ value, moves, turned }) =>
      `| ${cell(value.name)} | ${moves.map(({ label }) => label).join('; ')} | ${weight(turned).join(' | ')} | ${cell([...turned.verdicts, ...turned.ways, ...turned.decisions, ...turned.findings].slice(0, 4).join('; '))} |`,
  )
  return [
    `Each value from memory moved to both ends of its own band, or by a factor ${movedBy.factor}, a guess by ${movedBy.guessFactor}, a temperature by ${movedBy.temperatureK} K; both ends counted together. A change of a decision is another kind, way, wire, fuse, reason or length.`,
    '',
    '| value | moved | verdicts of plans | decisions | verdicts of ways | findings | which |',
    '| --- | --- | ---: | ---: | ---: | ---: | --- |',
    ...rows,
    '',
    `${ranked.length - turning.length} values turn nothing in the demo jobs: ${ranked
      .filter((one) => !turning.includes(one) && !refused.includes(one))
      .map(({ value }) => cell(value.name))
      .join(', ')}.`,
    ...(refused.length === 0
      ? []
      : ['', `Refused at one end: ${refused.map(({ value, turned }) => `${cell(value.name)} (${cell(turned.refused[0] ?? '')})`).join('; ')}.`]),
  ].join('\n')
}

/** Moves each value from memory and counts what turns in the plans of the demo jobs; ranked, so that the one to look up first stands first. */
export async function recalled(say: (text: string) => void): Promise<PartResult> {
  const values = recalledNumbers().map((value) => ({ value, moves: movesOf(value) }))
  const moves = values.flatMap((one) => one.moves)
  const [shipped] = await saidBy([null])
  const said: Said[] = []
  for (let done = 0; done < moves.length; done += perProcess) {
    say(`${done} of ${moves.length} moves`)
    said.push(...(await saidBy(moves.slice(done, done + perProcess))))
  }
  let next = 0
  const ranked = values
    .map((one): Ranked => {
      const mine = said.slice(next, next + one.moves.length)
      next += one.moves.length
      return { ...one, turned: turnedBy(shipped as Said, mine) }
    })
    .sort(byWeight)
  const count = (key: keyof Turned): number => ranked.filter(({ turned }) => turned[key].length > 0).length
  return {
    ok: true,
    summary: `${values.length} values from memory moved: ${count('verdicts')} turn the verdict of a demo job, ${count('decisions')} a decision, ${count('ways')} the verdict of a way, ${count('findings')} a finding`,
    details: report(ranked),
  }
}
