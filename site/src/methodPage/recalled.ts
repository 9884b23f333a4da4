import type { RecalledGroup } from './facts.ts'

type Plain = Readonly<Record<string, unknown>>

const isPlain = (value: unknown): value is Plain => typeof value === 'object' && value !== null
const recalled = (value: unknown): boolean => isPlain(value) && value.status === 'from memory'

/** Fields that tell one row or value from another, best first. */
const telling = ['name', 'id', 'size', 'gauge', 'areaMm2', 'contactSize', 'conductors', 'material']

/** A row or a value in a few words. */
function nameOf(value: unknown, key: string): string {
  const field = isPlain(value) ? telling.find((one) => ['string', 'number'].includes(typeof value[one])) : undefined
  if (isPlain(value) && field !== undefined) return ['name', 'id', 'size'].includes(field) ? String(value[field]) : `${field} ${String(value[field])}`
  return /^\d+$/.test(key) ? `row ${Number(key) + 1}` : key
}

function walk(value: unknown, key: string, path: readonly string[], found: Set<string>, seen: Set<unknown>): void {
  if (!isPlain(value) || seen.has(value)) return
  seen.add(value)
  const place = key === '' ? path : [...path, nameOf(value, key)]
  if (recalled(value.provenance) || recalled(value.source) || (recalled(value) && typeof value.source !== 'string'))
    found.add(`${place.join(', ') || 'all of it'}${typeof value.nominal === 'number' ? ` ${value.nominal}` : ''}`)
  else for (const [inside, item] of Object.entries(value)) walk(item, inside, place, found, seen)
}

/** Every value of the given exports that is marked from memory. */
export function recalledIn(exports: Readonly<Record<string, unknown>>): readonly RecalledGroup[] {
  return Object.entries(exports)
    .map(([name, value]) => {
      const found = new Set<string>()
      walk(value, '', [], found, new Set())
      return { name, values: [...found] }
    })
    .filter((group) => group.values.length > 0)
}
