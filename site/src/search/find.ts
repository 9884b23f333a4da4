import MiniSearch from 'minisearch'
import { searchOptions } from './options.ts'
import { term, tokenize } from './terms.ts'
import { tradeWords } from './tradeWords.ts'

export interface Found {
  readonly title: string
  readonly kind: string
  /** Path from the site's base. */
  readonly path: string
}

const most = 12
/** Rules are many and short: more of them would crowd out everything else. */
const mostRules = 4
/** Weight of a match by a synonym. */
const otherWord = 0.45

/** A word or phrase as typed, with its synonyms. */
export interface Said {
  readonly words: string
  readonly others: readonly string[]
}

/** "32/0.2" is a construction of strands. */
const strands = /^\d+\/0?\.\d+$/
const wordsIn = (text: string): readonly string[] => text.split(/\s+/).filter((word) => word !== '')
const longestFirst = tradeWords
  .flatMap((line) => line.map((phrase) => ({ phrase, words: wordsIn(phrase.toLowerCase()) })))
  .sort((a, b) => b.words.length - a.words.length || b.phrase.length - a.phrase.length)

function othersOf(phrase: string): readonly string[] {
  const lines = tradeWords.filter((line) => line.includes(phrase))
  return [...new Set(lines.flat())].filter((one) => one !== phrase)
}

const isSame = (typed: string | undefined, word: string, last: boolean): boolean => typed === word || (last && typed === `${word}s`)

/** The typed text as phrases of the trade, longest first, and single words between them. */
export function saidIn(typed: string): readonly Said[] {
  const text = wordsIn(typed)
  const small: (string | undefined)[] = text.map((word) => word.toLowerCase())
  const found: Said[] = []
  for (const { phrase, words } of longestFirst) {
    const at = small.findIndex((_, start) => words.every((word, index) => isSame(small[start + index], word, index === words.length - 1)))
    if (at === -1) continue
    small.fill(undefined, at, at + words.length)
    found.push({ words: phrase, others: othersOf(phrase) })
  }
  // Two phrases of one line say the same thing twice.
  const alone = found.filter(({ others }, at) => !found.slice(0, at).some(({ words }) => others.includes(words)))
  const rest = text.filter((_, at) => small[at] !== undefined)
  return [...alone, ...rest.map((words) => ({ words, others: strands.test(words) ? ['strands', 'construction'] : [] }))]
}

const isIdle = (words: string): boolean => tokenize(words).every((word) => word === '' || term(word) === null)

/** Search function, best results first: what has all that was said, then what has some of it. */
export function finder(json: string): (words: string) => readonly Found[] {
  const index = MiniSearch.loadJSON(json, searchOptions)
  const byId = new Map<unknown, Found>()

  /** Best score of each entry that has this, in its own words or in others. */
  function scores({ words, others }: Said): ReadonlyMap<unknown, number> {
    const best = new Map<unknown, number>()
    const add = (said: string, weight: number, options: { readonly prefix?: false; readonly fuzzy?: false }): void => {
      // A phrase counts as one thing said, however many words it has.
      const share = weight / wordsIn(said).length
      for (const { id, score, title, kind, path } of index.search(said, { combineWith: 'AND', ...options })) {
        byId.set(id, { title: String(title), kind: String(kind), path: String(path) })
        best.set(id, Math.max(best.get(id) ?? 0, share * score))
      }
    }
    add(words, 1, {})
    for (const other of others) if (!isIdle(other)) add(other, otherWord, { prefix: false, fuzzy: false })
    return best
  }

  return (typed) => {
    const lists = saidIn(typed)
      .filter(({ words }) => !isIdle(words))
      .map(scores)
    const total = new Map<unknown, { count: number; score: number }>()
    for (const list of lists)
      for (const [id, score] of list) {
        const before = total.get(id) ?? { count: 0, score: 0 }
        total.set(id, { count: before.count + 1, score: before.score + score })
      }
    const ranked = [...total].sort(([, a], [, b]) => Number(b.count === lists.length) - Number(a.count === lists.length) || b.score - a.score)
    const found = ranked.flatMap(([id]) => byId.get(id) ?? [])
    const late = new Set(found.filter(({ kind }) => kind === 'rule').slice(mostRules))
    return [...found.filter((one) => !late.has(one)), ...late].slice(0, most)
  }
}
