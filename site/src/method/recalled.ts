import type { RecalledGroup, RecalledValue } from './facts.ts'
import { shown, wordsOf } from './readable.ts'

type Fields = Readonly<Record<string, unknown>>

const isObject = (value: unknown): value is Fields => typeof value === 'object' && value !== null
/** The status itself, or a source that says so of a part. */
const isRecalled = (value: unknown): value is Fields =>
  isObject(value) && typeof value['source'] === 'string' && (value['status'] === 'from memory' || /from memory/.test(value['source']))
const sourceOf = ({ source, edition, clause }: Fields): string => [source, edition, clause].filter((part) => part !== undefined).join(', ')
const own = 'the row says so'

/** What one object says of itself and of its fields. */
function saidBy(node: Fields, key: string, where: string, table: string): readonly RecalledValue[] {
  const said: RecalledValue[] = []
  const say = (place: string, text: string, source: string): void => void said.push({ where: place, shown: text, source })
  for (const [name, value] of Object.entries(node)) {
    const of = /^(.+)Provenance$/.exec(name)?.[1]
    if (name === 'provenance' || name === 'source') {
      if (isRecalled(value)) say(where, typeof node['statement'] === 'string' ? node['statement'] : shown(node, key), sourceOf(value))
      else if (isObject(value) && name === 'provenance')
        for (const [field, part] of Object.entries(value)) if (isRecalled(part)) say(join(where, field), shown(node[field], field), sourceOf(part))
    } else if (of !== undefined && isRecalled(value)) say(join(where, wordsOf(of).words), of in node ? shown(node[of], of) : 'as the source says', sourceOf(value))
    else if (name === 'status' && value === 'from memory' && typeof node['source'] !== 'string') say(where, shown(node, key), table)
    else if (/.Status$/.test(name) && value === 'from memory') {
      const start = name.slice(0, -'Status'.length)
      const rest = Object.entries(node).filter(([field]) => field.startsWith(start) && field !== name)
      const row = Object.entries(node).filter(([, item]) => typeof item === 'number' || typeof item === 'string')[0]
      const label = row === undefined ? where : join(where, `${wordsOf(row[0]).words} ${shown(row[1], row[0])}`)
      say(label, rest.map(([field, item]) => `${wordsOf(field).words} ${shown(item, field)}`).join(', '), table)
    } else if (name === 'notRead' && Array.isArray(value) && value.length > 0)
      say(where, value.map((field) => `${wordsOf(String(field)).words} ${shown(node[String(field)], String(field))}`).join(', '), 'ours or recalled; the rest of the rule was read')
  }
  return said
}

const join = (where: string, part: string): string => (where === '' ? part : `${where}, ${part}`)

function labelOf(key: string, value: unknown): string {
  if (isObject(value) && typeof value['id'] === 'string') return value['id']
  return /^(rows|rowsA|\d+|values)$/.test(key) ? '' : wordsOf(key).words
}

function walk(node: unknown, key: string, where: string, table: string, seen: Set<unknown>): readonly RecalledValue[] {
  if (!isObject(node) || seen.has(node)) return []
  seen.add(node)
  const provenance = node['provenance']
  const source = isObject(provenance) && typeof provenance['source'] === 'string' ? sourceOf(provenance) : table
  const inner = Object.entries(node)
    .filter(([name, value]) => isObject(value) && !/^(source|provenance)$|Provenance$/.test(name))
    .flatMap(([name, value]) => {
      const label = labelOf(name, value)
      return walk(value, name, label === '' ? where : join(where, label), source, seen)
    })
  return [...saidBy(node, key, where, source), ...inner]
}

const kinds: Readonly<Record<string, RecalledGroup['kind']>> = { materials: 'material', tables: 'table', rules: 'rule' }

/** Every value that the packages hold from memory, by the export that holds it; what two exports share is told once. */
export function recalledIn(exports: Fields, roomOf: (name: string) => string): readonly RecalledGroup[] {
  const seen = new Set<unknown>()
  return Object.entries(exports)
    .filter(([name]) => roomOf(name) !== 'rules' || name === 'practiceRules')
    .map(([name, value]): RecalledGroup => ({ name, kind: kinds[roomOf(name)] ?? 'default', values: walk(value, name, '', own, seen) }))
    .filter(({ values }) => values.length > 0)
}
