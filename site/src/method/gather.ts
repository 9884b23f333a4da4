import { runChecks } from './checks.ts'
import type { MethodFacts } from './facts.ts'
import { readEntries, roomsOf } from './models.ts'
import { recalledIn } from './recalled.ts'
import { roomOrder } from './roomTitles.ts'

const packages = new URL('../../../packages/', import.meta.url).href

/** Reads docstrings, runs the references, walks the data; a few seconds, once a build. */
export async function gather(): Promise<MethodFacts> {
  const checks = await runChecks()
  const entries = await readEntries()
  const core = (await import(`${packages}core/src/index.ts`)) as Readonly<Record<string, unknown>>
  const room = new Map(entries.map((entry) => [entry.name, entry.room]))
  return {
    rooms: roomsOf(entries, checks, roomOrder),
    sources: checks.sources,
    recalled: recalledIn(core, (name) => room.get(name) ?? ''),
  }
}
