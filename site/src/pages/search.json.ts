import MiniSearch from 'minisearch'
import { searchEntries } from '../search/entries.ts'
import { searchOptions } from '../search/options.ts'

/** The search index, loaded when the search opens. */
export function GET(): Response {
  const index = new MiniSearch(searchOptions)
  index.addAll(searchEntries())
  return new Response(JSON.stringify(index), { headers: { 'Content-Type': 'application/json' } })
}
