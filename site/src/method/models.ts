import type { Checks } from './checks.ts'
import type { ModelFacts, RoomFacts } from './facts.ts'

interface Entry {
  readonly package: string
  readonly room: string
  readonly name: string
  readonly kind: string
  readonly doc: {
    readonly sentence: string
    readonly equations: readonly string[]
    readonly symbols: readonly { readonly symbol: string; readonly path: string; readonly unit: string; readonly meaning: string }[]
    readonly domains: readonly { readonly path: string; readonly optional: boolean; readonly domain: { readonly text: string } }[]
    readonly sources: readonly string[]
  }
}

/** The reader of docstrings stands beside the tests that hold them to their grammar; nothing of it ships. */
const extractor = new URL('../../../tests/docs/extract.ts', import.meta.url).href

/** Every export of the packages with its docstring as data. */
export async function readEntries(): Promise<readonly Entry[]> {
  const { entriesOf, sourceProgram } = (await import(extractor)) as { entriesOf: (program: unknown) => readonly Entry[]; sourceProgram: () => unknown }
  return entriesOf(sourceProgram())
}

function modelOf({ name, doc }: Entry, checks: Checks): ModelFacts {
  return {
    name,
    sentence: doc.sentence,
    equations: doc.equations,
    symbols: doc.symbols.map(({ symbol, unit, meaning }) => ({ symbol, unit, meaning })),
    domains: doc.domains.map(({ path, optional, domain }) => ({ field: path, optional, allowed: domain.text })),
    sources: doc.sources,
    checks: checks.byFunction.get(name) ?? [],
  }
}

/** A guard is no model, and a schema answers to itself. */
const isModel = ({ kind, package: name, room }: Entry): boolean => kind === 'function' && name !== 'planner' && room !== 'errors'

/** The models room by room, in the order in which the rooms build on each other. */
export function roomsOf(entries: readonly Entry[], checks: Checks, order: readonly string[]): readonly RoomFacts[] {
  const models = entries.filter(isModel)
  const rooms = [...new Set(models.map((entry) => `${entry.package}/${entry.room}`))]
  const rank = (room: string): number => (order.includes(room) ? order.indexOf(room) : order.length)
  return rooms
    .sort((a, b) => rank(a) - rank(b))
    .map((key) => {
      const [name = '', room = ''] = key.split('/')
      return { package: name, room, models: models.filter((entry) => entry.package === name && entry.room === room).map((entry) => modelOf(entry, checks)) }
    })
}
