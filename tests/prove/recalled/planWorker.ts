import { registerHooks } from 'node:module'
import { root } from '../../repository/tree.ts'
import type { Move } from './moves.ts'

/** Run as a child process: plans every demo job with the packages as they are, then once for each move, loading the packages anew with its numbers in place. */

/** What a plan says, as far as a moved value may turn it. */
export interface PlanSays {
  readonly verdict: string
  readonly decision: string
  /** Verdict of each way by method. */
  readonly ways: Readonly<Record<string, string>>
  /** Section and code of each finding, with its verdict. */
  readonly findings: Readonly<Record<string, string>>
}
/** By job; a text is the error of a job that could not be planned. */
export type Said = Readonly<Record<string, PlanSays | string>>

type Planner = typeof import('../../../packages/planner/src/index.ts')

const packages = new URL('packages/', `file://${root}`).href
let round = 0
let moved: Move | null = null

/** Path of a package's or room's sources; null for another module. */
function sourcesOf(specifier: string): string | null {
  const [, name, room] = /^@strandwise\/(\w+)(?:\/(\w+))?$/.exec(specifier) ?? []
  return name === undefined ? null : `${packages}${name}/src/${room === undefined ? '' : `${room}/`}index.ts`
}

registerHooks({
  resolve(specifier, context, next) {
    const found = next(sourcesOf(specifier) ?? specifier, context)
    const [url = ''] = found.url.split('?')
    return url.startsWith(packages) && !url.includes('/node_modules/') ? { ...found, url: `${url}?round=${round}` } : found
  },
  load(url, context, next) {
    const found = next(url, context)
    const [path] = url.split('?')
    if (moved === null || path !== new URL(moved.file, `file://${root}`).href) return found
    let text = String(found.source instanceof Uint8Array ? Buffer.from(found.source) : found.source)
    for (const { start, end, text: number } of [...moved.edits].sort((a, b) => b.start - a.start)) text = text.slice(0, start) + number + text.slice(end)
    return { ...found, source: text }
  },
})

function says(plan: ReturnType<Planner['planRepair']>): PlanSays {
  const { decision, verdict, ways, sections } = plan
  const { kind, method, wire, fuseA, why, lengths } = decision
  return {
    verdict,
    decision: JSON.stringify([
      kind,
      method,
      wire === null ? null : [wire.size, wire.insulation],
      fuseA,
      why.code,
      lengths.map(({ name, value }) => [name, value]),
    ]),
    ways: Object.fromEntries(ways.map((way) => [way.method, way.verdict])),
    findings: Object.fromEntries(sections.flatMap(({ id, findings }) => findings.map((finding) => [`${id} ${finding.code}`, finding.verdict] as const))),
  }
}

async function plans(move: Move | null): Promise<Said> {
  moved = move
  round += 1
  const planner = (await import(`${packages}planner/src/index.ts?round=${round}`)) as Planner
  return Object.fromEntries(
    Object.entries(planner.demoJobs).map(([name, job]) => {
      try {
        return [name, says(planner.planRepair(job))]
      } catch (error) {
        return [name, (error as Error).message]
      }
    }),
  )
}

process.on('message', async ({ moves }: { readonly moves: readonly (Move | null)[] }) => {
  for (const move of moves) {
    const said = await plans(move).catch((error: Error): Said => ({ 'loading the packages': error.message }))
    process.send?.({ said })
  }
  process.disconnect()
})
