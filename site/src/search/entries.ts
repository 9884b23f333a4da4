import { handbook } from 'virtual:handbook'
import { practiceRules } from '@strandwise/core/rules'
import { topics } from '../handbook/topics.ts'
import { lessons } from '../learn/lessons.ts'
import { questions } from '../learn/questions.ts'
import { roomTitle } from '../methodPage/roomTitles.ts'

export interface SearchEntry {
  readonly id: number
  readonly kind: 'plan' | 'question' | 'lesson' | 'function' | 'table' | 'material' | 'rule'
  readonly title: string
  readonly path: string
  readonly text: string
}

type Told = Omit<SearchEntry, 'id'>

const materials = ['metals', 'solders', 'insulations', 'sleeveMaterials']
/** Longest title in a list of results. */
const longestTitle = 50
const cutAt = (text: string, length: number): readonly [string, string] => {
  const at = text.length <= length ? -1 : text.lastIndexOf(' ', length)
  return at === -1 ? [text, ''] : [`${text.slice(0, at)} …`, text.slice(at)]
}
/** Standards that a function rests on, as they are typed: "IEC 60228". */
const standardsIn = (sources: readonly string[]): string =>
  [...new Set(sources.join(' ').match(/\b(?:AS|ASTM|EA|EN|FAA|IEC|IPC|ISO|NASA|NBS|NEC|SAE|UL|VDE)[- ][A-Z-]*\d[\d.A-Z-]*/g) ?? [])].join(' ')
/** Sizes in the rows, as search words. */
const rowNames = (rows: readonly (readonly (number | string)[])[]): string =>
  [...new Set(rows.map(([first]) => String(first)).filter((name) => name.length <= 6))].join(' ')

const topicOf = new Map(topics.flatMap((topic) => topic.rules.map((rule) => [rule.id, topic] as const)))

function told(): readonly Told[] {
  return [
    { kind: 'plan', title: 'Plan a repair', path: 'plan/', text: 'How to mend a broken, corroded or overloaded wire joint: fault finding, splice, proof' },
    {
      kind: 'plan',
      title: 'Judge a list of wires',
      path: 'audit/',
      text: 'Audit of a wire list as CSV: current, voltage drop and fuse of every wire in a harness',
    },
    ...questions.map((one): Told => ({ kind: 'question', title: one.title, path: `questions/${one.id}/`, text: one.summary })),
    ...lessons.map((one): Told => ({ kind: 'lesson', title: one.question, path: `examples/${one.id}/`, text: one.summary })),
    ...handbook.functions.map(
      (one): Told => ({
        kind: 'function',
        title: one.words,
        path: `handbook/${one.name}/`,
        text: [one.name, one.sentence, roomTitle(one.room).title, ...one.symbols.map(({ meaning }) => meaning), standardsIn(one.sources)].join(' '),
      }),
    ),
    ...handbook.data.map(
      (one): Told => ({
        kind: 'table',
        title: one.words,
        path: `handbook/tables/${one.name}/`,
        text: `${one.name} ${one.sentence} ${one.tables.map(({ rows }) => rowNames(rows)).join(' ')}`,
      }),
    ),
    ...handbook.data
      .filter(({ name }) => materials.includes(name))
      .flatMap(
        (one) =>
          one.tables[0]?.rows.map((row): Told => ({ kind: 'material', title: `${row[0]}`, path: `handbook/tables/${one.name}/`, text: one.words })) ?? [],
      ),
    ...practiceRules.map((rule): Told => {
      const topic = topicOf.get(rule.id)
      const [shown, rest] = cutAt(rule.statement, longestTitle)
      return { kind: 'rule', title: shown, path: `handbook/rules/${topic?.id}/#${rule.id}`, text: rest }
    }),
  ]
}

/** Everything that the search can find. */
export const searchEntries = (): readonly SearchEntry[] => told().map((one, id) => ({ ...one, id }))
