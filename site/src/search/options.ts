import type { Options } from 'minisearch'
import { term, tokenize } from './terms.ts'

/** Options of the index, equal at build time and on the page. */
export const searchOptions: Options = {
  fields: ['title', 'text'],
  storeFields: ['title', 'kind', 'path'],
  tokenize,
  processTerm: term,
  searchOptions: {
    boost: { title: 4, text: 1.5 },
    prefix: (word) => word.length > 2,
    fuzzy: (word) => (word.length > 5 ? 0.15 : false),
    combineWith: 'AND',
    boostDocument: (_id, _word, stored) => ({ plan: 5, question: 5, lesson: 1.3, function: 1.2, table: 1, material: 1, rule: 0.4 })[String(stored?.kind)] ?? 1,
  },
}
