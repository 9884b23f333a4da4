import MiniSearch from 'minisearch'
import { searchOptions } from './options.ts'
import { tradeWords } from './tradeWords.ts'

export interface Found {
  readonly title: string
  readonly kind: string
  /** Path from the site's base. */
  readonly path: string
}

const most = 12
/** Weight of a match by a synonym. */
const otherWord = 0.6

const letters = (text: string): string => ` ${text.toLowerCase().replace(/\s+/g, ' ').trim()} `

/** The words typed, and variants with synonyms of trade phrases. */
export function variants(typed: string): readonly string[] {
  const words = letters(typed)
  const found = tradeWords.flatMap((line) => {
    const said = line.find((phrase) => words.includes(letters(phrase)) || words.includes(letters(`${phrase}s`)))
    if (said === undefined) return []
    const whole = words.includes(letters(`${said}s`)) ? letters(`${said}s`) : letters(said)
    return line.filter((phrase) => phrase !== said).map((phrase) => words.replace(whole, letters(phrase)).trim())
  })
  return [typed, ...found]
}

/** Search function, best results first: all words or their synonyms, then any. */
export function finder(json: string): (words: string) => readonly Found[] {
  const index = MiniSearch.loadJSON(json, searchOptions)
  return (typed) => {
    const queries = variants(typed).map((words, at) => ({ queries: [words], combineWith: 'AND' as const, boost: undefined, weight: at }))
    const all = new Map<unknown, { readonly score: number; readonly found: Found }>()
    const add = (
      result: { readonly id: unknown; readonly score: number; readonly title?: unknown; readonly kind?: unknown; readonly path?: unknown },
      share: number,
    ): void => {
      const score = share * result.score
      const before = all.get(result.id)
      if (before === undefined || before.score < score)
        all.set(result.id, { score, found: { title: String(result.title), kind: String(result.kind), path: String(result.path) } })
    }
    for (const { queries: words, combineWith, weight } of queries)
      for (const result of index.search({ queries: words, combineWith })) add(result, weight === 0 ? 1 : otherWord)
    const best = [...all.values()].sort((a, b) => b.score - a.score).map(({ found }) => found)
    const known = new Set(best.map(({ path }) => path))
    const rest =
      best.length >= most
        ? []
        : variants(typed)
            .slice(0, 1)
            .flatMap((words) => index.search(words, { combineWith: 'OR' }))
    return [...best, ...rest.map(({ title, kind, path }) => ({ title, kind, path }) as Found).filter(({ path }) => !known.has(path))].slice(0, most)
  }
}
