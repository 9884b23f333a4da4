import type { RecalledGroup, RecalledValue } from './facts.ts'
import { shown, wordsOf } from './readable.ts'

type Fields = Readonly<Record<string, unknown>>

const isFields = (value: unknown): value is Fields => typeof value === 'object' && value !== null
/** True for a value from memory, by its status or its source. */
const isRecalled = (value: unknown): value is Fields =>
  isFields(value) && typeof value.source === 'string' && (value.status === 'from memory' || /from memory/.test(value.source))
const sourceOf = ({ source, edition, clause }: Fields): string => [source, edition, clause].filter((part) => part !== undefined).join(', ')
const join = (where: string, part: string): string => [where, part].filter((text) => text !== '').join(', ')

/** Label of a row: its first plain field. */
function rowLabel(row: Fields, where: string): string {
  const [first] = Object.entries(row).filter(([, item]) => typeof item === 'number' || typeof item === 'string')
  return first === undefined ? where : join(where, `${wordsOf(first[0]).words} ${shown(first[1], first[0])}`)
}

/** Values from memory in one field, which may describe the object itself or its neighbours. */
function saidBy(name: string, value: unknown, node: Fields, key: string, where: string, table: string): readonly RecalledValue[] {
  const say = (place: string, text: string, source: string): readonly RecalledValue[] => [{ where: place, shown: text, source }]
  if (name === 'provenance' || name === 'source') {
    if (isRecalled(value)) return say(where, typeof node.statement === 'string' ? node.statement : shown(node, key), sourceOf(value))
    if (name === 'source' || !isFields(value)) return []
    return Object.entries(value).flatMap(([field, part]) =>
      isRecalled(part) ? say(join(where, wordsOf(field).words), shown(node[field], field), sourceOf(part)) : [],
    )
  }
  const of = /^(.+)Provenance$/.exec(name)?.[1]
  if (of !== undefined) return isRecalled(value) ? say(join(where, wordsOf(of).words), of in node ? shown(node[of], of) : '', sourceOf(value)) : []
  if (name === 'status') return value === 'from memory' && typeof node.source !== 'string' ? say(where, shown(node, key), table) : []
  if (name.endsWith('Status') && value === 'from memory') {
    const start = name.slice(0, -'Status'.length)
    const fields = Object.entries(node).filter(([field]) => field.startsWith(start) && field !== name)
    return say(rowLabel(node, where), fields.map(([field, item]) => `${wordsOf(field).words} ${shown(item, field)}`).join(', '), table)
  }
  return []
}

function labelOf(key: string, value: unknown): string {
  if (isFields(value) && typeof value.id === 'string') return value.id
  if (isFields(value) && typeof value.name === 'string') return value.name
  return /^(rows|rowsA|\d+|values)$/.test(key) ? '' : wordsOf(key).words
}

function walk(node: unknown, key: string, where: string, table: string, seen: Set<unknown>): readonly RecalledValue[] {
  if (!isFields(node) || seen.has(node)) return []
  seen.add(node)
  const { provenance } = node
  const source = isFields(provenance) && typeof provenance.source === 'string' ? sourceOf(provenance) : table
  return Object.entries(node).flatMap(([name, value]) => {
    const said = saidBy(name, value, node, key, where, source)
    const closed = !isFields(value) || /^(source|provenance)$|Provenance$/.test(name)
    return closed ? said : [...said, ...walk(value, name, join(where, labelOf(name, value)), source, seen)]
  })
}

/** Lists of rules that are parts of practiceRules. */
const isPart = (name: string): boolean => /Rules(BySection)?$/.test(name) && name !== 'practiceRules'

/** Every value from memory in the packages, by export; a value shared by two exports is listed once. */
export function recalledIn(exports: Fields): readonly RecalledGroup[] {
  const seen = new Set<unknown>()
  return Object.entries(exports)
    .filter(([name]) => !isPart(name))
    .map(([name, value]): RecalledGroup => ({ name, values: walk(value, name, '', '', seen) }))
    .filter(({ values }) => values.length > 0)
}
